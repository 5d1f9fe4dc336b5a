package org.baywright.model.cutting;

import java.util.Arrays;
import java.util.List;

/**
 * Column generation: the linear program over all patterns, of which only those worth having are ever made. Its bound is
 * recomputed in whole numbers from rounded prices, so that no rounding of the simplex can make it too high.
 *
 * @source Gilmore & Gomory (1961, 1963); bound from prices that are not yet optimal: Farley (1990), Operations Research
 *     38(5), 922–923; whole-number prices: Held, Cook & Sewell (2012), Mathematical Programming Computation 4, 363–381
 */
final class Relaxation {
    private static final int NARROW = 400;

    private final Order order;
    private final Deadline deadline;
    private final Master master;
    private final Pricer pricer;
    private final double scale;
    private long[] value;
    private double bound;
    private boolean optimal;

    Relaxation(Order order, Deadline deadline) {
        this.order = order;
        this.deadline = deadline;
        master = new Master(order, deadline);
        pricer = new Pricer(order, deadline);
        long pieces = Arrays.stream(order.demand()).asLongStream().sum();
        scale = 0x1p60 / (Master.STAND_IN * (pieces + 1));
    }

    Master master() {
        return master;
    }

    /** A proven lower bound on the cost of what was last solved, in cost steps of the order. */
    double bound() {
        return bound;
    }

    /** Whether the last program was solved to the end, so that its prices are the best. */
    boolean isOptimal() {
        return optimal;
    }

    /** The prices behind the bound, as whole numbers; one dearest bar is {@link #scale()}. */
    long[] values() {
        return value.clone();
    }

    double scale() {
        return scale;
    }

    /**
     * Solves for a demand and what is left of each stock, both no more than the order's. Stops early when the bound
     * passes the budget, or when more patterns cannot raise the rounded bound.
     *
     * @return whether a plan within the budget may exist
     */
    boolean solve(int[] demand, int[] left, long budget) {
        master.allowAll();
        master.optimise();
        master.setRight(demand, left);
        master.repair();
        master.setAllowed(p -> p.timesWithin(demand) > 0);
        bound = 0;
        optimal = false;
        int width = NARROW;
        while (true) {
            master.optimise();
            if (deadline.passed()) {
                return true;
            }
            long[] threshold = thresholds(left);
            value = wholePrices();
            Pricer.Found found = pricer.search(value, demand, threshold, width, 2 + order.count() / 8);
            if (found.complete() && raiseBound(demand, left, found.most(), budget)) {
                return Math.ceil(bound) <= budget;
            }
            boolean added = false;
            for (Pattern p : found.patterns()) {
                added |= master.add(p);
            }
            if (!added) {
                if (found.complete()) {
                    optimal = true;
                    return Math.ceil(bound) <= budget;
                }
                width *= 8;
            }
        }
    }

    /** Solves the whole order. */
    void solve(List<Pattern> start) {
        start.forEach(master::add);
        solve(order.demand(), order.limit(), Long.MAX_VALUE);
    }

    private long[] wholePrices() {
        double[] price = master.prices();
        long[] whole = new long[order.count()];
        for (int i = 0; i < whole.length; i++) {
            whole[i] = (long) (Math.min(Master.STAND_IN, Math.max(0, price[i])) * scale);
        }
        return whole;
    }

    private long[] thresholds(int[] left) {
        long[] threshold = new long[order.stocks()];
        for (int s = 0; s < threshold.length; s++) {
            double worth = order.cost()[s] / master.dearest() - master.limitPrice(s);
            threshold[s] = left[s] == 0 ? Long.MAX_VALUE : (long) ((worth + 1e-9) * scale);
        }
        return threshold;
    }

    /** Takes the bound of the present prices; true when it says all that rounding lets it say. */
    private boolean raiseBound(int[] demand, int[] left, long[] most, long budget) {
        double worth = 0;
        for (int i = 0; i < demand.length; i++) {
            worth += (double) value[i] * demand[i];
        }
        double shrink = 1;
        for (int s = 0; s < most.length; s++) {
            if (!order.isLimited(s)) {
                shrink = Math.max(shrink, most[s] / (costOf(s)));
            }
        }
        worth /= shrink;
        for (int s = 0; s < most.length; s++) {
            if (order.isLimited(s) && left[s] > 0) {
                worth -= left[s] * Math.max(0, most[s] / shrink - costOf(s));
            }
        }
        // Far more than the rounding of the few sums above.
        double safe = worth / scale * master.dearest() * (1 - 1e-12) - 1e-9;
        bound = Math.max(bound, safe);
        return Math.ceil(bound) > budget || !master.isPretence() && Math.ceil(bound) >= Math.ceil(master.cost() - 1e-4);
    }

    private double costOf(int s) {
        return order.cost()[s] / master.dearest() * scale;
    }
}
