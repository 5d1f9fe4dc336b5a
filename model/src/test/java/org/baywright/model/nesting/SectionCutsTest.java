package org.baywright.model.nesting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.baywright.model.catalogue.Catalogue;
import org.baywright.model.catalogue.Section;
import org.baywright.model.cutting.Saw;
import org.baywright.model.cutting.Stock;
import org.junit.jupiter.api.Test;

class SectionCutsTest {
    private static final Section SECTION =
            Catalogue.shipped().section("RHS 100x50x3").orElseThrow();

    /** A plan of a number of bars of 8 m; only what they cost and the bounds matter here. */
    private static SectionCuts plan(int bars, double bound, boolean searched) {
        List<Laid> piece = Nest.of(List.of(Blank.square("a", 100, 1)), Saw.NONE);
        LaidBar bar = new LaidBar(Stock.length(8000), piece, bars, Saw.NONE);
        return new SectionCuts(SECTION, List.of(), List.of(bar.stock()), List.of(bar), bound, bound, searched);
    }

    @Test
    void cheaperPlanIsKeptWithTheHigherBound() {
        SectionCuts dear = plan(3, 16_000, false);
        SectionCuts cheap = plan(2, 8000, false);
        for (SectionCuts better : List.of(dear.betterOf(cheap), cheap.betterOf(dear))) {
            assertEquals(16_000, better.cost());
            assertEquals(16_000, better.boundCost());
            assertEquals(16_000, better.boundMm());
            assertTrue(better.proven(), "each alone proves nothing");
            assertFalse(better.searched());
        }
    }

    @Test
    void searchThatCameToItsEndIsNotForgotten() {
        assertTrue(plan(2, 8000, true).betterOf(plan(2, 8000, false)).searched());
        assertTrue(plan(2, 8000, false).betterOf(plan(2, 8000, true)).searched());
    }
}
