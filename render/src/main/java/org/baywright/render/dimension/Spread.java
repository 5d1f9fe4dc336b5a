package org.baywright.render.dimension;

import java.util.Optional;

/** Pushes things that stand in a row apart until none overlaps, moving them as little as can be. */
final class Spread {
    private Spread() {}

    /**
     * New centres in the same order, within the room; empty when they do not fit. With u = x − (widths before), the
     * wish "no overlap" is "u never falls", and the least sum of squared moves is isotonic regression.
     *
     * <p>@source pool-adjacent-violators, Ayer et al. 1955 (from memory)
     *
     * @param wished centres, never falling
     * @param sizes room each takes along the row
     */
    static Optional<double[]> apart(double[] wished, double[] sizes, double low, double high) {
        int n = wished.length;
        if (n == 0) {
            return Optional.of(new double[0]);
        }
        double[] before = before(sizes);
        double least = low + sizes[0] / 2;
        double most = high - sizes[n - 1] / 2 - before[n - 1];
        if (least > most) {
            return Optional.empty();
        }
        double[] u = neverFalling(wished, before);
        double[] centres = new double[n];
        for (int i = 0; i < n; i++) {
            centres[i] = Math.min(most, Math.max(least, u[i])) + before[i];
        }
        return Optional.of(centres);
    }

    private static double[] before(double[] sizes) {
        double[] before = new double[sizes.length];
        for (int i = 1; i < sizes.length; i++) {
            before[i] = before[i - 1] + (sizes[i - 1] + sizes[i]) / 2;
        }
        return before;
    }

    private static double[] neverFalling(double[] wished, double[] before) {
        int n = wished.length;
        double[] mean = new double[n];
        int[] count = new int[n];
        int pools = 0;
        for (int i = 0; i < n; i++) {
            mean[pools] = wished[i] - before[i];
            count[pools++] = 1;
            while (pools > 1 && mean[pools - 2] > mean[pools - 1]) {
                int both = count[pools - 2] + count[pools - 1];
                mean[pools - 2] = (mean[pools - 2] * count[pools - 2] + mean[pools - 1] * count[pools - 1]) / both;
                count[--pools - 1] = both;
            }
        }
        return expanded(mean, count, n);
    }

    private static double[] expanded(double[] mean, int[] count, int n) {
        double[] u = new double[n];
        int i = 0;
        for (int pool = 0; i < n; pool++) {
            for (int k = 0; k < count[pool]; k++) {
                u[i++] = mean[pool];
            }
        }
        return u;
    }
}
