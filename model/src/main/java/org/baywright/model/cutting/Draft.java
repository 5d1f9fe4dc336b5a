package org.baywright.model.cutting;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;

/** A plan in the making: how many bars of each pattern. */
final class Draft {
    private final Order order;
    private final Map<Pattern, Integer> times = new LinkedHashMap<>();
    private long cost;

    Draft(Order order) {
        this.order = order;
    }

    Draft copy() {
        Draft copy = new Draft(order);
        copy.addAll(this);
        return copy;
    }

    void add(Pattern pattern, int bars) {
        if (bars > 0) {
            times.merge(pattern, bars, Integer::sum);
            cost += order.cost()[pattern.stock] * bars;
        }
    }

    void addAll(Draft other) {
        other.times.forEach(this::add);
    }

    Map<Pattern, Integer> times() {
        return times;
    }

    /** In the cost steps of the order. */
    long cost() {
        return cost;
    }

    /** How many bars there are. */
    int bars() {
        return times.values().stream().mapToInt(Integer::intValue).sum();
    }

    /** How many different layouts there are. */
    int layouts() {
        return times.size();
    }

    /** The longest room left on any one bar, in micrometres. */
    long longestOffcut() {
        return times.keySet().stream().mapToLong(order::leftUm).max().orElse(0);
    }

    /** What is still to be cut; negative where too many are made. */
    int[] missing(int[] demand) {
        int[] missing = demand.clone();
        times.forEach((p, n) -> p.take(missing, n));
        return missing;
    }

    /** The same plan without the pieces made too many, each bar from the cheapest stock that still takes it. */
    Draft trimmed() {
        int[] missing = missing(order.demand());
        if (Arrays.stream(missing).noneMatch(d -> d < 0)) {
            return this;
        }
        Map<Pattern, Integer> bars = new LinkedHashMap<>(times);
        for (int i = 0; i < missing.length; i++) {
            while (missing[i] < 0) {
                missing[i] += dropFrom(bars, i, -missing[i]);
            }
        }
        Draft trimmed = new Draft(order);
        int[] left = order.limit().clone();
        bars.forEach((p, n) -> {
            for (int k = 0; k < n && p.item.length > 0; k++) {
                int s = order.cheapest(order.load(p), left);
                order.draw(left, s, 1);
                trimmed.add(p.from(s), 1);
            }
        });
        return trimmed;
    }

    private int dropFrom(Map<Pattern, Integer> bars, int i, int surplus) {
        Pattern from = bars.keySet().stream()
                .filter(p -> Arrays.binarySearch(p.item, i) >= 0)
                .findFirst()
                .orElseThrow();
        int each = from.count[Arrays.binarySearch(from.item, i)];
        int perBar = Math.min(each, surplus);
        int barsHit = Math.min(bars.get(from), surplus / perBar);
        int[] counts = new int[order.count()];
        for (int k = 0; k < from.item.length; k++) {
            counts[from.item[k]] = from.count[k];
        }
        counts[i] -= perBar;
        bars.merge(from, -barsHit, Integer::sum);
        bars.values().removeIf(n -> n == 0);
        bars.merge(Pattern.of(from.stock, counts), barsHit, Integer::sum);
        return perBar * barsHit;
    }

    /** Whether each bar fits, no stock is overdrawn and each piece is made exactly as often as asked. */
    boolean isRight() {
        Map<Integer, Integer> drawn = new TreeMap<>();
        times.forEach((p, n) -> drawn.merge(p.stock, n, Integer::sum));
        return times.keySet().stream().allMatch(p -> order.load(p) <= order.capacity()[p.stock])
                && drawn.entrySet().stream().allMatch(e -> e.getValue() <= order.limit()[e.getKey()])
                && Arrays.stream(missing(order.demand())).allMatch(d -> d == 0);
    }
}
