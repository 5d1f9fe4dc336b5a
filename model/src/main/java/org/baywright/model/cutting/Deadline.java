package org.baywright.model.cutting;

/** When a search must stop. Nothing else in a search looks at the clock, so a search that ends earlier repeats. */
final class Deadline {
    private final long end;

    private Deadline(long end) {
        this.end = end;
    }

    static Deadline in(double seconds) {
        return new Deadline(System.nanoTime() + (long) (Math.min(seconds, 1e6) * 1e9));
    }

    boolean passed() {
        return System.nanoTime() - end >= 0;
    }
}
