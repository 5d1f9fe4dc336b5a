package org.baywright.render.dimension;

import org.baywright.model.geometry.Vec2;

/** A side of a view on paper. */
public enum Side {
    BELOW(new Vec2(0, -1)),
    ABOVE(new Vec2(0, 1)),
    LEFT(new Vec2(-1, 0)),
    RIGHT(new Vec2(1, 0));

    private final Vec2 out;

    Side(Vec2 out) {
        this.out = out;
    }

    /** The way off the view. */
    Vec2 out() {
        return out;
    }

    /** True when lines on this side run across the sheet. */
    boolean level() {
        return out.x() == 0;
    }

    /** What is measured on this side. */
    Direction direction() {
        return level() ? Direction.HORIZONTAL : Direction.VERTICAL;
    }
}
