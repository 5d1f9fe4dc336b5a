package org.baywright.model.nesting;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.baywright.model.catalogue.Section;
import org.baywright.model.cutting.Deadline;
import org.baywright.model.cutting.Saw;
import org.baywright.model.cutting.Stock;
import org.baywright.model.cutting.Verdict;
import org.baywright.model.problem.Problem;
import org.baywright.model.problem.Where;

/**
 * How the pieces of one section are cut, with their mitres laid out. Least cost comes first (length, where bars have no
 * price); the bound holds for every way to lay the pieces,
 * so a plan that meets it is proven best.
 *
 * @param section what is cut
 * @param needs every piece, longest first
 * @param stocks what it may be cut from; a piece that they do not take has a bar of its own length
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
        return of(section, longestFirst, stocks, saw, Provision.withYard(longestFirst, stocks, saw), deadline)
                .or(() -> of(
                        section, longestFirst, stocks, saw, Provision.withoutYard(longestFirst, stocks, saw), deadline))
                .orElseThrow(() -> new IllegalStateException("pieces do not fit the bars they were to be cut from"));
    }

    private static Optional<SectionCuts> of(
            Section section, List<Need> needs, List<Stock> stocks, Saw saw, Provision provision, Deadline deadline) {
        List<LaidBar> specials =
                provision.toLength().stream().map(n -> special(n, saw)).toList();
        double ordered = specials.stream()
                .mapToDouble(b -> b.stock().lengthMm() * b.times())
                .sum();
        double cost = isByLength(stocks) ? ordered : 0;
        if (provision.stocked().isEmpty()) {
            return Optional.of(new SectionCuts(section, needs, stocks, specials, cost, ordered, true));
        }
        return Planned.of(new SectionJobs(provision.stocked(), stocks, saw), deadline)
                .map(planned -> new SectionCuts(
                        section,
                        needs,
                        stocks,
                        Stream.concat(planned.bars().stream(), specials.stream())
                                .toList(),
                        planned.boundCost() + cost,
                        planned.boundMm() + ordered,
                        planned.searched()));
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
        return searched ? Verdict.MITRES : Verdict.CUT_SHORT;
    }

    /** Whether what is made least is the length to buy, and not a cost. */
    public boolean isByLength() {
        return isByLength(stocks);
    }

    private static boolean isByLength(List<Stock> stocks) {
        return stocks.stream().allMatch(s -> s.isOffcut() || s.cost() == s.lengthMm());
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

    /** Each piece that is ordered at its own length, and what to do about it. */
    List<Problem> problems(Function<String, Where> where) {
        return bars.stream()
                .filter(this::isSpecial)
                .map(b -> toLength(b, where))
                .toList();
    }

    private Problem toLength(LaidBar bar, Function<String, Where> where) {
        Blank blank = bar.pieces().get(0).blank();
        boolean inYard = stocks.stream()
                .anyMatch(s -> s.isLimited()
                        && blank.tipMm() <= s.lengthMm() - bar.saw().endTrimMm() + FINE);
        String piece = "piece " + blank.mark() + " of " + section.designation();
        String message = inYard
                ? "the yard's bars take all but " + bar.times() + " of " + piece
                        + ", which is longer than every length to buy"
                : piece + " is longer than every stock length";
        String remedy = String.format(
                Locale.ROOT,
                "ordered as %d of %.0f: ask for that length, or give a longer stock length%s; a splice is the engineer's"
                        + " decision",
                bar.times(),
                bar.stock().lengthMm(),
                inYard ? " or more bars in the yard" : "");
        return Problem.advice("ordered-to-length", where.apply(inYard ? "saw.yard" : "saw.stock"), message, remedy);
    }

    /** Whether a bar is ordered at the length of its one piece, because no stock length takes it. */
    public boolean isSpecial(LaidBar bar) {
        return !stocks.contains(bar.stock());
    }

    /** What the bars cost; those ordered at their own length have no price, unless all are weighed by their length. */
    public double cost() {
        return total(b -> isSpecial(b) && !isByLength() ? 0 : b.stock().cost());
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
