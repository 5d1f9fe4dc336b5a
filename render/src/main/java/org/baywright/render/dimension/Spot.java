package org.baywright.render.dimension;

/** Where a label may stand about what it names. */
public enum Spot {
    RIGHT(0),
    ABOVE_RIGHT(45),
    ABOVE(90),
    ABOVE_LEFT(135),
    LEFT(180),
    BELOW_LEFT(225),
    BELOW(270),
    BELOW_RIGHT(315);

    private final double deg;

    Spot(double deg) {
        this.deg = deg;
    }

    /** The direction from what is named, anticlockwise from the right. */
    double deg() {
        return deg;
    }

    /** The spot whose direction is nearest. */
    static Spot nearest(double deg) {
        return values()[(int) (Math.round(deg / 45) % 8)];
    }
}
