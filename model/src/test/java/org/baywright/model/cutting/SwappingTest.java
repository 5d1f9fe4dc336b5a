package org.baywright.model.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SwappingTest {
    private static final long AMPLE = 400_000_000;

    static Stream<Instances.Instance> planted() {
        return Stream.of(
                Instances.triplets(83, 1000, 1),
                Instances.triplets(167, 10_000, 0),
                Instances.augmented(67, 2500, 1),
                Instances.perfect(100, 2, 6, 10_000, 1),
                Instances.perfect(200, 3, 5, 100_000, 0));
    }

    @ParameterizedTest
    @MethodSource("planted")
    void planForTheLengthOfAllPiecesIsFound(Instances.Instance planted) {
        Draft first = bestFit(planted);
        assertTrue(first.bars() > planted.optimum(), "nothing to do");
        Draft found = found(planted, first, planted.optimum(), AMPLE).orElseThrow();
        assertTrue(found.isRight());
        assertEquals(planted.optimum(), found.bars());
    }

    @Test
    void roomThatThereIsIsUsed() {
        Instances.Instance job = Instances.spread(1000, 10_000, 0.1, 0.65, 1);
        Draft found = found(job, bestFit(job), 377, AMPLE).orElseThrow();
        assertTrue(found.isRight());
        assertEquals(377, found.bars());
    }

    @Test
    void sameWorkGivesTheSamePlan() {
        Instances.Instance job = Instances.triplets(83, 1000, 1);
        Draft first = bestFit(job);
        assertEquals(
                found(job, first, 83, AMPLE).orElseThrow().times(),
                found(job, first, 83, AMPLE).orElseThrow().times());
    }

    @Test
    void noMoreIsPromisedThanTheLengthAllows() {
        Instances.Instance job = Instances.triplets(20, 1000, 1);
        assertFalse(walk(job, bestFit(job), 19).isPresent(), "20 full bars in 19");
        assertFalse(walk(job, bestFit(job), 21).isPresent(), "a bar is left over, so nothing is tight");
    }

    @Test
    void searchThatDoesNotComeNearIsGivenUp() {
        // Pieces of a little over half a bar: the length says 51 bars, and each takes one alone.
        int[] sizes = new int[100];
        for (int k = 0; k < sizes.length; k++) {
            sizes[k] = 501 + k % 10;
        }
        Instances.Instance job = new Instances.Instance("halves", 1000, sizes, 100);
        Swapping walk = walk(job, bestFit(job), 51).orElseThrow();
        assertTrue(walk.improve(Long.MAX_VALUE / 2).isEmpty());
    }

    private static Draft bestFit(Instances.Instance instance) {
        Order order = Order.of(instance.job());
        return BestFit.pack(order, order.demand(), order.limit()).orElseThrow();
    }

    private static Optional<Draft> found(Instances.Instance instance, Draft plan, int bars, long work) {
        return walk(instance, plan, bars).orElseThrow().improve(work);
    }

    private static Optional<Swapping> walk(Instances.Instance instance, Draft plan, int bars) {
        return Swapping.towards(Order.of(instance.job()), plan, bars, Deadline.in(60));
    }
}
