package org.baywright.model.definition;

/** A wall, seen from outside. Front is the wall of frame 1, left and right are as seen from there. */
public enum Wall {
    FRONT,
    REAR,
    LEFT,
    RIGHT;

    /** Whether it runs across the building, under the rake. */
    public boolean isEnd() {
        return this == FRONT || this == REAR;
    }

    /** The side wall of a side. */
    public static Wall of(Side side) {
        return side == Side.LEFT ? LEFT : RIGHT;
    }
}
