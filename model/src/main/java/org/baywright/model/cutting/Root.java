package org.baywright.model.cutting;

import java.util.Arrays;

/** The linear program's answer for a whole order, from which patterns can be ruled out. */
final class Root {
    private final Order order;
    private final int mostPatterns;
    private final Prices prices;
    private final double bound;
    private final double perCost;

    Root(Order order, Relaxation relaxation, int mostPatterns) {
        this.order = order;
        this.mostPatterns = mostPatterns;
        prices = relaxation.prices();
        perCost = prices.scale() / order.dearest();
        bound = relaxation.bound();
    }

    /** Whether nothing better than the incumbent is left, once what was found is taken in. */
    boolean isClosed(Incumbent incumbent, long nodes, Deadline until) {
        double gap = (incumbent.budget() - bound + 1e-6) * perCost;
        double[] floor = Arrays.stream(prices.bar()).mapToDouble(b -> b - gap).toArray();
        return Enumeration.of(order, prices.item(), floor, mostPatterns, until)
                .map(patterns -> new Tree(order, patterns, incumbent, until).search(nodes))
                .orElse(false);
    }
}
