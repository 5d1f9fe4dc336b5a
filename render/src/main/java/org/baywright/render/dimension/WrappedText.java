package org.baywright.render.dimension;

import java.util.ArrayList;
import java.util.List;
import org.baywright.render.paper.Face;
import org.baywright.render.paper.Lettering;

/** Words broken into lines that fit a width. */
public final class WrappedText {
    private static final double ROUNDING = 1e-6;

    private WrappedText() {}

    /** Lines no wider than the room; a word wider than the room is broken inside. A blank text gives no line. */
    public static List<String> lines(String text, double room, double height, Face face) {
        List<String> lines = new ArrayList<>();
        double space = Lettering.width(" ", height, face);
        String line = "";
        double used = 0;
        for (String word : text.strip().split("\\s+")) {
            for (String piece : pieces(word, room, height, face)) {
                // There is no kerning: a line is as wide as its words and spaces.
                double width = Lettering.width(piece, height, face);
                if (line.isEmpty()) {
                    line = piece;
                    used = width;
                } else if (used + space + width <= room + ROUNDING) {
                    line = line + " " + piece;
                    used += space + width;
                } else {
                    lines.add(line);
                    line = piece;
                    used = width;
                }
            }
        }
        if (!line.isEmpty()) {
            lines.add(line);
        }
        return lines;
    }

    /** The word itself, or parts of it that fit; one letter at least. */
    private static List<String> pieces(String word, double room, double height, Face face) {
        List<String> pieces = new ArrayList<>();
        String rest = word;
        while (!rest.isEmpty() && !fits(rest, room, height, face)) {
            int end = rest.offsetByCodePoints(0, 1);
            while (end < rest.length()
                    && fits(rest.substring(0, rest.offsetByCodePoints(end, 1)), room, height, face)) {
                end = rest.offsetByCodePoints(end, 1);
            }
            pieces.add(rest.substring(0, end));
            rest = rest.substring(end);
        }
        if (!rest.isEmpty()) {
            pieces.add(rest);
        }
        return pieces;
    }

    private static boolean fits(String text, double room, double height, Face face) {
        return Lettering.width(text, height, face) <= room + ROUNDING;
    }

    /** The width below which some word would be broken. */
    static double longestWord(String text, double height, Face face) {
        double longest = 0;
        for (String word : text.strip().split("\\s+")) {
            longest = Math.max(longest, Lettering.width(word, height, face));
        }
        return longest;
    }
}
