package org.baywright.cli;

import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.baywright.model.cutting.CuttingPlan;
import org.baywright.model.cutting.SectionPlan;

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

    /** All sections together, for programs to read. */
    static String sum(List<SectionPlan> plans) {
        int bars = plans.stream().mapToInt(p -> p.plan().barCount()).sum();
        boolean proven = plans.stream().allMatch(p -> p.plan().proven());
        return "bars " + bars + " purchased_mm " + plain(total(plans, CuttingPlan::purchasedMm)) + " lower_bound_mm "
                + plain(total(plans, CuttingPlan::purchasedBoundMm)) + " proven " + proven;
    }

    private static double total(List<SectionPlan> plans, ToDoubleFunction<CuttingPlan> figure) {
        return plans.stream().mapToDouble(p -> figure.applyAsDouble(p.plan())).sum();
    }

    /** A whole number without a point, else up to three decimals. */
    private static String plain(double mm) {
        return String.format(Locale.ROOT, "%.3f", mm).replaceAll("\\.?0+$", "");
    }
}
