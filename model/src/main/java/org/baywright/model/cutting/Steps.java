package org.baywright.model.cutting;

/** How many steps a search may still take, unless its deadline passes before. */
final class Steps {
    private static final int STEPS_PER_LOOK = 4096;

    private final Deadline deadline;
    private final long weight;
    private long left;

    /** With what a step counts towards the deadline. */
    Steps(Deadline deadline, long weight) {
        this.deadline = deadline;
        this.weight = weight;
    }

    long left() {
        return left;
    }

    void set(long steps) {
        left = steps;
    }

    /** Whether there are any and time is left. */
    boolean areLeft() {
        return left > 0 && !deadline.passed();
    }

    /** Takes one; whether that was not the last. */
    boolean take() {
        deadline.count(weight);
        if (--left % STEPS_PER_LOOK == 0 && deadline.passed()) {
            left = Math.min(left, 0);
        }
        return left > 0;
    }
}
