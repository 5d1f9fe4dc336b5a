package org.baywright.render.dimension;

import org.baywright.model.geometry.Vec2;

/** Along what a distance is measured in a view. */
public enum Direction {
    HORIZONTAL,
    VERTICAL,
    /** Straight from one point to the other. */
    ALIGNED;

    /** The distance between two points along this direction, mm. */
    public double distance(Vec2 from, Vec2 to) {
        return switch (this) {
            case HORIZONTAL -> Math.abs(to.x() - from.x());
            case VERTICAL -> Math.abs(to.y() - from.y());
            case ALIGNED -> from.distance(to);
        };
    }
}
