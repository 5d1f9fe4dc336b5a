package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import org.baywright.render.paper.Face;
import org.baywright.render.paper.Lettering;

/** Words cut to the room they have: broken into lines, and ended by an ellipsis when they still run over. */
final class Fitted {
    private static final String ELLIPSIS = "…";

    private Fitted() {}

    /** At most so many lines of at most so wide. */
    static List<String> lines(String text, double height, Face face, double room, int most) {
        List<String> lines = new ArrayList<>();
        String rest = text.strip();
        while (!rest.isEmpty() && lines.size() < most) {
            int end = lines.size() == most - 1 ? rest.length() : lineEnd(rest, height, face, room);
            lines.add(line(rest.substring(0, end).strip(), height, face, room));
            rest = rest.substring(end).strip();
        }
        return lines;
    }

    /** Where the first line of a text ends: at the last space that fits, or within a word longer than the room. */
    private static int lineEnd(String text, double height, Face face, double room) {
        int end = text.length();
        while (end > 1 && Lettering.width(text.substring(0, end), height, face) > room) {
            int space = text.lastIndexOf(' ', end - 1);
            end = space > 0 ? space : end - 1;
        }
        return end;
    }

    /** One line, its end replaced by an ellipsis when it is too wide. */
    static String line(String text, double height, Face face, double room) {
        if (Lettering.width(text, height, face) <= room) {
            return text;
        }
        int end = text.length();
        while (end > 0 && Lettering.width(text.substring(0, end) + ELLIPSIS, height, face) > room) {
            end--;
        }
        return text.substring(0, end) + ELLIPSIS;
    }
}
