package org.baywright.render.mark;

import org.baywright.model.geometry.Vec2;
import org.baywright.render.paper.Face;

/**
 * One line of text.
 *
 * @param content what it says
 * @param at the point on the baseline that the alignment speaks of
 * @param height of a capital letter, mm
 * @param align which end of the text stands at the point
 * @param turnDeg direction of reading
 * @param face regular or bold
 */
public record Text(
        String content, Vec2 at, double height, Align align, double turnDeg, Face face, Layer layer, String part)
        implements Mark {
    /** Which end of the text stands at its point. */
    public enum Align {
        LEFT,
        CENTRE,
        RIGHT
    }

    /** Checks that something is said, in a size that can be seen. */
    public Text {
        if (content.isBlank() || !(height > 0)) {
            throw new IllegalArgumentException("text needs words and a height");
        }
    }

    /** Level regular text. */
    public static Text level(String content, Vec2 at, double height, Align align, Layer layer) {
        return new Text(content, at, height, align, 0, Face.REGULAR, layer, "");
    }
}
