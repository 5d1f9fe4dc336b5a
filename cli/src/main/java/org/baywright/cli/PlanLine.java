package org.baywright.cli;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.baywright.model.cutting.CuttingPlan;
import org.baywright.model.cutting.SectionPlan;
import org.baywright.model.cutting.Stock;
import org.baywright.model.cutting.Verdict;
import org.baywright.model.nesting.SectionCuts;
import org.baywright.model.nesting.ShedCutting;

/** A cutting plan in a line. */
final class PlanLine {
    private PlanLine() {}

    /** What is told of a plan, of a list's section or a shed's. */
    private record Told(
            int toBuy,
            int bars,
            int layouts,
            double purchasedMm,
            double usedMm,
            double wastePercent,
            double longestOffcutMm,
            double cost,
            double boundCost,
            Verdict verdict) {}

    /** What a section takes, in words. */
    static String of(SectionPlan section, boolean priced) {
        CuttingPlan plan = section.plan();
        Told told = new Told(
                plan.barsToBuy(),
                plan.barCount(),
                plan.layouts().size(),
                plan.purchasedMm(),
                plan.usedMm(),
                plan.wastePercent(),
                plan.longestOffcutMm(),
                plan.cost(),
                plan.lowerBound(),
                plan.verdict());
        return line(section.section().isEmpty() ? "" : section.section() + ": ", told, priced);
    }

    /** What a section of a shed takes, in words. */
    static String of(SectionCuts cuts) {
        Told told = new Told(
                cuts.barsToBuy(),
                cuts.barCount(),
                cuts.bars().size(),
                cuts.purchasedMm(),
                cuts.usedMm(),
                cuts.wastePercent(),
                cuts.longestOffcutMm(),
                cuts.cost(),
                cuts.boundCost(),
                cuts.verdict());
        return line(cuts.section().designation() + ": ", told, !cuts.isByLength());
    }

    private static String counted(int count, String one) {
        return count + " " + one + (count == 1 ? "" : "s");
    }

    private static String line(String name, Told told, boolean priced) {
        int yard = told.bars - told.toBuy;
        String line = String.format(
                Locale.ROOT,
                "%s%s%s, %s, %.1f m bought, %.1f m used, %.1f %% waste, longest off-cut %.0f mm",
                name,
                counted(told.toBuy, "bar"),
                yard == 0 ? "" : " to buy and " + yard + " from the yard",
                counted(told.layouts, "layout"),
                told.purchasedMm / 1000,
                told.usedMm / 1000,
                told.wastePercent,
                Math.floor(told.longestOffcutMm));
        String cost =
                priced ? String.format(Locale.ROOT, ", cost %.2f, none under %.2f", told.cost, told.boundCost) : "";
        return line + cost + (told.verdict == Verdict.PROVEN ? "" : "; proven best: " + told.verdict.label());
    }

    /** Yard bars of a section that the plan does not use; none when all are used. */
    static Optional<String> unused(String section, Map<Stock, Integer> unused) {
        if (unused.isEmpty()) {
            return Optional.empty();
        }
        String bars = unused.entrySet().stream()
                .map(e -> e.getValue() + " x " + plain(e.getKey().lengthMm()))
                .collect(Collectors.joining(", "));
        return Optional.of(
                "note: " + (section.isEmpty() ? "" : section + ": ") + "left in the yard, not used: " + bars);
    }

    /** All sections of a shed together, for programs to read. */
    static String sum(ShedCutting cutting) {
        return sum(cutting.barsToBuy(), cutting.purchasedMm(), cutting.boundMm(), cutting.proven());
    }

    /** All sections together, for programs to read. */
    static String sum(List<SectionPlan> plans) {
        int bars = plans.stream().mapToInt(p -> p.plan().barsToBuy()).sum();
        boolean proven = plans.stream().allMatch(p -> p.plan().proven());
        return sum(bars, total(plans, CuttingPlan::purchasedMm), total(plans, CuttingPlan::purchasedBoundMm), proven);
    }

    private static String sum(int bars, double purchasedMm, double boundMm, boolean proven) {
        return "bars " + bars + " purchased_mm " + plain(purchasedMm) + " lower_bound_mm " + plain(boundMm) + " proven "
                + proven;
    }

    private static double total(List<SectionPlan> plans, ToDoubleFunction<CuttingPlan> figure) {
        return plans.stream().mapToDouble(p -> figure.applyAsDouble(p.plan())).sum();
    }

    /** A whole number without a point, else up to three decimals. */
    private static String plain(double mm) {
        return String.format(Locale.ROOT, "%.3f", mm).replaceAll("\\.?0+$", "");
    }
}
