package org.baywright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.baywright.model.cutting.CuttingPlan;
import org.baywright.model.cutting.SectionPlan;
import org.baywright.model.nesting.SectionCuts;
import org.baywright.model.nesting.ShedCutting;

/** A cutting plan in a line. */
final class PlanLine {
    private PlanLine() {}

    /** What a section takes, in words. */
    static String of(SectionPlan section, boolean priced) {
        CuttingPlan plan = section.plan();
        String name = section.section().isEmpty() ? "" : section.section() + ": ";
        String cost = priced ? String.format(Locale.ROOT, ", cost %.2f", plan.cost()) : "";
        return String.format(
                Locale.ROOT,
                "%s%d bars, %d layouts, %.1f m bought, %.1f m used, %.1f %% waste%s",
                name,
                plan.barCount(),
                plan.layouts().size(),
                plan.purchasedMm() / 1000,
                plan.usedMm() / 1000,
                plan.wastePercent(),
                cost);
    }

    /** What a section of a shed takes, in words. */
    static String of(SectionCuts cuts, boolean priced) {
        String cost = priced ? String.format(Locale.ROOT, ", cost %.2f", cuts.cost()) : "";
        return String.format(
                Locale.ROOT,
                "%s: %d bars, %d layouts, %.1f m bought, %.1f m used, %.1f %% waste%s",
                cuts.section().designation(),
                cuts.barCount(),
                cuts.bars().size(),
                cuts.purchasedMm() / 1000,
                cuts.usedMm() / 1000,
                cuts.wastePercent(),
                cost);
    }

    /** All sections of a shed together, for programs to read. */
    static String sum(ShedCutting cutting) {
        return sum(cutting.barCount(), cutting.purchasedMm(), cutting.boundMm(), cutting.proven());
    }

    /** Each piece that no stock length takes. */
    static List<String> specials(ShedCutting cutting) {
        List<String> lines = new ArrayList<>();
        for (SectionCuts cuts : cutting.sections()) {
            cuts.bars().stream()
                    .filter(cuts::isSpecial)
                    .forEach(bar -> lines.add("advice: piece "
                            + bar.pieces().get(0).blank().mark() + " of "
                            + cuts.section().designation() + " is longer than every stock length: ask for "
                            + plain(bar.stock().lengthMm()) + "; a splice is the engineer's decision"));
        }
        return lines;
    }

    /** All sections together, for programs to read. */
    static String sum(List<SectionPlan> plans) {
        int bars = plans.stream().mapToInt(p -> p.plan().barCount()).sum();
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
