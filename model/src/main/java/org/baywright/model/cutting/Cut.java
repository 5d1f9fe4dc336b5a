package org.baywright.model.cutting;

import java.util.Objects;

/**
 * Equal pieces on one bar.
 *
 * @param lengthMm their length
 * @param mitre the slope of their ends
 * @param setbacks of their ends, where they are looked at one by one
 * @param count how many
 */
public record Cut(double lengthMm, Mitre mitre, Setbacks setbacks, int count) {
    /** Checks that there is something to cut. */
    public Cut {
        Objects.requireNonNull(mitre);
        Objects.requireNonNull(setbacks);
        if (!(lengthMm > 0) || count < 1) {
            throw new IllegalArgumentException("a cut needs a length and a count: " + lengthMm + ", " + count);
        }
    }
}
