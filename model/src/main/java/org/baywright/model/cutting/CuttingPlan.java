package org.baywright.model.cutting;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.ToDoubleFunction;

/**
 * Which bars to take and how to cut each; it makes every piece of the job exactly as often as asked.
 *
 * @param job what was asked
 * @param layouts the bars, those cut alike together, most bars first
 * @param lowerBound a cost no plan can be under
 * @param proven whether no plan costs less
 */
public record CuttingPlan(CuttingJob job, List<Layout> layouts, double lowerBound, boolean proven) {
    /** Copies the list; no plan costs less than the bound. */
    public CuttingPlan {
        Objects.requireNonNull(job);
        layouts = List.copyOf(layouts);
        if (lowerBound > total(layouts, l -> l.stock().cost()) * (1 + 1e-12)) {
            throw new IllegalArgumentException("a plan cannot cost less than its lower bound");
        }
    }

    private static double total(List<Layout> layouts, ToDoubleFunction<Layout> each) {
        return layouts.stream()
                .mapToDouble(l -> each.applyAsDouble(l) * l.times())
                .sum();
    }

    /** What the bars cost. */
    public double cost() {
        return total(layouts, l -> l.stock().cost());
    }

    /** How many bars are cut, those from the yard included. */
    public int barCount() {
        return layouts.stream().mapToInt(Layout::times).sum();
    }

    /** Bars to buy. */
    public int barsToBuy() {
        return layouts.stream()
                .filter(l -> !l.stock().isOffcut())
                .mapToInt(Layout::times)
                .sum();
    }

    /** The longest length left over from any one bar. */
    public double longestOffcutMm() {
        return layouts.stream().mapToDouble(Layout::offcutMm).max().orElse(0);
    }

    /** Whether the bound meets the cost, and if not, why. */
    public Verdict verdict() {
        if (proven) {
            return Verdict.PROVEN;
        }
        return Cutter.isSearched(job) ? Verdict.CUT_SHORT : Verdict.TOO_MANY_LENGTHS;
    }

    /** Yard bars that were given and are not used, by their stock. */
    public Map<Stock, Integer> unusedYard() {
        Map<Stock, Integer> used = new HashMap<>();
        layouts.forEach(l -> used.merge(l.stock(), l.times(), Integer::sum));
        return Stock.unused(job.stocks(), used);
    }

    /** The length of all bars cut, those from the yard included. */
    public double stockMm() {
        return total(layouts, l -> l.stock().lengthMm());
    }

    /** The length of the bars to buy. */
    public double purchasedMm() {
        return total(layouts, l -> l.stock().isOffcut() ? 0 : l.stock().lengthMm());
    }

    /**
     * A length to buy that no plan can be under. Where bars are weighed by their length it is the proven bound; where
     * they have prices, the pieces less what the yard holds.
     */
    public double purchasedBoundMm() {
        double yard = job.stocks().stream()
                .filter(Stock::isOffcut)
                .mapToDouble(s -> s.lengthMm() * s.limit())
                .sum();
        return isByLength() ? lowerBound : Math.max(0, usedMm() - yard);
    }

    /** Whether what is made least is the length to buy, and not a cost. */
    public boolean isByLength() {
        return job.stocks().stream().allMatch(s -> s.isOffcut() || s.cost() == s.lengthMm());
    }

    /** The length of all pieces. */
    public double usedMm() {
        return total(layouts, Layout::piecesMm);
    }

    /** The length turned to dust. */
    public double kerfMm() {
        return total(layouts, Layout::kerfMm);
    }

    /** The length left over. */
    public double offcutMm() {
        return total(layouts, Layout::offcutMm);
    }

    /** The share of the bars that ends in no piece. */
    public double wastePercent() {
        return layouts.isEmpty() ? 0 : 100 * (1 - usedMm() / stockMm());
    }

    /** The bars one by one, each piece with its mark; marks are dealt out in the order of the cut list. */
    public List<Bar> bars() {
        Map<Order.Item, Deque<Piece>> waiting = new HashMap<>();
        Map<Piece, Integer> left = new HashMap<>();
        for (Piece p : job.pieces()) {
            waiting.computeIfAbsent(Order.Item.of(p), k -> new ArrayDeque<>()).add(p);
            left.merge(p, p.quantity(), Integer::sum);
        }
        List<Bar> bars = new ArrayList<>();
        for (Layout layout : layouts) {
            for (int n = 0; n < layout.times(); n++) {
                List<String> marks = new ArrayList<>();
                layout.cuts().forEach(c -> deal(c, waiting.get(Order.Item.of(c)), left, marks));
                bars.add(new Bar(layout, marks));
            }
        }
        return bars;
    }

    private static void deal(Cut cut, Deque<Piece> waiting, Map<Piece, Integer> left, List<String> marks) {
        for (int n = 0; n < cut.count(); n++) {
            while (left.get(waiting.element()) == 0) {
                waiting.remove();
            }
            marks.add(waiting.element().mark());
            left.merge(waiting.element(), -1, Integer::sum);
        }
    }
}
