package org.baywright.render.view;

import org.baywright.model.geometry.Vec2;

/**
 * A straight line of a view, in view coordinates.
 *
 * @param from where it starts: the lower of its ends along the sheet
 * @param to where it ends
 * @param part the mark of the part whose edge it is
 */
public record ViewLine(Vec2 from, Vec2 to, String part) {
    /** Its length in the view, building millimetres. */
    public double length() {
        return from.distance(to);
    }
}
