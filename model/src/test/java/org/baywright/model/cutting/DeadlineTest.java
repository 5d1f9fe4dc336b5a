package org.baywright.model.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DeadlineTest {
    private static final long LARGE = 1_000_000_000;
    private static final long SHORT = 60_000_000;

    /** Jobs that are not proven in so few steps: all parts of the search come to their turn. */
    static Stream<CuttingJob> hard() {
        CuttingJob shed = Instances.shed(3);
        List<Stock> stocks = List.of(Stock.length(6500), Stock.length(8000), Stock.length(12_000));
        return Stream.of(
                Instances.augmented(200, 20_000, 1).job(),
                Instances.spread(1000, 10_000, 0.1, 0.65, 1).job(),
                Instances.hard(200, 4).job(),
                new CuttingJob(Instances.augmented(67, 2500, 1).job().pieces(), shed.stocks(), shed.saw()),
                new CuttingJob(Instances.shed(5).pieces(), stocks, shed.saw()));
    }

    /** What a search found, and how much was left to do. */
    private record Outcome(CuttingPlan plan, long left) {
        static Outcome of(CuttingJob job) {
            Deadline deadline = Deadline.after(SHORT);
            return new Outcome(Cutter.plan(job, deadline), deadline.left());
        }
    }

    @ParameterizedTest
    @MethodSource("hard")
    void searchCutShortBySteppingDoesTheSameOnABusyMachine(CuttingJob job) {
        Outcome quiet = Outcome.of(job);
        PlanChecks.isRight(quiet.plan);
        assertTrue(quiet.left < SHORT, "nothing was counted");
        AtomicBoolean busy = new AtomicBoolean(true);
        List<Thread> loops = new ArrayList<>();
        IntStream.range(0, 8)
                .forEach(k -> loops.add(new Thread(() -> {
                    while (busy.get()) {
                        Thread.onSpinWait();
                    }
                })));
        loops.forEach(Thread::start);
        try {
            Outcome loaded = Outcome.of(job);
            assertEquals(quiet.left, loaded.left);
            assertTrue(quiet.equals(loaded), "another plan");
        } finally {
            busy.set(false);
        }
    }

    @Test
    void stepsAreCountedAndNotTimed() throws InterruptedException {
        Deadline deadline = Deadline.after(LARGE);
        Thread.sleep(2);
        assertEquals(LARGE, deadline.left());
        deadline.count(LARGE - 1);
        assertFalse(deadline.passed());
        deadline.count(1);
        assertTrue(deadline.passed());
    }

    @Test
    void secondsPassByThemselves() {
        AtomicLong clock = new AtomicLong(Long.MAX_VALUE - 5);
        Deadline deadline = Deadline.in(2, clock::get);
        deadline.count(LARGE * LARGE);
        assertFalse(deadline.passed());
        clock.addAndGet(2 * LARGE - 1);
        assertFalse(deadline.passed());
        clock.addAndGet(1);
        assertTrue(deadline.passed());
    }

    @Test
    void whatOneShareLeavesGoesToTheNext() {
        Deadline whole = Deadline.after(3 * LARGE);
        Deadline first = whole.share(3);
        assertEquals(LARGE, first.left());
        first.count(LARGE / 2);
        assertEquals(5 * LARGE / 2, whole.left());
        assertEquals(5 * LARGE / 4, whole.share(2).left());
    }

    @Test
    void aShareIsNeverNothing() {
        Deadline whole = Deadline.after(0);
        assertTrue(whole.passed());
        assertFalse(whole.share(1).passed());
    }

    @Test
    void laterOfTwoSearchesSideBySideCounts() {
        for (long beside : new long[] {10, 30}) {
            Deadline deadline = Deadline.after(100);
            Deadline other = deadline.fork();
            deadline.count(20);
            other.count(beside);
            assertEquals(80, deadline.left(), "each counts for itself");
            deadline.join(other, false);
            assertEquals(100 - Math.max(20, beside), deadline.left());
        }
    }

    @Test
    void searchMadeNeedlessDoesNotCount() {
        Deadline deadline = Deadline.after(100);
        Deadline other = deadline.fork();
        deadline.count(20);
        other.count(10);
        deadline.join(other, true);
        assertEquals(90, deadline.left());
    }
}
