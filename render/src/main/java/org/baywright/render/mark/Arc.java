package org.baywright.render.mark;

import org.baywright.model.geometry.Vec2;
import org.baywright.render.paper.Pen;

/** Part of a circle, anticlockwise; a sweep of 360 is the whole circle. */
public record Arc(Vec2 centre, double radius, double startDeg, double sweepDeg, Pen pen, Layer layer, String part)
        implements Mark {
    /** Checks the radius and sweep. */
    public Arc {
        if (!(radius > 0) || !(sweepDeg > 0) || sweepDeg > 360) {
            throw new IllegalArgumentException("an arc needs a radius and a sweep up to 360 degrees");
        }
    }

    /** A whole circle. */
    public static Arc circle(Vec2 centre, double radius, Pen pen, Layer layer, String part) {
        return new Arc(centre, radius, 0, 360, pen, layer, part);
    }

    /** The point of the circle in a direction. */
    public Vec2 at(double deg) {
        double angle = Math.toRadians(deg);
        return centre.plus(new Vec2(Math.cos(angle), Math.sin(angle)).times(radius));
    }
}
