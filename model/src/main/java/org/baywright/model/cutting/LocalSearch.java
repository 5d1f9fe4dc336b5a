package org.baywright.model.cutting;

import java.util.Optional;

/**
 * Better plans by small changes: {@link Swapping} where next to nothing may be left over, else and after it
 * {@link Repacking}, which knows one stock length only. It can be left and taken up again.
 */
final class LocalSearch {
    // A try of a swap costs as much as so many of the other's steps.
    private static final int SWAP_WORK = 2;

    private final Order order;
    private Optional<Repacking> repacking = Optional.empty();
    private Optional<Swapping> swapping = Optional.empty();
    private long swappingTo = -1;
    private Draft best;

    /** Starts from a plan. */
    LocalSearch(Order order, Draft plan) {
        this.order = order;
        best = plan;
        startFrom(plan);
    }

    /** Whether any of this is for an order. */
    static boolean suits(Order order) {
        return Swapping.suits(order);
    }

    /** Goes on from a plan if it is better than the best of this search. */
    void startFrom(Draft plan) {
        best = plan.cost() < best.cost() ? plan : best;
        boolean isBehind = repacking.filter(r -> r.best().cost() <= best.cost()).isEmpty();
        if (isBehind && order.stocks() == 1) {
            repacking = Optional.of(new Repacking(order, best));
        }
    }

    /**
     * Goes on for a measure of work, until a deadline or until a plan costs no more than is enough.
     *
     * @return the best plan yet
     */
    Draft improve(long enough, long allowed, Deadline deadline) {
        if (best.cost() > enough) {
            if (enough != swappingTo) {
                swappingTo = enough;
                swapping = Swapping.towards(order, best, enough);
            }
            best = swapping.flatMap(s -> s.improve(allowed / SWAP_WORK, deadline))
                    .or(() -> repacking.map(r -> r.improve(enough, allowed, deadline)))
                    .orElse(best);
            if (order.stocks() > 1) {
                stepDown(enough, allowed / SWAP_WORK, deadline);
            }
        }
        return best;
    }

    /** One step of cost after the other, as far as a measure of work takes each. */
    private void stepDown(long enough, long allowed, Deadline deadline) {
        Optional<Draft> less = Optional.of(best);
        while (less.isPresent() && best.cost() > enough + 1) {
            less = Swapping.towards(order, best, best.cost() - 1).flatMap(s -> s.improve(allowed, deadline));
            best = less.orElse(best);
        }
    }
}
