package org.baywright.render.paper;

import java.io.IOException;
import java.io.InputStream;
import java.util.EnumMap;
import java.util.Map;

/**
 * Sizes of text in the one bundled typeface, so that a drawing is laid out the same on every machine. The writers
 * embed or name this same typeface; no kerning and no ligatures anywhere.
 */
public final class Lettering {
    /** The family as other programs know it. */
    public static final String FAMILY = "DejaVu Sans Condensed";

    /** Stands where the typeface lacks a character. */
    private static final int MISSING = '?';

    /** Every character from the space to this one is printed as it is. */
    private static final int PLAIN = 0x7f;

    private Lettering() {}

    /** Length of a line of text from its start to where the next letter would stand, mm. */
    public static double width(String text, double capHeight, Face face) {
        FaceMetrics metrics = metrics(face);
        long units = 0;
        String printed = printable(text, face);
        for (int i = 0; i < printed.length(); i++) {
            units += metrics.advance(printed.charAt(i));
        }
        return units * fontSize(capHeight, face) / metrics.unitsPerEm();
    }

    /** The em at which a capital letter has this height; both in the same unit. */
    public static double fontSize(double capHeight, Face face) {
        FaceMetrics metrics = metrics(face);
        return capHeight * metrics.unitsPerEm() / metrics.capHeight();
    }

    /** How far the tallest letters, accents included, rise above the baseline, mm. */
    public static double ascent(double capHeight, Face face) {
        FaceMetrics metrics = metrics(face);
        return capHeight * metrics.ascent() / metrics.capHeight();
    }

    /** How far letters hang below the baseline, mm, positive. */
    public static double descent(double capHeight, Face face) {
        FaceMetrics metrics = metrics(face);
        return capHeight * metrics.descent() / metrics.capHeight();
    }

    /**
     * The text as it is set: tabs and line ends become spaces, other control and direction marks go, and a question
     * mark stands for each character that the typeface lacks.
     */
    public static String printable(String text, Face face) {
        FaceMetrics metrics = metrics(face);
        if (text.chars().allMatch(c -> c >= ' ' && c < PLAIN)) {
            return text;
        }
        return text.codePoints()
                .map(c -> Character.isWhitespace(c) ? ' ' : c)
                .filter(c -> !Character.isISOControl(c) && Character.getType(c) != Character.FORMAT)
                .map(c -> metrics.has(c) ? c : MISSING)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }

    /** The font file of a face; the caller closes it. */
    public static InputStream open(Face face) throws IOException {
        InputStream in = Lettering.class.getResourceAsStream("font/" + face.file());
        if (in == null) {
            throw new IOException("font file missing from the program: " + face.file());
        }
        return in;
    }

    private static FaceMetrics metrics(Face face) {
        return Loaded.METRICS.get(face);
    }

    /** Read once, when first text is measured. */
    private static final class Loaded {
        static final Map<Face, FaceMetrics> METRICS = new EnumMap<>(Face.class);

        static {
            for (Face face : Face.values()) {
                METRICS.put(face, FaceMetrics.read(face));
            }
        }
    }
}
