package org.baywright.model.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.Map;

/** What must hold of every plan, worked out from its millimetres alone. */
final class PlanChecks {
    private PlanChecks() {}

    static void isRight(CuttingPlan plan) {
        plan.layouts().forEach(PlanChecks::fits);
        assertEquals(asked(plan), made(plan), "pieces made");
        drawn(plan).forEach((stock, bars) -> assertTrue(bars <= available(plan, stock), "stock is overdrawn"));
        assertTrue(plan.lowerBound() <= plan.cost() + 1e-9, "the bound is over the cost");
        assertTrue(!plan.proven() || plan.cost() - plan.lowerBound() < 1e-6 * plan.cost() + 1e-9, "proven with a gap");
    }

    /** n square pieces need n − 1 cuts; a run of mitred ones its overlap as well. */
    private static void fits(Layout layout) {
        double pieces = 0;
        double kerfs = 0;
        Map<Mitre, Double> overlaps = new HashMap<>();
        for (Cut cut : layout.cuts()) {
            pieces += cut.count() * cut.lengthMm();
            kerfs += cut.count()
                    * layout.saw().kerfMm()
                    / Math.cos(Math.toRadians(cut.mitre().angleDeg()));
            overlaps.put(
                    cut.mitre(),
                    cut.mitre().depthMm() * Math.tan(Math.toRadians(cut.mitre().angleDeg())));
        }
        double overlap = overlaps.values().stream().mapToDouble(o -> o).sum();
        double taken = pieces + kerfs - layout.saw().kerfMm() + layout.saw().endTrimMm() + overlap;
        assertTrue(taken <= layout.stock().lengthMm() + 1e-6, () -> "a bar of " + layout + " is " + taken);
    }

    private static Map<String, Integer> asked(CuttingPlan plan) {
        Map<String, Integer> asked = new HashMap<>();
        plan.job().pieces().forEach(p -> asked.merge(key(p.lengthMm(), p.mitre()), p.quantity(), Integer::sum));
        return asked;
    }

    private static Map<String, Integer> made(CuttingPlan plan) {
        Map<String, Integer> made = new HashMap<>();
        plan.layouts()
                .forEach(l -> l.cuts()
                        .forEach(c -> made.merge(key(c.lengthMm(), c.mitre()), c.count() * l.times(), Integer::sum)));
        return made;
    }

    private static String key(double lengthMm, Mitre mitre) {
        return Math.round(lengthMm * 1000) + " " + mitre;
    }

    private static Map<Stock, Integer> drawn(CuttingPlan plan) {
        Map<Stock, Integer> drawn = new HashMap<>();
        plan.layouts().forEach(l -> drawn.merge(l.stock(), l.times(), Integer::sum));
        return drawn;
    }

    private static long available(CuttingPlan plan, Stock stock) {
        return plan.job().stocks().stream()
                .filter(stock::equals)
                .mapToLong(Stock::limit)
                .sum();
    }
}
