package org.baywright.model.nesting;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.baywright.model.catalogue.Catalogue;
import org.baywright.model.catalogue.Section;
import org.baywright.model.cutting.Deadline;
import org.baywright.model.cutting.Saw;
import org.baywright.model.cutting.Stock;
import org.baywright.model.definition.Seeds;

/** Pieces of every shape in one section, more mixed than a shed ever has them. */
class RandomSectionsPropertyTest {
    private static final List<Double> SLOPES = List.of(0.0, 0.0, 0.2, -0.2, 0.5, -0.5, 1.0);

    @Property(tries = 150)
    void everyBarFitsAndNothingIsBoughtUnderTheBound(@ForAll("needs") List<Need> needs, @ForAll("saws") Saw saw) {
        Section section = Catalogue.shipped().section("RHS 200x100x5").orElseThrow();
        List<Stock> stocks = List.of(Stock.offcut(2500, 2), Stock.length(4000), Stock.length(6500));
        BarChecks.areRight(SectionCuts.of(section, needs, stocks, saw, Deadline.after(300_000_000)));
    }

    /** Every way of sharing up to five pieces among bars, in every order and every turn. */
    @Property(tries = 150, seed = Seeds.SHEDS)
    void noWayAtAllCostsLessThanTheBound(@ForAll("needs") List<Need> needs, @ForAll("saws") Saw saw) {
        Section section = Catalogue.shipped().section("RHS 200x100x5").orElseThrow();
        List<Stock> stocks = List.of(Stock.length(5100), Stock.length(7150));
        List<Need> few = needs.stream()
                .limit(3)
                .map(n -> new Need(n.blank(), Math.min(n.quantity(), 2)))
                .filter(n -> n.blank().tipMm() < 7100)
                .toList();
        Assume.that(!few.isEmpty());
        SectionCuts cuts = SectionCuts.of(section, few, stocks, saw, Deadline.after(1_000_000_000));
        double least = new EveryWay(stocks, saw).leastCost(few);
        assertTrue(cuts.boundCost() <= least + 1e-6, "bound " + cuts.boundCost() + " over " + least);
        assertTrue(cuts.cost() >= least - 1e-6, "cost " + cuts.cost() + " under " + least);
    }

    @Provide
    Arbitrary<Saw> saws() {
        return Arbitraries.of(Saw.NONE, Saw.USUAL, new Saw(4, 25));
    }

    @Provide
    Arbitrary<List<Need>> needs() {
        Arbitrary<Boolean> deep = Arbitraries.of(true, true, false);
        Arbitrary<Set<Turn>> turns = Arbitraries.of(
                EnumSet.allOf(Turn.class),
                EnumSet.allOf(Turn.class),
                EnumSet.of(Turn.AS_DRAWN, Turn.END_FOR_END),
                EnumSet.of(Turn.AS_DRAWN));
        Arbitrary<Need> need = Combinators.combine(
                        deep,
                        Arbitraries.integers().between(3000, 70_000),
                        Arbitraries.of(SLOPES),
                        Arbitraries.of(SLOPES),
                        turns,
                        Arbitraries.integers().between(1, 7))
                .as((d, tenths, start, end, t, n) -> new Need(
                        new Blank("", d ? SawPlane.DEPTH : SawPlane.WIDTH, d ? 200 : 100, tenths / 10.0, start, end, t),
                        n));
        return need.list().ofMinSize(1).ofMaxSize(7).map(RandomSectionsPropertyTest::marked);
    }

    private static List<Need> marked(List<Need> needs) {
        List<Need> marked = new ArrayList<>();
        for (Need need : needs) {
            Blank b = need.blank();
            Blank named = new Blank(
                    "X" + marked.size(), b.plane(), b.depthMm(), b.middleMm(), b.startSlope(), b.endSlope(), b.turns());
            marked.add(new Need(named, need.quantity()));
        }
        return marked;
    }
}
