package org.baywright.render.sheet;

import org.baywright.render.paper.Face;
import org.baywright.render.paper.Lettering;

/** Words cut to the room they have, and ended by an ellipsis when they run over. */
final class Fitted {
    private static final String ELLIPSIS = "…";

    private Fitted() {}

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
