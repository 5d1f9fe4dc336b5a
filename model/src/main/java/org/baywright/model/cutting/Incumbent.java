package org.baywright.model.cutting;

/** The best plan so far and how good any plan could be. */
final class Incumbent {
    private Draft best;
    private long bound;

    Incumbent(Draft first, long bound) {
        best = first;
        this.bound = Math.min(bound, first.cost());
    }

    void offer(Draft draft) {
        if (draft.cost() < best.cost()) {
            best = draft.trimmed();
        }
    }

    void raiseBound(double proven) {
        bound = Math.max(bound, Math.min(best.cost(), (long) Math.ceil(proven)));
    }

    Draft best() {
        return best;
    }

    long bound() {
        return bound;
    }

    boolean isProven() {
        return bound >= best.cost();
    }

    /** The most a plan may cost to be better. */
    long budget() {
        return best.cost() - 1;
    }
}
