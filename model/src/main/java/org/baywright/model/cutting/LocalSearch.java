package org.baywright.model.cutting;

import java.util.Optional;

/** Better plans for one stock length by small changes: {@link Swapping} where next to nothing may be left over, else and
 * after it {@link Repacking}. It can be left and taken up again. */
final class LocalSearch {
    // A try of a swap costs as much as so many of the other's steps.
    private static final int SWAP_WORK = 2;

    private final Order order;
    private final Deadline deadline;
    private Repacking repacking;
    private Optional<Swapping> swapping = Optional.empty();
    private long swappingTo = -1;

    /** Starts from a plan. */
    LocalSearch(Order order, Draft plan, Deadline deadline) {
        this.order = order;
        this.deadline = deadline;
        repacking = new Repacking(order, plan, deadline);
    }

    /** Whether an order is of the kind this is for: one stock length without limit, and no overlaps. */
    static boolean suits(Order order) {
        return order.stocks() == 1 && !order.isLimited(0) && !order.hasFamilies();
    }

    /** Goes on from a plan if it is better than the best of this search. */
    void startFrom(Draft plan) {
        if (plan.cost() < repacking.best().cost()) {
            repacking = new Repacking(order, plan, deadline);
        }
    }

    /**
     * Goes on for a measure of work or until a plan costs no more than is enough.
     *
     * @return the best plan yet
     */
    Draft improve(long enough, long allowed) {
        Draft best = repacking.best();
        if (best.cost() <= enough) {
            return best;
        }
        if (enough != swappingTo) {
            swappingTo = enough;
            swapping = Swapping.towards(order, best, enough / order.cost()[0], deadline);
        }
        Optional<Draft> found = swapping.flatMap(s -> s.improve(allowed / SWAP_WORK));
        return found.orElseGet(() -> repacking.improve(enough, allowed));
    }
}
