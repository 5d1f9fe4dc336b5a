package org.baywright.model.cutting;

import java.util.function.BooleanSupplier;
import java.util.function.LongSupplier;

/**
 * When a search must stop, by one of two clocks:
 *
 * <ul>
 *   <li>{@link #after} a number of steps, which the search counts itself. Such a search does the same each time, however
 *       slow or busy the machine, and so finds the same plan: an order is planned so;
 *   <li>{@link #in} a number of seconds, for who must have an answer by then. A search that is cut short so may find another
 *       plan the next time.
 * </ul>
 *
 * Nothing else in a search looks at the time. A step is what takes about a nanosecond where the weights were measured, so
 * both clocks go about alike.
 */
public final class Deadline {
    private static final double STEPS_PER_SECOND = 1e9;
    // A share is never less, so that each search comes as far as a plan that is not merely the first.
    private static final long LEAST_SHARE = 10_000_000;

    private final Clock clock;
    private final long end;
    private final BooleanSupplier needless;

    private Deadline(Clock clock, long end, BooleanSupplier needless) {
        this.clock = clock;
        this.end = end;
        this.needless = needless;
    }

    /** What a search tells its work to, and asks how far it is. */
    private interface Clock {
        long now();

        void count(long steps);

        /** The same time from here on, for a search beside. */
        Clock fork();

        void moveTo(long time);
    }

    private static final class Counted implements Clock {
        private long steps;

        Counted(long steps) {
            this.steps = steps;
        }

        @Override
        public long now() {
            return steps;
        }

        @Override
        public void count(long more) {
            steps += more;
        }

        @Override
        public Clock fork() {
            return new Counted(steps);
        }

        @Override
        public void moveTo(long time) {
            steps = time;
        }
    }

    private record Timed(LongSupplier nanoseconds) implements Clock {
        @Override
        public long now() {
            return nanoseconds.getAsLong();
        }

        @Override
        public void count(long steps) {
            // Time passes by itself.
        }

        @Override
        public Clock fork() {
            return this;
        }

        @Override
        public void moveTo(long time) {
            // It is the same time for all.
        }
    }

    /** Once a number of steps has been counted. */
    public static Deadline after(long steps) {
        return new Deadline(new Counted(0), steps, () -> false);
    }

    /** Once a number of seconds has passed. */
    public static Deadline in(double seconds) {
        return in(seconds, System::nanoTime);
    }

    static Deadline in(double seconds, LongSupplier nanoseconds) {
        long length = (long) (Math.min(seconds, 1e6) * STEPS_PER_SECOND);
        return new Deadline(new Timed(nanoseconds), nanoseconds.getAsLong() + length, () -> false);
    }

    /** Counts work that was done; the weights of all that count are such that a step is about a nanosecond. */
    void count(long steps) {
        clock.count(steps);
    }

    /** Whether the search must stop. */
    public boolean passed() {
        return left() <= 0 || needless.getAsBoolean();
    }

    /** How many steps, or nanoseconds, are left. */
    public long left() {
        return end - clock.now();
    }

    /** One of so many equal parts of what is left; what it takes is gone from the whole. */
    public Deadline share(int parts) {
        return new Deadline(clock, clock.now() + Math.max(LEAST_SHARE, left() / parts), needless);
    }

    /** For a search beside, which counts for itself from here on. */
    Deadline fork() {
        return new Deadline(clock.fork(), end, needless);
    }

    /** The same, or earlier: when a search has become needless. */
    Deadline orWhen(BooleanSupplier searchIsNeedless) {
        return new Deadline(clock, end, searchIsNeedless);
    }

    /**
     * Goes on when a search beside has ended: from where the later of the two stands, as they ran side by side. Where that
     * one made this one needless, nobody knows how far this one had come, so then from where that one stands.
     */
    void join(Deadline beside, boolean wasNeedless) {
        clock.moveTo(wasNeedless ? beside.clock.now() : Math.max(clock.now(), beside.clock.now()));
    }
}
