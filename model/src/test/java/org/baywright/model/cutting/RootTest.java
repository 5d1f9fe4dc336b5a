package org.baywright.model.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Lists of two random sheds, which rounding leaves open. A cost step is 500 mm of bar. */
class RootTest {
    private static final Deadline AMPLE = Deadline.in(60);
    private static final int MOST_PATTERNS = 20_000;
    private static final List<Stock> STOCKS = List.of(Stock.length(6500), Stock.length(8000), Stock.length(12_000));
    private static final String AT_THE_BOUND = "6690x10 6557x4 6303x10 6089.5x8 4390x10 4257x8 3403x10 3390x20 3257x8 "
            + "3248.5x4 3189.5x4 2990x10 2681.7x4 2512.2x8 2390x2 2030.8x4 1861.3x4 1778x4 1458x2 1140.5x8 939x2 874x8 "
            + "806x2 790x4 614.5x4 606x4";
    private static final String OVER_THE_BOUND = "5361.5x5 5345x6 5295x12 5290x48 2395x8 2365.3x4 2290x8 2260.3x4 "
            + "2207.5x6 2180.5x10 2179.5x10 2037.5x8 1695x6 1596x4 1490x6 1457x3 1395x4 1204x5 1195x3 1190x4 965x9 911x6 "
            + "909x4 907.5x4 702.5x4 467.5x4";

    private static Order order(String list) {
        List<Piece> pieces = Arrays.stream(list.split(" "))
                .map(p -> p.split("x"))
                .map(p -> Piece.square(Double.parseDouble(p[0]), Integer.parseInt(p[1])))
                .toList();
        return Order.of(new CuttingJob(pieces, STOCKS, new Saw(3, 10)));
    }

    private static Draft first(Order order) {
        return BestFit.pack(order, order.demand(), order.limit()).orElseThrow();
    }

    private static Relaxation relaxation(Order order) {
        Relaxation relaxation = Relaxation.of(order, first(order).times().keySet(), AMPLE);
        relaxation.solve();
        return relaxation;
    }

    private static Incumbent rounded(Order order, Relaxation relaxation) {
        Incumbent incumbent = new Incumbent(order, Optional.of(first(order)), (long) Math.ceil(relaxation.bound()));
        new Dive(order, relaxation, incumbent, AMPLE).run(0);
        assertFalse(incumbent.isProven(), "nothing to do");
        return incumbent;
    }

    @Test
    void planAtTheBoundIsFoundAmongFewPatterns() {
        Order order = order(AT_THE_BOUND);
        Relaxation relaxation = relaxation(order);
        Incumbent incumbent = rounded(order, relaxation);
        new Root(order, relaxation, MOST_PATTERNS).tryFew(incumbent, AMPLE);
        assertEquals(1115, incumbent.bound());
        assertEquals(1115, incumbent.best().orElseThrow().cost());
        assertTrue(incumbent.best().orElseThrow().isRight());
    }

    @Test
    void boundRisesWhereNoPlanMeetsIt() {
        Order order = order(OVER_THE_BOUND);
        Relaxation relaxation = relaxation(order);
        Incumbent incumbent = rounded(order, relaxation);
        assertEquals(1171, incumbent.bound());
        new Root(order, relaxation, MOST_PATTERNS).tryFew(incumbent, AMPLE);
        assertEquals(1172, incumbent.bound());
        assertEquals(1172, incumbent.best().orElseThrow().cost());
    }

    /** A better plan needs fewer patterns, so the tree is left and grown anew from those, until nothing better is left. */
    @ParameterizedTest
    @ValueSource(ints = {2, 7, 13, 14})
    void eachBetterPlanStartsTheTreeAnew(int shed) {
        CuttingJob one = Instances.shed(shed);
        CuttingJob job = new CuttingJob(one.pieces(), STOCKS, one.saw());
        Order order = Order.of(job);
        Relaxation relaxation = relaxation(order);
        Incumbent incumbent = new Incumbent(order, Optional.of(first(order)), (long) Math.ceil(relaxation.bound()));
        Root root = new Root(order, relaxation, MOST_PATTERNS);
        int trees = 1;
        for (long before = incumbent.budget(); !root.isClosed(incumbent, 20_000, AMPLE); trees++) {
            assertTrue(incumbent.budget() < before, "left for nothing");
            before = incumbent.budget();
        }
        assertTrue(trees > 1, "closed with a plan it had not started from");
        CuttingPlan best = Cutter.plan(job, Deadline.after(5_000_000_000L));
        assertTrue(best.proven());
        assertEquals(best.cost(), incumbent.best().orElseThrow().cost() * order.costUnit(), 1e-6);
    }

    @Test
    void patternsThatWaitAreReckonedWith() {
        // Two pieces of 60 and three of 40 in 100: two bars of 60 + 40 and one of 40, and no fewer.
        Order order = Order.of(new CuttingJob(
                List.of(Piece.square(60, 2), Piece.square(40, 3)), List.of(Stock.priced(100, 1)), Saw.NONE));
        Master master = Master.forBranching(order, AMPLE);
        master.await(Pattern.of(0, new int[] {1, 1}));
        master.await(Pattern.of(0, new int[] {0, 2}));
        master.setRight(order.demand(), new int[] {5}, new int[] {0});
        assertTrue(master.repair());
        master.optimise();
        assertEquals(2, master.patterns().size());
        assertEquals(2.5, master.safeBound(), 1e-6);
        Pattern better = Pattern.of(0, new int[] {2, 3});
        master.await(better);
        assertTrue(master.safeBound() < 1.01, "a bar that takes all costs one");
        master.optimise();
        assertEquals(Set.of(better), master.uses().keySet());
    }
}
