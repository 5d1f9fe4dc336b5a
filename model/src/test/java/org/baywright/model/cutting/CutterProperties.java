package org.baywright.model.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class CutterProperties {
    private static final List<Mitre> MITRES =
            List.of(Mitre.SQUARE, Mitre.SQUARE, new Mitre(30, 200), new Mitre(45, 90));

    @Property(tries = 150)
    void tinyJobsAreSolvedAsByTryingEverything(@ForAll("tiny") CuttingJob job) {
        BruteForce.Score best = BruteForce.best(job);
        if (Double.isInfinite(best.cost())) {
            assertThrows(IllegalArgumentException.class, () -> Cutter.plan(job, Deadline.in(60)));
            return;
        }
        CuttingPlan plan = Cutter.plan(job, Deadline.in(60));
        PlanChecks.isRight(plan);
        assertTrue(plan.proven());
        BruteForce.Score score = BruteForce.Score.of(plan);
        assertEquals(best.cost(), score.cost(), 1e-9);
        if (job.stocks().stream().noneMatch(Stock::isOffcut) || Order.of(job).hasFamilies()) {
            assertEquals(best.layouts(), score.layouts());
            assertEquals(best.offcutMm(), score.offcutMm(), 0.01);
        } else {
            yardIsUsedFirst(plan);
        }
    }

    /** Yard bars come before fewer layouts: none is left that takes a piece of a bar to buy. */
    private static void yardIsUsedFirst(CuttingPlan plan) {
        double shortest = plan.layouts().stream()
                .filter(l -> !l.stock().isOffcut())
                .flatMap(l -> l.cuts().stream())
                .mapToDouble(Cut::lengthMm)
                .min()
                .orElse(Double.POSITIVE_INFINITY);
        double trim = plan.job().saw().endTrimMm();
        plan.unusedYard().keySet().forEach(s -> assertTrue(shortest > s.lengthMm() - trim, s + " lies about"));
    }

    /** All stock counted, so that often hardly enough is there, or not enough. */
    @Property(tries = 150)
    void scarceStockIsPlannedWheneverThereIsAWay(@ForAll("tiny") CuttingJob job) {
        List<Stock> counted = job.stocks().stream()
                .map(s -> s.limitedTo(s.limit() == Stock.UNLIMITED ? 2 : s.limit()))
                .toList();
        tinyJobsAreSolvedAsByTryingEverything(new CuttingJob(job.pieces(), counted, job.saw()));
    }

    /** A rare one keeps a gap of one step, 4000 here, between plan and bound. */
    @Property(tries = 40)
    void shedListsAreCutRightAndAllButProven(@ForAll("shed") CuttingJob job) {
        CuttingPlan plan = Cutter.plan(job, Deadline.in(2));
        PlanChecks.isRight(plan);
        assertTrue(plan.cost() - plan.lowerBound() < 4000 + 1e-6);
        assertEquals(plan.barCount(), plan.bars().size());
    }

    @Property(tries = 20)
    void planCutShortIsStillRight(@ForAll("shed") CuttingJob job) {
        PlanChecks.isRight(Cutter.plan(job, Deadline.in(0)));
    }

    /** Up to seven pieces, several stock lengths, some of them in the yard or running out. */
    @Provide
    Arbitrary<CuttingJob> tiny() {
        Arbitrary<Piece> piece = Combinators.combine(
                        Arbitraries.integers().between(200, 4000),
                        Arbitraries.integers().between(1, 3),
                        Arbitraries.of(MITRES))
                .as((length, count, mitre) -> new Piece("", length / 10 * 10 + 0.5, count, mitre));
        Arbitrary<Stock> stock = Combinators.combine(
                        Arbitraries.integers().between(40, 80),
                        Arbitraries.integers().between(0, 4),
                        Arbitraries.integers().between(1, 4))
                .as((length, cost, count) -> switch (cost) {
                    case 0 -> Stock.offcut(length * 100, count);
                    case 1 -> Stock.length(length * 100).limitedTo(count);
                    default -> Stock.priced(length * 100, cost * 2500);
                });
        return Combinators.combine(
                        piece.list().ofMinSize(1).ofMaxSize(4),
                        stock.list().ofMinSize(1).ofMaxSize(3),
                        Arbitraries.of(Saw.NONE, new Saw(3, 10)))
                .as(CuttingJob::new)
                .filter(j -> j.pieces().stream().mapToInt(Piece::quantity).sum() <= 7)
                .filter(j -> j.stocks().stream()
                                .mapToDouble(Stock::lengthMm)
                                .distinct()
                                .count()
                        == j.stocks().size());
    }

    /** Lists as a shed gives them: up to 15 lengths, some 300 pieces, two stock lengths, a saw. */
    @Provide
    Arbitrary<CuttingJob> shed() {
        Arbitrary<Piece> piece = Combinators.combine(
                        Arbitraries.integers().between(3000, 79_000),
                        Arbitraries.integers().between(1, 40),
                        Arbitraries.of(MITRES))
                .as((tenths, count, mitre) -> new Piece("", tenths / 10.0, count, mitre));
        return piece.list()
                .ofMinSize(1)
                .ofMaxSize(15)
                .map(pieces ->
                        new CuttingJob(pieces, List.of(Stock.length(8000), Stock.length(12_000)), new Saw(3, 10)));
    }
}
