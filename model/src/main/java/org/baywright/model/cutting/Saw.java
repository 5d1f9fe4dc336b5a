package org.baywright.model.cutting;

/**
 * What the saw takes from a bar.
 *
 * @param kerfMm bar length one square cut turns to dust
 * @param endTrimMm bar length given up for damaged ends, both ends together, the blade that trims them included
 */
public record Saw(double kerfMm, double endTrimMm) {
    /** A saw that takes nothing, as in textbook jobs. */
    public static final Saw NONE = new Saw(0, 0);

    /** A cold saw, and the ends of a bar squared off. Common practice, no source. */
    public static final Saw USUAL = new Saw(3, 10);

    /** Checks the ranges. */
    public Saw {
        if (!(kerfMm >= 0 && kerfMm <= 1000 && endTrimMm >= 0 && endTrimMm <= Stock.LONGEST_MM)) {
            throw new IllegalArgumentException("kerf and end trim must be 0 or more: " + kerfMm + ", " + endTrimMm);
        }
    }
}
