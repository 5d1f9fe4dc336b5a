package org.baywright.model.cutting;

import java.util.Arrays;
import java.util.List;
import java.util.Set;

/**
 * Column generation: the linear program over all patterns, of which only those worth having are ever made. Its bound is
 * recomputed in whole numbers from rounded prices, so that no rounding of the simplex can make it too high. Prices are
 * pulled towards those of the best bound so far, since the simplex's own swing wildly at first.
 *
 * @source Gilmore & Gomory (1961, 1963); whole-number prices: Held, Cook & Sewell (2012), Mathematical Programming
 *     Computation 4, 363–381; pulled prices: Wentges (1997), International Transactions in Operational Research 4,
 *     151–162
 */
final class Relaxation {
    private static final int NARROW = 1000;
    private static final int MOST_FOUND = 20;
    private static final double PULL = 0.8;

    private final Order order;
    private final Deadline deadline;
    private final Master master;
    private final Pricer pricer;
    private final double scale;
    private Prices centre;
    private double bound;
    private boolean optimal;

    Relaxation(Order order, Deadline deadline) {
        this.order = order;
        this.deadline = deadline;
        master = Master.forPricing(order, deadline);
        pricer = new Pricer(order);
        long pieces = Arrays.stream(order.demand()).asLongStream().sum();
        scale = 0x1p60 / (Master.STAND_IN * (pieces + 1));
        centre = Prices.byLength(order, master.dearest(), scale);
    }

    Master master() {
        return master;
    }

    /** A proven lower bound on the cost of what was last solved, in cost steps of the order. */
    double bound() {
        return bound;
    }

    /** The prices that gave the best bound of what was last solved. */
    Prices prices() {
        return centre;
    }

    /** Whether the last program was solved to the end, so that its prices are the best. */
    boolean isOptimal() {
        return optimal;
    }

    /** Solves the whole order. */
    void solve(Set<Pattern> start) {
        start.forEach(master::add);
        solve(order.demand(), order.limit(), Long.MAX_VALUE);
    }

    /**
     * Solves for a demand and what is left of each stock, both no more than the order's. Stops early when the bound
     * passes the budget, or when more patterns cannot raise the rounded bound.
     *
     * @return whether a plan within the budget may exist
     */
    boolean solve(int[] demand, int[] left, long budget) {
        restart(demand, left);
        master.optimise();
        bound = Double.NEGATIVE_INFINITY;
        raiseBound(centre, demand, left);
        if (deadline.passed() || isSettled(budget)) {
            return Math.ceil(bound) <= budget;
        }
        int width = NARROW;
        int missed = 0;
        while (true) {
            master.optimise();
            if (deadline.passed()) {
                return true;
            }
            double pull = Math.max(0, 1 - (1 - PULL) * (1 + missed));
            Prices now = Prices.of(master, order, scale).towards(centre, pull);
            Pricer.Found found = pricer.search(now.item(), demand, now.thresholds(left), width, MOST_FOUND);
            raiseBound(now.sound(order, found.most(), master.dearest()), demand, left);
            if (isSettled(budget)) {
                return Math.ceil(bound) <= budget;
            }
            if (addHelps(found.patterns())) {
                missed = 0;
            } else if (pull > 0) {
                missed++;
            } else if (found.complete()) {
                optimal = true;
                return Math.ceil(bound) <= budget;
            } else {
                width *= 8;
            }
        }
    }

    private void restart(int[] demand, int[] left) {
        master.allowAll();
        master.optimise();
        master.setRight(demand, left, new int[left.length]);
        master.repair();
        master.setAllowed(p -> p.timesWithin(demand) > 0);
        optimal = false;
    }

    private boolean addHelps(List<Pattern> patterns) {
        boolean helps = false;
        for (Pattern p : patterns) {
            helps |= master.isWanted(p) && master.add(p);
        }
        return helps;
    }

    /** Takes the bound that sound prices give if it is better, and the prices with it. */
    private void raiseBound(Prices sound, int[] demand, int[] left) {
        double exact = sound.bound(order, demand, left, master.dearest()) * master.dearest();
        // Far more than the rounding of the few sums behind it.
        double safe = exact * (1 - 1e-12) - 1e-9;
        if (safe > bound) {
            bound = safe;
            centre = sound;
        }
    }

    /** Whether the bound, rounded up, says all it ever will. */
    private boolean isSettled(long budget) {
        return Math.ceil(bound) > budget || !master.isPretence() && Math.ceil(bound) >= Math.ceil(master.cost() - 1e-4);
    }
}
