package org.baywright.model.cladding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.baywright.model.catalogue.SheetProfile;

/** Where sheets lie side by side, and how long they are cut. */
final class SheetRun {
    /** Sheets are cut to whole steps of this. @source rounding up 5 to 10 mm: common practice */
    private static final double STEP = 5;

    private SheetRun() {}

    /** How many sheets cover a width. */
    static int count(double width, SheetProfile profile) {
        return Math.max(1, (int) Math.ceil(width / profile.cover() - 1e-9));
    }

    /** A length as it is ordered. */
    static double ordered(double length) {
        return Math.ceil(length / STEP - 1e-9) * STEP;
    }

    /**
     * One sheet from end to end, or several lapped over rows where one would be longer than can be carried.
     *
     * @param rows where sheets may lap, from the lower end up
     * @return pairs of lower end and ordered length
     */
    static List<double[]> lengths(double low, double high, List<Double> rows, double lap, double longest) {
        List<double[]> lengths = new ArrayList<>();
        double from = low;
        double most = Math.floor(longest / STEP + 1e-9) * STEP;
        while (high - from > most + 1e-9) {
            double start = from;
            double reach = from + most - lap / 2;
            int left = (int) Math.ceil((high - from - lap) / (most - lap) - 1e-9);
            double even = from + (high - from) / left;
            double at = rows.stream()
                    .filter(r -> r > start + lap && r <= reach && r < high - lap)
                    .min(Comparator.comparingDouble(r -> Math.abs(r - even)))
                    .orElse(reach);
            lengths.add(new double[] {from, ordered(at + lap / 2 - from)});
            from = at - lap / 2;
        }
        lengths.add(new double[] {from, ordered(high - from)});
        return lengths;
    }
}
