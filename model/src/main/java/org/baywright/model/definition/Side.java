package org.baywright.model.definition;

/** A long side of the building, seen from frame 1 looking along it. */
public enum Side {
    LEFT,
    RIGHT;

    /** The opposite side. */
    public Side other() {
        return this == LEFT ? RIGHT : LEFT;
    }
}
