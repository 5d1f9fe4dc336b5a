package org.baywright.model.nesting;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.baywright.model.cutting.Saw;
import org.baywright.model.cutting.Stock;

/** The least cost of a few pieces by trying everything: every sharing among bars, every order, every turn. */
final class EveryWay {
    private final List<Stock> stocks;
    private final Saw saw;

    EveryWay(List<Stock> stocks, Saw saw) {
        this.stocks = stocks;
        this.saw = saw;
    }

    double leastCost(List<Need> needs) {
        List<Blank> pieces = new ArrayList<>();
        needs.forEach(n -> pieces.addAll(Collections.nCopies(n.quantity(), n.blank())));
        int n = pieces.size();
        double[] one = new double[1 << n];
        double[] best = new double[1 << n];
        for (int set = 1; set < 1 << n; set++) {
            one[set] = oneBar(pieces, set);
            best[set] = one[set];
            for (int part = (set - 1) & set; part > 0; part = (part - 1) & set) {
                best[set] = Math.min(best[set], one[part] + best[set ^ part]);
            }
        }
        return best[(1 << n) - 1];
    }

    private double oneBar(List<Blank> pieces, int set) {
        double reach = reach(pieces, set, 0, List.of());
        return stocks.stream()
                .filter(s -> reach <= s.lengthMm() + 1e-9)
                .mapToDouble(Stock::cost)
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    private double reach(List<Blank> pieces, int set, double at, List<Laid> before) {
        if (set == 0) {
            return before.get(0).rightTipMm();
        }
        double least = Double.POSITIVE_INFINITY;
        for (int k = 0; k < pieces.size(); k++) {
            if ((set >> k & 1) == 1) {
                for (Turn turn : pieces.get(k).turns()) {
                    Laid next = new Laid(pieces.get(k), turn, 0);
                    double from = before.isEmpty()
                            ? saw.endTrimMm() + next.left().setbackMm()
                            : at + before.get(0).right().gapTo(next.left(), saw.kerfMm());
                    Laid there = new Laid(pieces.get(k), turn, from);
                    double to = from + pieces.get(k).middleMm();
                    least = Math.min(least, reach(pieces, set ^ 1 << k, to, List.of(there)));
                }
            }
        }
        return least;
    }
}
