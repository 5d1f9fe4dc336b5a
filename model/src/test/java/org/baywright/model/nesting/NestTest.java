package org.baywright.model.nesting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.baywright.model.catalogue.Catalogue;
import org.baywright.model.catalogue.Section;
import org.baywright.model.cutting.Deadline;
import org.baywright.model.cutting.Saw;
import org.baywright.model.cutting.Stock;
import org.baywright.model.problem.Problem;
import org.baywright.model.problem.Where;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Bars worked out by hand. Slope 0.5 across a depth of 100: setback 25; its kerf is √1.25 · 3 = 3.3541. */
class NestTest {
    private static final Saw SAW = new Saw(3, 10);
    private static final Set<Turn> ANY = EnumSet.allOf(Turn.class);
    private static final double SLANT = 3 * Math.sqrt(1.25);

    private static Blank blank(String mark, double middle, double start, double end, Set<Turn> turns) {
        return new Blank(mark, SawPlane.DEPTH, 100, middle, start, end, turns);
    }

    private static double tip(Blank... blanks) {
        List<Laid> laid = Nest.of(List.of(blanks), SAW);
        return laid.get(laid.size() - 1).rightTipMm();
    }

    @Test
    void aMitredPairIsSquareOutside() {
        Blank c = blank("C", 1000, 0, 0.5, ANY);
        assertEquals(10 + 1000 + SLANT + 1000, tip(c, c), 1e-9);
        assertEquals(10 + 1000 + SLANT + 1000 + 3 + 1000 + 25, tip(c, c, c), 1e-9);
    }

    @Test
    void parallelPiecesShareCutsAndLoseTheirWedgeOnce() {
        Blank r = blank("R", 1000, 0.5, 0.5, ANY);
        assertEquals(10 + 25 + 2000 + SLANT + 25, tip(r, r), 1e-9);
    }

    @Test
    void parallelPiecesLieBetweenTheHalvesOfAPair() {
        Blank c = blank("C", 1000, 0, 0.5, ANY);
        Blank r = blank("R", 2000, 0.5, 0.5, ANY);
        assertEquals(10 + 1000 + SLANT + 2000 + SLANT + 1000, tip(c, r, c), 1e-9);
    }

    @Test
    void endsThatLeanTogetherAreFlipped() {
        Blank o = blank("O", 1000, 0.5, -0.5, ANY);
        assertEquals(10 + 25 + 1000 + SLANT + 1000 + 25, tip(o, o), 1e-9);
    }

    @Test
    void aPieceThatMustNotBeTurnedLosesTheWholeWedge() {
        Blank c = blank("C", 1000, 0, 0.5, Set.of(Turn.AS_DRAWN));
        assertEquals(10 + 1000 + 25 + SLANT + 1000 + 25, tip(c, c), 1e-9);
    }

    @Test
    void aMitreInTheOtherPlaneDoesNotNest() {
        Blank deep = new Blank("A", SawPlane.DEPTH, 100, 1000, 0.5, 0.5, ANY);
        Blank wide = new Blank("B", SawPlane.WIDTH, 60, 1000, 0.5, 0.5, ANY);
        assertEquals(10 + 25 + 1000 + 25 + SLANT + 15 + 1000 + 15, tip(deep, wide), 10.0 + 1e-9);
        List<Laid> laid = Nest.of(List.of(deep, wide), SAW);
        double gap = laid.get(1).leftTipMm() - laid.get(0).rightTipMm();
        assertEquals(SLANT, gap, 1e-9);
    }

    /** As drawn, rolled, end for end, end for end and rolled: what each profile allows. */
    @ParameterizedTest
    @CsvSource({
        "SHS 100x100x5, DEPTH, 4",
        "RHS 200x100x5, WIDTH, 4",
        "250UB31.4, DEPTH, 4",
        "C150-15, DEPTH, 2",
        "C150-15, WIDTH, 2",
        "Z150-15, DEPTH, 2",
        "EA 50x50x5, DEPTH, 1",
        "FL 75x8, DEPTH, 4"
    })
    void turnsThatKeepTheSection(String name, SawPlane plane, int turns) {
        Section section = Catalogue.shipped().section(name).orElseThrow();
        assertEquals(turns, Turn.of(section.profile(), plane).size());
    }

    @Test
    void aChannelIsSwungOnItsWebAndAZedRolled() {
        Section channel = Catalogue.shipped().section("C150-15").orElseThrow();
        assertEquals(Set.of(Turn.AS_DRAWN, Turn.END_FOR_END), Turn.of(channel.profile(), SawPlane.DEPTH));
        assertEquals(Set.of(Turn.AS_DRAWN, Turn.END_FOR_END_ROLLED), Turn.of(channel.profile(), SawPlane.WIDTH));
        Section zed = Catalogue.shipped().section("Z150-15").orElseThrow();
        assertEquals(Set.of(Turn.AS_DRAWN, Turn.ROLLED), Turn.of(zed.profile(), SawPlane.DEPTH));
        assertThrows(
                IllegalArgumentException.class,
                () -> new Laid(blank("C", 100, 0, 0.5, Set.of(Turn.AS_DRAWN)), Turn.ROLLED, 0));
    }

    private static SectionCuts cuts(List<Need> needs, Stock... stocks) {
        Section section = Catalogue.shipped().section("SHS 100x100x5").orElseThrow();
        SectionCuts cuts = SectionCuts.of(section, needs, List.of(stocks), SAW, Deadline.after(5_000_000_000L));
        BarChecks.areRight(cuts);
        return cuts;
    }

    /** Two of 1000 and the cut between take 2003.354 behind the trim: 2014 holds them, 2013 does not. */
    @Test
    void aPairFillsABarToTheMillimetre() {
        List<Need> four = List.of(new Need(blank("C", 1000, 0, 0.5, ANY), 4));
        SectionCuts enough = cuts(four, Stock.length(2014));
        assertEquals(2, enough.barsToBuy());
        assertTrue(enough.proven());
        assertEquals(1, enough.bars().size());
        assertEquals(4, cuts(four, Stock.length(2013)).barsToBuy());
    }

    /** Three parallel pieces and their slants take 10 + 25 + 3000 + 2 · 3.354 + 25 = 3066.7. */
    @Test
    void parallelPiecesAreProvenWithTheirWedge() {
        List<Need> three = List.of(new Need(blank("R", 1000, 0.5, 0.5, ANY), 3));
        SectionCuts tight = cuts(three, Stock.length(3060));
        assertEquals(2, tight.barsToBuy());
        assertTrue(tight.proven());
        assertEquals(1, cuts(three, Stock.length(3067)).barsToBuy());
    }

    @Test
    void theYardComesFirstAndWhatNoBarTakesIsOrderedToLength() {
        List<Need> needs =
                List.of(new Need(blank("C", 1000, 0, 0.5, ANY), 6), new Need(Blank.square("L", 7000, 100), 1));
        SectionCuts cuts = cuts(needs, Stock.offcut(2100, 1), Stock.length(6000));
        assertEquals(2, cuts.barsToBuy());
        assertEquals(6000 + 7010, cuts.purchasedMm(), 1e-9);
        assertEquals(1, cuts.bars().stream().filter(cuts::isSpecial).count());
        assertTrue(cuts.bars().stream().anyMatch(b -> b.stock().isOffcut()));
        assertTrue(cuts.proven());
    }

    private static long toLength(SectionCuts cuts) {
        return cuts.bars().stream()
                .filter(cuts::isSpecial)
                .mapToLong(LaidBar::times)
                .sum();
    }

    /** Three of 5000 fit the yard's bars only, which hold two; a short piece still goes behind one of them. */
    @Test
    void whatTheYardCannotHoldIsOrderedToLengthAndTold() {
        List<Need> needs = List.of(new Need(Blank.square("R", 5000, 100), 3), new Need(Blank.square("S", 900, 100), 1));
        SectionCuts cuts = cuts(needs, Stock.offcut(6000, 2), Stock.length(3000));
        assertEquals(1, toLength(cuts));
        assertEquals(5010, cuts.purchasedMm(), 1e-9);
        assertTrue(cuts.proven());
        List<Problem> problems = cuts.problems(Where::whole);
        assertEquals(1, problems.size());
        assertEquals("saw.yard", problems.get(0).where().source());
        assertTrue(problems.get(0).message().contains("all but 1 of piece R"), problems.toString());
        assertTrue(problems.get(0).remedy().contains("more bars in the yard"), problems.toString());
        assertEquals(0, toLength(cuts(needs, Stock.offcut(6000, 3), Stock.length(3000))));
        assertEquals(3, toLength(cuts(needs, Stock.length(3000))));
    }

    /** Two of 1000 lie in 2014 with their slants together, and not tip to tip. */
    @Test
    void theYardHoldsWhatLiesCloseInIt() {
        List<Need> four = List.of(new Need(blank("C", 1000, 0, 0.5, ANY), 4));
        assertEquals(2, toLength(cuts(four, Stock.offcut(2014, 1), Stock.length(900))));
        assertEquals(3, toLength(cuts(four, Stock.offcut(2013, 1), Stock.length(900))));
    }

    @Test
    void aBarOrderedToLengthHasNoPrice() {
        List<Need> needs = List.of(new Need(Blank.square("R", 5000, 100), 1), new Need(Blank.square("S", 900, 100), 1));
        SectionCuts cuts = cuts(needs, Stock.priced(3000, 40));
        assertEquals(40, cuts.cost(), 1e-9);
        assertEquals(40, cuts.boundCost(), 1e-9);
        assertTrue(cuts.proven());
        assertFalse(cuts.isByLength());
        assertFalse(cuts(needs.subList(0, 1), Stock.priced(3000, 40)).isByLength());
    }

    /**
     * R fills the bar alone, though its slanted cut takes more than the square one that is given back; two of S would fit
     * by their middles, so that other ways are tried.
     */
    @Test
    void aPieceAsLongAsTheBarIsCut() {
        List<Need> needs =
                List.of(new Need(blank("R", 2960, 0.5, 0.3, ANY), 1), new Need(blank("S", 1497, 0.5, 0.1, ANY), 2));
        SectionCuts cuts = cuts(needs, Stock.length(3010));
        assertEquals(3010, 10 + needs.get(0).blank().tipMm(), 1e-9);
        assertEquals(0, toLength(cuts));
        assertEquals(3, cuts.barsToBuy());
    }

    /** The middle fits in the shorter length but the tip, 10 + 1025, does not. */
    @Test
    void aLengthThatTakesTheMiddleButNotTheTipIsNoBound() {
        List<Need> one = List.of(new Need(blank("C", 1000, 0, 0.5, ANY), 1));
        SectionCuts cuts = cuts(one, Stock.length(1030), Stock.length(1500));
        assertEquals(1500, cuts.purchasedMm(), 1e-9);
        assertEquals(1500, cuts.boundMm(), 1e-9);
        assertTrue(cuts.proven());
    }

    /** Three of them end in a tip, two or four in pairs: 3 in 3020 would need 3041.7, so twelve take pairs or fours. */
    @Test
    void anOddPieceLosesItsWedgeInTheBoundToo() {
        List<Need> twelve = List.of(new Need(blank("C", 1000, 0, 0.5, ANY), 12));
        SectionCuts cuts = cuts(twelve, Stock.length(3025), Stock.length(4300));
        assertEquals(3 * 4300, cuts.purchasedMm(), 1e-9);
        assertTrue(cuts.proven());
    }
}
