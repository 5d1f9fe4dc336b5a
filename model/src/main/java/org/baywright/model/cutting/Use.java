package org.baywright.model.cutting;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How many bars of a pattern a linear program cuts, a fraction as a rule.
 *
 * @param pattern how they are cut
 * @param bars how many
 */
record Use(Pattern pattern, double bars) {
    private static final double TINY = 1e-4;

    static List<Use> of(Map<Pattern, Double> uses) {
        return uses.entrySet().stream()
                .map(e -> new Use(e.getKey(), e.getValue()))
                .toList();
    }

    /**
     * The same bars after exchanges are carried out: where a piece is wanting, it is cut in place of a longer one of its
     * family of which there are too many.
     */
    static List<Use> exchanged(Order order, int[] demand, Map<Pattern, Double> uses) {
        Map<Pattern, Double> now = new LinkedHashMap<>(uses);
        double[] surplus = new double[order.count()];
        for (int i = 0; i < surplus.length; i++) {
            surplus[i] = -Math.max(0, demand[i]);
        }
        uses.forEach((p, bars) -> {
            for (int k = 0; k < p.item.length; k++) {
                surplus[p.item[k]] += p.count[k] * bars;
            }
        });
        for (int j = 0; j < surplus.length; j++) {
            for (int i = j - 1; i >= 0 && surplus[j] < -TINY; i--) {
                if (order.family()[i] == order.family()[j]) {
                    while (Math.min(surplus[i], -surplus[j]) > TINY && exchangeOne(now, i, j, surplus)) {}
                }
            }
        }
        now.values().removeIf(bars -> bars < TINY);
        return of(now);
    }

    private static boolean exchangeOne(Map<Pattern, Double> now, int longer, int shorter, double[] surplus) {
        Optional<Map.Entry<Pattern, Double>> from = now.entrySet().stream()
                .filter(e -> e.getKey().holds(longer) > 0 && e.getValue() > TINY / 10)
                .max(Map.Entry.comparingByValue());
        if (from.isEmpty()) {
            return false;
        }
        Pattern pattern = from.get().getKey();
        double bars = Math.min(from.get().getValue(), Math.min(surplus[longer], -surplus[shorter]));
        surplus[longer] -= bars;
        surplus[shorter] += bars;
        now.merge(pattern, -bars, Double::sum);
        now.merge(pattern.exchanged(longer, shorter, surplus.length), bars, Double::sum);
        return true;
    }
}
