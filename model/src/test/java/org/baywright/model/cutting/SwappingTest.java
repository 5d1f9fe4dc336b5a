package org.baywright.model.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
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
    void severalStockLengthsAreFilled() {
        // Bars of both lengths cut up with nothing left over: 20 of 8000 and 20 of 12000.
        Random random = new Random(7);
        List<Piece> pieces = new ArrayList<>();
        for (int b = 0; b < 40; b++) {
            int bar = b % 2 == 0 ? 8000 : 12_000;
            int first = bar / 3 + random.nextInt(bar / 6);
            int second = bar / 5 + random.nextInt(bar / 8);
            IntStream.of(first, second, bar - first - second).forEach(l -> pieces.add(Piece.square(l, 1)));
        }
        Order order = Order.of(new CuttingJob(pieces, List.of(Stock.length(8000), Stock.length(12_000)), Saw.NONE));
        Draft first = BestFit.pack(order, order.demand(), order.limit()).orElseThrow();
        long cost = 400_000 / (long) order.costUnit();
        assertTrue(first.cost() > cost, "nothing to do");
        Draft found = Swapping.towards(order, first, cost)
                .orElseThrow()
                .improve(AMPLE, Deadline.in(60))
                .orElseThrow();
        assertTrue(found.isRight());
        assertEquals(cost, found.cost());
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
        assertFalse(walk(job, bestFit(job), 24).isPresent(), "four bars are left over, so nothing is tight");
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
        assertTrue(walk.improve(Long.MAX_VALUE / 2, Deadline.in(60)).isEmpty());
    }

    private static Draft bestFit(Instances.Instance instance) {
        Order order = Order.of(instance.job());
        return BestFit.pack(order, order.demand(), order.limit()).orElseThrow();
    }

    private static Optional<Draft> found(Instances.Instance instance, Draft plan, int bars, long work) {
        return walk(instance, plan, bars).orElseThrow().improve(work, Deadline.in(60));
    }

    private static Optional<Swapping> walk(Instances.Instance instance, Draft plan, int bars) {
        Order order = Order.of(instance.job());
        return Swapping.towards(order, plan, bars * order.cost()[0]);
    }
}
