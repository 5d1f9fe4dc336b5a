package org.baywright.model.cutting;

import java.util.Optional;
import java.util.Set;

/**
 * Whether anything costs less than a known plan, when what slanted pieces lose on a bar is counted bar by bar.
 *
 * @param better a plan that costs less, its bars full by the least loss their pieces can have
 * @param boundCost no plan costs less
 * @param closed whether the search came to its end
 */
public record Closing(Optional<CuttingPlan> better, double boundCost, boolean closed) {
    private static final int MOST_PATTERNS = 60_000;

    /**
     * Looks for a plan under a cost, to the end if the deadline allows.
     *
     * @param job pieces with their {@link Setbacks}, none longer than all stock
     * @param cost of the known plan
     */
    public static Closing under(CuttingJob job, double cost, Deadline deadline) {
        Order order = Order.of(job);
        Relaxation relaxation = Relaxation.of(order, Set.of(), deadline);
        relaxation.solve();
        long known = Math.round(cost / order.costUnit());
        Incumbent incumbent = new Incumbent(known);
        incumbent.raiseBound(relaxation.bound());
        Root root = new Root(order, relaxation, MOST_PATTERNS);
        boolean closed = incumbent.isProven();
        for (int round = 0; !closed && !deadline.passed() && round < 12; round++) {
            closed = root.isClosed(incumbent, 1000L << 2 * round, deadline);
        }
        if (closed) {
            incumbent.raiseBound(incumbent.budget() + 1);
        }
        Optional<CuttingPlan> better = incumbent.best().map(draft -> Cutter.plan(job, order, draft, incumbent));
        return new Closing(better, Math.min(cost, incumbent.bound() * order.costUnit()), closed);
    }
}
