package org.baywright.model.cutting;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Every plan of a tiny job, one piece after another onto every bar: slow, and too simple to be wrong. */
final class BruteForce {
    private final CuttingJob job;
    private final List<Piece> pieces = new ArrayList<>();
    private final List<OneBar> bars = new ArrayList<>();
    private Score best = new Score(Double.POSITIVE_INFINITY, 0, 0);

    /** Cost, then different layouts, then the longest off-cut. */
    record Score(double cost, int layouts, double offcutMm) {
        boolean betters(Score other) {
            if (Math.abs(cost - other.cost) > 1e-9) {
                return cost < other.cost;
            }
            return layouts != other.layouts ? layouts < other.layouts : offcutMm > other.offcutMm + 1e-9;
        }

        static Score of(CuttingPlan plan) {
            double offcut = plan.layouts().stream()
                    .mapToDouble(l -> room(
                            l.stock(),
                            l.cuts().stream()
                                    .flatMap(c ->
                                            Collections.nCopies(c.count(), new Piece("", c.lengthMm(), 1, c.mitre()))
                                                    .stream())
                                    .toList(),
                            l.saw()))
                    .max()
                    .orElse(0);
            return new Score(plan.cost(), plan.layouts().size(), offcut);
        }
    }

    private record OneBar(Stock stock, List<Piece> pieces) {}

    private BruteForce(CuttingJob job) {
        this.job = job;
        job.pieces().forEach(p -> pieces.addAll(Collections.nCopies(p.quantity(), p)));
    }

    /** The best score of any plan; the cost is infinite when there is none. */
    static Score best(CuttingJob job) {
        BruteForce force = new BruteForce(job);
        force.place(0);
        return force.best;
    }

    private void place(int k) {
        if (bars.stream().mapToDouble(b -> b.stock.cost()).sum() > best.cost + 1e-9) {
            return;
        }
        if (k == pieces.size()) {
            score();
            return;
        }
        for (OneBar bar : List.copyOf(bars)) {
            put(bar, k);
        }
        for (Stock stock : new HashSet<>(job.stocks())) {
            long drawn = bars.stream().filter(b -> b.stock.equals(stock)).count();
            if (drawn < stock.limit()) {
                OneBar bar = new OneBar(stock, new ArrayList<>());
                bars.add(bar);
                put(bar, k);
                bars.remove(bars.size() - 1);
            }
        }
    }

    private void put(OneBar bar, int k) {
        bar.pieces.add(pieces.get(k));
        if (room(bar.stock, bar.pieces, job.saw()) >= -1e-6) {
            place(k + 1);
        }
        bar.pieces.remove(bar.pieces.size() - 1);
    }

    private void score() {
        Set<String> layouts = bars.stream()
                .map(b -> b.stock + " "
                        + b.pieces.stream()
                                .map(p -> p.lengthMm() + " " + p.mitre())
                                .sorted()
                                .collect(Collectors.joining()))
                .collect(Collectors.toSet());
        Score score = new Score(
                bars.stream().mapToDouble(b -> b.stock.cost()).sum(),
                layouts.size(),
                bars.stream()
                        .mapToDouble(b -> room(b.stock, b.pieces, job.saw()))
                        .max()
                        .orElse(0));
        best = score.betters(best) ? score : best;
    }

    /** What is left of a bar, the kerf of the last cut not yet taken. */
    private static double room(Stock stock, List<Piece> on, Saw saw) {
        double taken = on.stream()
                        .mapToDouble(p -> p.lengthMm() + p.mitre().kerfMm(saw.kerfMm()))
                        .sum()
                + on.stream()
                        .map(Piece::mitre)
                        .distinct()
                        .mapToDouble(Mitre::overlapMm)
                        .sum();
        return stock.lengthMm() - saw.endTrimMm() + saw.kerfMm() - taken;
    }
}
