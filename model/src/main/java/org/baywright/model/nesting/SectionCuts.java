package org.baywright.model.nesting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.ToDoubleFunction;
import org.baywright.model.catalogue.Section;
import org.baywright.model.cutting.Deadline;
import org.baywright.model.cutting.Saw;
import org.baywright.model.cutting.Stock;
import org.baywright.model.cutting.Verdict;

/**
 * How the pieces of one section are cut, with their mitres laid out. Least cost comes first (length, where bars have no
 * price); the bound holds for every way to lay the pieces,
 * so a plan that meets it is proven best.
 *
 * @param section what is cut
 * @param needs every piece, longest first
 * @param stocks what it may be cut from; a piece longer than all has a bar of its own length
 * @param bars those cut alike together
 * @param boundCost no plan costs less
 * @param boundMm no plan buys less
 * @param searched whether the search came to its end
 */
public record SectionCuts(
        Section section,
        List<Need> needs,
        List<Stock> stocks,
        List<LaidBar> bars,
        double boundCost,
        double boundMm,
        boolean searched) {
    private static final double FINE = 1e-6;
    private static final double SPECIAL_STEP = 10;

    /** Copies the lists. */
    public SectionCuts {
        Objects.requireNonNull(section);
        needs = List.copyOf(needs);
        stocks = List.copyOf(stocks);
        bars = List.copyOf(bars);
    }

    /** The best plan found by a deadline. */
    static SectionCuts of(Section section, List<Need> needs, List<Stock> stocks, Saw saw, Deadline deadline) {
        List<Need> longestFirst = needs.stream()
                .sorted(Comparator.comparingDouble(n -> -n.blank().tipMm()))
                .toList();
        double longest = stocks.stream().mapToDouble(Stock::lengthMm).max().orElseThrow() - saw.endTrimMm();
        List<LaidBar> bars = new ArrayList<>();
        longestFirst.stream()
                .filter(n -> n.blank().tipMm() > longest + FINE)
                .map(n -> special(n, saw))
                .forEach(bars::add);
        double specials =
                bars.stream().mapToDouble(b -> b.stock().lengthMm() * b.times()).sum();
        List<Need> fitting = longestFirst.stream()
                .filter(n -> n.blank().tipMm() <= longest + FINE)
                .toList();
        if (fitting.isEmpty()) {
            return new SectionCuts(section, longestFirst, stocks, bars, specials, specials, true);
        }
        Planned planned = Planned.of(new SectionJobs(fitting, stocks, saw), deadline);
        bars.addAll(0, planned.bars());
        return new SectionCuts(
                section,
                longestFirst,
                stocks,
                bars,
                planned.boundCost() + specials,
                planned.boundMm() + specials,
                planned.searched());
    }

    /** A bar of the piece's own length, rounded up; never a splice. */
    private static LaidBar special(Need need, Saw saw) {
        double length = Math.ceil((need.blank().tipMm() + saw.endTrimMm() - FINE) / SPECIAL_STEP) * SPECIAL_STEP;
        return new LaidBar(Stock.length(length), Nest.of(List.of(need.blank()), saw), need.quantity(), saw);
    }

    /** The cheaper of two plans of the same section, with the higher of both bounds. */
    SectionCuts betterOf(SectionCuts other) {
        SectionCuts cheaper = other.cost() < cost() - FINE ? other : this;
        return new SectionCuts(
                section,
                needs,
                stocks,
                cheaper.bars,
                Math.max(boundCost, other.boundCost),
                Math.max(boundMm, other.boundMm),
                searched || other.searched);
    }

    private double total(ToDoubleFunction<LaidBar> each) {
        return bars.stream().mapToDouble(b -> each.applyAsDouble(b) * b.times()).sum();
    }

    /** Whether no plan costs less. */
    public boolean proven() {
        return cost() <= boundCost + FINE * Math.max(1, boundCost);
    }

    /** Whether the bound meets the cost, and if not, why. */
    public Verdict verdict() {
        if (proven()) {
            return Verdict.PROVEN;
        }
        return searched ? Verdict.MITRES : Verdict.OUT_OF_TIME;
    }

    /** Whether what is made least is the length to buy, and not a cost. */
    public boolean isByLength() {
        return bars.stream()
                .allMatch(b ->
                        b.stock().isOffcut() || b.stock().cost() == b.stock().lengthMm());
    }

    /** Yard bars that were given and are not used, by their stock. */
    public Map<Stock, Integer> unusedYard() {
        Map<Stock, Integer> used = new HashMap<>();
        bars.forEach(b -> used.merge(b.stock(), b.times(), Integer::sum));
        return Stock.unused(stocks, used);
    }

    /** The longest length left over from any one bar. */
    public double longestOffcutMm() {
        return bars.stream().mapToDouble(LaidBar::offcutMm).max().orElse(0);
    }

    /** Whether a bar is ordered at the length of its one piece, because no stock length takes it. */
    public boolean isSpecial(LaidBar bar) {
        return !stocks.contains(bar.stock());
    }

    /** What the bars cost. */
    public double cost() {
        return total(b -> b.stock().cost());
    }

    /** Bars cut, those from the yard included. */
    public int barCount() {
        return bars.stream().mapToInt(LaidBar::times).sum();
    }

    /** Bars to buy. */
    public int barsToBuy() {
        return bars.stream()
                .filter(b -> !b.stock().isOffcut())
                .mapToInt(LaidBar::times)
                .sum();
    }

    /** Length of the bars to buy. */
    public double purchasedMm() {
        return total(b -> b.stock().isOffcut() ? 0 : b.stock().lengthMm());
    }

    /** Length of all bars cut. */
    public double stockMm() {
        return total(b -> b.stock().lengthMm());
    }

    /** Length of the pieces along their middles. */
    public double usedMm() {
        return total(LaidBar::piecesMm);
    }

    /** Length turned to dust. */
    public double kerfMm() {
        return total(LaidBar::kerfMm);
    }

    /** Length left over in off-cuts. */
    public double offcutMm() {
        return total(LaidBar::offcutMm);
    }

    /** The share of the bars that ends in no piece. */
    public double wastePercent() {
        return bars.isEmpty() ? 0 : 100 * (1 - usedMm() / stockMm());
    }
}
