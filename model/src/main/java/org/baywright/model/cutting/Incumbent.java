package org.baywright.model.cutting;

import java.util.Arrays;
import java.util.Optional;

/** The best plan so far, if any, and how good any plan could be. */
final class Incumbent {
    private Optional<Draft> best;
    private long cost;
    private long bound;

    /** Starts from a first plan, or from none: then any plan is better. */
    Incumbent(Order order, Optional<Draft> first, long bound) {
        best = first;
        cost = first.map(Draft::cost).orElse(everything(order) + 1);
        this.bound = Math.min(bound, cost);
    }

    /** Starts from a plan that is known elsewhere, and so is never told. */
    Incumbent(long cost) {
        best = Optional.empty();
        this.cost = cost;
        bound = 0;
    }

    /** More than any plan costs: no plan has more bars than pieces. */
    private static long everything(Order order) {
        long pieces = Arrays.stream(order.demand()).asLongStream().sum();
        return pieces * Arrays.stream(order.cost()).max().orElse(0);
    }

    void offer(Draft draft) {
        if (draft.cost() < cost) {
            Draft trimmed = draft.trimmed();
            best = Optional.of(trimmed);
            cost = trimmed.cost();
        }
    }

    /** Takes a plan in the place of one that costs as much, too. */
    void prefer(Draft draft) {
        if (draft.cost() == cost) {
            best = Optional.of(draft);
        }
        offer(draft);
    }

    void raiseBound(double proven) {
        bound = Math.max(bound, Math.min(cost, (long) Math.ceil(proven)));
    }

    Optional<Draft> best() {
        return best;
    }

    long bound() {
        return bound;
    }

    boolean isProven() {
        return bound >= cost;
    }

    /** The most a plan may cost to be better. */
    long budget() {
        return cost - 1;
    }
}
