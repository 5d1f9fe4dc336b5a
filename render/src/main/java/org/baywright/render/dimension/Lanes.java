package org.baywright.render.dimension;

import java.util.Optional;

/**
 * Places for texts that stand too close for one row: the fewest parallel lanes that hold them, dealt out in turn.
 *
 * @param centres along the row, one a text
 * @param count how many lanes; text i is in lane i modulo this
 */
record Lanes(double[] centres, int count) {
    /** Deals texts out to lanes; empty when not even one lane a text has room. */
    static Optional<Lanes> of(double[] wished, double[] sizes, double low, double high) {
        for (int count = 1; count <= Math.max(1, wished.length); count++) {
            double[] centres = new double[wished.length];
            boolean fits = true;
            for (int lane = 0; lane < count && fits; lane++) {
                fits = fill(lane, count, wished, sizes, low, high, centres);
            }
            if (fits) {
                return Optional.of(new Lanes(centres, count));
            }
        }
        return Optional.empty();
    }

    private static boolean fill(
            int lane, int count, double[] wished, double[] sizes, double low, double high, double[] centres) {
        Optional<double[]> spread = Spread.apart(every(wished, lane, count), every(sizes, lane, count), low, high);
        spread.ifPresent(found -> {
            for (int k = 0; k < found.length; k++) {
                centres[lane + k * count] = found[k];
            }
        });
        return spread.isPresent();
    }

    private static double[] every(double[] all, int first, int step) {
        double[] some = new double[(all.length - first + step - 1) / step];
        for (int k = 0; k < some.length; k++) {
            some[k] = all[first + k * step];
        }
        return some;
    }

    int lane(int text) {
        return text % count;
    }
}
