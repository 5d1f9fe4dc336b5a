package org.baywright.model.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class RepackingTest {
    private static final long AMPLE = 400_000_000;

    @Test
    void perfectPackingsAreFound() {
        for (int seed = 0; seed < 3; seed++) {
            Instances.Instance planted = Instances.perfect(60, 2, 6, 1000, seed);
            Draft first = bestFit(planted);
            assertTrue(first.bars() > planted.optimum(), "nothing to do for seed " + seed);
            Draft packed = repacked(planted, first, AMPLE);
            assertTrue(packed.isRight());
            assertEquals(planted.optimum(), packed.bars());
        }
    }

    @Test
    void sameWorkGivesTheSamePlan() {
        Instances.Instance job = Instances.triplets(83, 1000, 1);
        Draft first = bestFit(job);
        Draft packed = repacked(job, first, 3_000_000);
        assertTrue(packed.isRight());
        assertTrue(packed.bars() < first.bars());
        assertEquals(packed.times(), repacked(job, first, 3_000_000).times());
    }

    @Test
    void nothingIsDoneWhereThePlanIsGoodEnough() {
        Instances.Instance job = Instances.triplets(20, 1000, 1);
        Draft first = bestFit(job);
        Order order = Order.of(job.job());
        assertSame(first, new Repacking(order, first).improve(first.cost(), AMPLE, Deadline.in(60)));
    }

    @Test
    void scarceStockAndMitresDoNotSuit() {
        List<Piece> square = List.of(Piece.square("A", 2000, 5));
        List<Piece> mitred = List.of(new Piece("A", 2000, 5, new Mitre(45, 100)));
        Stock bar = Stock.length(8000);
        assertTrue(suits(square, bar));
        assertFalse(suits(square, bar.limitedTo(3)));
        assertFalse(suits(mitred, bar));
        assertTrue(suits(square, bar, Stock.length(12_000)));
    }

    private static boolean suits(List<Piece> pieces, Stock... stocks) {
        return LocalSearch.suits(Order.of(new CuttingJob(pieces, List.of(stocks), Saw.NONE)));
    }

    private static Draft bestFit(Instances.Instance instance) {
        Order order = Order.of(instance.job());
        return BestFit.pack(order, order.demand(), order.limit()).orElseThrow();
    }

    private static Draft repacked(Instances.Instance instance, Draft plan, long work) {
        Order order = Order.of(instance.job());
        return new Repacking(order, plan).improve(instance.optimum() * order.cost()[0], work, Deadline.in(60));
    }
}
