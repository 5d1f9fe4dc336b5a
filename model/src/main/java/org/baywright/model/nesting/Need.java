package org.baywright.model.nesting;

import java.util.Objects;

/** A piece and how often it is cut. */
public record Need(Blank blank, int quantity) {
    /** Checks that there is one. */
    public Need {
        Objects.requireNonNull(blank);
        if (quantity < 1) {
            throw new IllegalArgumentException("a piece is cut once or more: " + blank.mark());
        }
    }
}
