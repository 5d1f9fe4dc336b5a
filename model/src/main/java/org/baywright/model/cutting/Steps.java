package org.baywright.model.cutting;

/** How many steps a search may still take, unless its time is up before. */
final class Steps {
    private static final int STEPS_PER_LOOK = 4096;

    private final Deadline deadline;
    private long left;

    Steps(Deadline deadline) {
        this.deadline = deadline;
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
        if (--left % STEPS_PER_LOOK == 0 && deadline.passed()) {
            left = Math.min(left, 0);
        }
        return left > 0;
    }
}
