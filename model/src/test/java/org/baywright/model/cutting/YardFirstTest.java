package org.baywright.model.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class YardFirstTest {
    @Test
    void yardBarIsUsedThoughNothingLessIsBought() {
        CuttingJob job = new CuttingJob(
                List.of(Piece.square(2500, 2), Piece.square(1400, 2)),
                List.of(Stock.offcut(1500, 1), Stock.length(8000)),
                Saw.NONE);
        CuttingPlan plan = Cutter.plan(job, Deadline.in(10));
        assertTrue(plan.proven());
        assertEquals(8000, plan.purchasedMm());
        assertTrue(plan.unusedYard().isEmpty(), "the yard bar lies about");
        assertEquals(1600, plan.longestOffcutMm(), 1e-9, "what is saved of the new bar");
    }

    @Test
    void yardBarThatTakesNothingStays() {
        CuttingJob job = new CuttingJob(
                List.of(Piece.square(2500, 3)), List.of(Stock.offcut(1500, 2), Stock.length(8000)), Saw.NONE);
        assertEquals(2, Cutter.plan(job, Deadline.in(10)).unusedYard().get(Stock.offcut(1500, 2)));
    }

    @Test
    void longestYardBarComesFirst() {
        // The long one takes both pieces; begun with the short one, two yard bars would be cut into.
        Order order = Order.of(new CuttingJob(
                List.of(Piece.square(5000, 1), Piece.square(1400, 2)),
                List.of(Stock.offcut(1500, 1), Stock.offcut(3000, 1), Stock.length(8000)),
                Saw.NONE));
        Draft draft = new Draft(order);
        draft.add(Pattern.of(2, new int[] {1, 2}), 1);
        Draft used = YardFirst.used(order, draft);
        assertTrue(used.isRight());
        assertEquals(
                Map.of(Pattern.of(2, new int[] {1, 0}), 1, Pattern.of(1, new int[] {0, 2}), 1),
                Map.copyOf(used.times()));
    }

    @Test
    void layoutsOfManyBarsAreMadeFewer() {
        // 120 layouts of one bar each: two pieces alike and two that are not; pairs of bars can be cut alike.
        List<Piece> pieces =
                IntStream.range(0, 240).mapToObj(k -> Piece.square(3000 + k, 2)).toList();
        Order order = Order.of(new CuttingJob(pieces, List.of(Stock.length(6500)), Saw.NONE));
        Draft draft = new Draft(order);
        for (int k = 0; k < 240; k += 2) {
            draft.add(Pattern.ofSorted(0, new int[] {k, k}, 2), 1);
            draft.add(Pattern.ofSorted(0, new int[] {k + 1, k + 1}, 2), 1);
        }
        Draft fewer = LayoutSearch.improved(order, draft, Deadline.in(60));
        assertTrue(fewer.isRight());
        assertEquals(240, draft.layouts());
        assertTrue(fewer.layouts() <= 200, fewer.layouts() + " layouts");
    }
}
