package org.baywright.render.sheet;

import java.util.function.DoubleFunction;

/** Fills several sheets so that the last of them is not nearly empty while the others are full. */
final class Filling {
    /** A last sheet is nearly empty when less than this share of it is used. */
    private static final double LITTLE = 0.3;

    /** Halvings of the height to leave: to some seven millimetres on A3. */
    private static final int STEPS = 4;

    private Filling() {}

    /** Sheets that have been filled. */
    interface Filled {
        /** How many. */
        int sheets();

        /** How much of the last one's height is used. */
        double lastUsed();
    }

    /** Whether there are several and the last has little on it. */
    static boolean endsNearlyEmpty(Filled filled, double height) {
        return filled.sheets() > 1 && filled.lastUsed() < LITTLE * height;
    }

    /**
     * The sheets as full as can be, or as even as can be when the last would be nearly empty.
     *
     * @param height of a sheet's room
     * @param fill fills sheets but for a height that it leaves free on each
     */
    static <F extends Filled> F even(double height, DoubleFunction<F> fill) {
        F best = fill.apply(0);
        if (!endsNearlyEmpty(best, height)) {
            return best;
        }
        double low = 0;
        double high = height / 2;
        for (int i = 0; i < STEPS; i++) {
            double middle = (low + high) / 2;
            F less = fill.apply(middle);
            if (less.sheets() > best.sheets()) {
                high = middle;
            } else {
                best = less;
                low = middle;
            }
        }
        return best;
    }
}
