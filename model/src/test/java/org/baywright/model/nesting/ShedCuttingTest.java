package org.baywright.model.nesting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.baywright.model.catalogue.Catalogue;
import org.baywright.model.catalogue.Section;
import org.baywright.model.cutting.Deadline;
import org.baywright.model.cutting.Saw;
import org.baywright.model.cutting.Stock;
import org.junit.jupiter.api.Test;

class ShedCuttingTest {
    private static final Section SECTION =
            Catalogue.shipped().section("RHS 100x50x3").orElseThrow();
    private static final List<Stock> STOCKS = List.of(Stock.length(8000));
    private static final long STEPS = 200_000_000;

    /** Triples that fill a bar to the last hundredth of a millimetre: found at once by nobody. */
    private static List<Need> triples(int bars) {
        Random random = new Random(5);
        List<Need> needs = new ArrayList<>();
        for (int b = 0; b < bars; b++) {
            double first = 3000 + random.nextInt(80_000) / 100.0;
            double second = 2000 + random.nextInt(60_000) / 100.0;
            for (double length : new double[] {first, second, 8000 - first - second}) {
                needs.add(new Need(Blank.square("P" + needs.size(), length, 1), 1));
            }
        }
        return needs;
    }

    private static SectionCuts planned(List<Need> needs, Deadline deadline) {
        return SectionCuts.of(SECTION, needs, STOCKS, Saw.NONE, deadline);
    }

    /** The same, not proven, its search ended or cut short. */
    private static SectionCuts unproven(SectionCuts cuts, boolean searched) {
        return new SectionCuts(SECTION, cuts.needs(), STOCKS, cuts.bars(), 0, 0, searched);
    }

    @Test
    void whatIsLeftGoesToTheSectionsStillOpen() {
        SectionCuts open = unproven(planned(triples(20), Deadline.after(0)), false);
        assertFalse(open.proven(), "nothing to do");
        List<SectionCuts> sections = new ArrayList<>(List.of(open));
        ShedCutting.planOpenAgain(sections, Saw.NONE, Deadline.after(20 * STEPS));
        assertTrue(sections.get(0).proven());
        assertEquals(20, sections.get(0).barCount());
    }

    @Test
    void sectionsSearchedToTheEndGetNoShare() {
        SectionCuts open = planned(triples(400), Deadline.after(0));
        SectionCuts ended = unproven(open, true);
        assertFalse(ended.proven());
        List<SectionCuts> sections = new ArrayList<>(List.of(ended, open, ended, ended));
        Deadline deadline = Deadline.after(STEPS);
        ShedCutting.planOpenAgain(sections, Saw.NONE, deadline);
        assertTrue(deadline.left() < STEPS / 10, "the only open one has all of it, and not " + deadline.left());
        assertSame(ended, sections.get(0));
        assertSame(ended, sections.get(3));
    }
}
