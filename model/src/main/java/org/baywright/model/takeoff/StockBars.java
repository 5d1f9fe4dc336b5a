package org.baywright.model.takeoff;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * How many bars of one length a list of pieces needs: pieces longest first, each into the first bar with room.
 *
 * <p>@source first-fit decreasing: D. S. Johnson, Near-optimal bin packing algorithms, 1973 (thesis)
 *
 * @param lengthMm of a bar
 * @param bars how many
 */
record StockBars(double lengthMm, int bars) {
    /** Saw cut of a cold saw. Common practice, no source. */
    static final double KERF = 3;

    /** Squared off each bar before the first piece. Common practice, no source. */
    static final double TRIM = 10;

    double totalMm() {
        return lengthMm * bars;
    }

    /** The stock length that buys the least steel; the shorter one of equals. Pieces must fit the longest. */
    static StockBars least(List<Double> stockLengths, List<Double> pieces) {
        double longest = pieces.stream().mapToDouble(p -> p).max().orElseThrow();
        return stockLengths.stream()
                .filter(s -> TRIM + longest <= s)
                .map(s -> filled(s, pieces))
                .min(Comparator.comparingDouble(StockBars::totalMm).thenComparingDouble(StockBars::lengthMm))
                .orElseThrow();
    }

    private static StockBars filled(double stock, List<Double> pieces) {
        List<Double> room = new ArrayList<>();
        for (double piece : pieces.stream().sorted(Comparator.reverseOrder()).toList()) {
            int bar = 0;
            while (bar < room.size() && room.get(bar) < piece) {
                bar++;
            }
            if (bar == room.size()) {
                room.add(stock - TRIM);
            }
            room.set(bar, room.get(bar) - piece - KERF);
        }
        return new StockBars(stock, room.size());
    }
}
