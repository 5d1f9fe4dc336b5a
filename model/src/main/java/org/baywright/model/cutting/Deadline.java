package org.baywright.model.cutting;

import java.util.function.BooleanSupplier;

/** When a search must stop. Nothing else in a search looks at the clock, so a search that ends earlier repeats. */
final class Deadline {
    private final long end;
    private final BooleanSupplier needless;

    private Deadline(long end, BooleanSupplier needless) {
        this.end = end;
        this.needless = needless;
    }

    static Deadline in(double seconds) {
        return new Deadline(System.nanoTime() + (long) (Math.min(seconds, 1e6) * 1e9), () -> false);
    }

    /** The same, or earlier: when a search has become needless. */
    Deadline orWhen(BooleanSupplier searchIsNeedless) {
        return new Deadline(end, searchIsNeedless);
    }

    boolean passed() {
        return System.nanoTime() - end >= 0 || needless.getAsBoolean();
    }
}
