package org.baywright.model.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CatalogueTest {
    private static final Catalogue CATALOGUE = Catalogue.shipped();

    @ParameterizedTest
    @CsvSource({
        "SHS 100x100x5, SHS 100x100x5",
        "SHS100x100x5, SHS 100x100x5",
        "shs 100 x 100 x 5.0, SHS 100x100x5",
        "100×100×5, SHS 100x100x5",
        "100X100X5.00, SHS 100x100x5",
        "RHS 50x20x1.60, RHS 50x20x1.6",
        "SHS 100x100x5.0EN, SHS 100x100x5 EN",
        "200 ub 25.4, 200UB25.4",
        "310UB32, 310UB32.0"
    })
    void waysOfWritingADesignation(String written, String designation) {
        assertEquals(Optional.of(designation), CATALOGUE.section(written).map(Section::designation));
    }

    @ParameterizedTest
    @CsvSource({"RHS 100x150x4", "SHS 100x100x50", "SHS 100x100", "SHS 60x60x3", "200UB", "''"})
    void otherSectionsAreNotTakenForIt(String written) {
        assertEquals(Optional.empty(), CATALOGUE.section(written));
    }

    @Test
    void theTwoStandardsGiveDifferentMasses() {
        Section asNzs = CATALOGUE.section("SHS 100x100x5").orElseThrow();
        Section en = CATALOGUE.section("SHS 100x100x5 EN").orElseThrow();
        assertTrue(asNzs.grade().contains("AS/NZS 1163") && en.grade().contains("EN 10219-1"));
        assertNotEquals(asNzs.massKgPerM(), en.massKgPerM(), 0.05);
    }

    @ParameterizedTest
    @CsvSource({
        "SHS 100x100x7, SHS 100x100x8",
        "SHS 100x100x5.5, SHS 100x100x6",
        "SHS 60x60x3, SHS 60x60x3 EN",
        "RHS 100x150x4, RHS 150x100x4",
        "RHS 150x90x4, RHS 150x100x4",
        "SHS 100-100-5, SHS 100x100x5",
        "SSHS 100x100x5, SHS 100x100x5",
        "200UB25, 200UB25.4",
        "200UBB25.4, 200UB25.4",
        "200UB, 200UB18.2",
        "150UC36, 150UC37.2"
    })
    void theNearestDesignation(String written, String nearest) {
        List<String> near = CATALOGUE.near(written);
        assertEquals(nearest, near.get(0));
        assertEquals(3, near.size());
    }

    @Test
    void nothingIsNearToAWordThatIsNoSection() {
        assertEquals(List.of(), CATALOGUE.near("timber"));
    }

    @Test
    void ownSectionsComeFirstAndAreNearToo() {
        Section own = HollowSection.asNzs1163("SHS 100x100x5", 100, 100, 5.2, "own", "the user");
        Section post = HollowSection.asNzs1163("salvaged post", 110, 110, 5, "own", "the user");
        Catalogue both = CATALOGUE.with(List.of(own, post));
        assertSame(own, both.section("shs100x100x5.0").orElseThrow());
        assertSame(post, both.section("Salvaged Post").orElseThrow());
        assertEquals(List.of("salvaged post"), both.near("salvaged pst"));
        assertEquals("SHS 100x100x5", both.near("SHS 100x100x5").get(0));
        assertEquals(3, Set.copyOf(both.near("SHS 100x100x5")).size());
    }

    @Test
    void everyDesignationIsFoundAndNamesItsSource() {
        Set<String> seen = new HashSet<>();
        for (Section section : CATALOGUE.sections()) {
            assertSame(section, CATALOGUE.section(section.designation()).orElseThrow(), section.designation());
            assertTrue(seen.add(section.designation()), section.designation());
            assertFalse(section.source().isBlank(), section.designation());
            assertFalse(section.grade().isBlank(), section.designation());
        }
    }

    /** Guards the data files: a hollow section's designation is its kind and sizes. */
    @Test
    void hollowDesignationsSayTheirDimensions() {
        for (Section section : CATALOGUE.sections()) {
            if (section instanceof HollowSection hollow) {
                String kind = hollow.depth() == hollow.width() ? "SHS " : "RHS ";
                String sizes = kind + hollow.depth() + "x" + hollow.width() + "x" + hollow.thickness();
                String standard = hollow.grade().contains("EN 10219") ? " EN" : "";
                assertSame(section, CATALOGUE.section(sizes + standard).orElseThrow(), sizes);
                assertTrue(hollow.designation().startsWith(kind), sizes);
                assertTrue(hollow.depth() >= hollow.width(), sizes);
            }
        }
    }

    @Test
    void anchorsAreAsTheDataSheetAndTheHoleRuleSay() {
        assertEquals(
                List.of("M12", "M16", "M20"),
                CATALOGUE.anchors().stream().map(AnchorType::size).toList());
        CATALOGUE.anchors().forEach(a -> assertEquals(a.rodDiameter() + 6, a.plateHole(), a.size()));
        AnchorType m16 = CATALOGUE.anchor(" m16 ").orElseThrow();
        assertEquals(new AnchorType("M16", 16, 18, 125, 80, 80, 165, 22, 157, m16.source()), m16);
    }

    /** The net volume printed for an M16 in an 18 hole 125 deep is 12.2 mL; worked by hand. */
    @Test
    void theStressAreaGivesTheAdhesiveWorkedByHand() {
        AnchorType m16 = CATALOGUE.anchor("M16").orElseThrow();
        double hole = Math.PI / 4 * m16.holeDiameter() * m16.holeDiameter();
        assertEquals(12.2, (hole - m16.stressAreaMm2()) * m16.embedment() / 1000, 0.05);
    }

    @Test
    void anAnchorThatCannotBeSetIsRefused() {
        assertThrows(
                IllegalArgumentException.class, () -> new AnchorType("M16", 16, 16, 125, 80, 80, 165, 22, 157, "s"));
        assertThrows(
                IllegalArgumentException.class, () -> new AnchorType("M16", 16, 18, 170, 80, 80, 165, 22, 157, "s"));
        assertThrows(
                IllegalArgumentException.class, () -> new AnchorType("M16", 16, 18, 125, 80, 80, 165, 22, 202, "s"));
    }

    @Test
    void stockLengthsByFamily() {
        StockLengths hollow =
                CATALOGUE.stockLengths(CATALOGUE.section("SHS 100x100x5").orElseThrow());
        assertEquals(8000, hollow.usualMm());
        assertEquals(List.of(6500.0, 8000.0, 12000.0), hollow.lengthsMm());
        StockLengths beam =
                CATALOGUE.stockLengths(CATALOGUE.section("200UB25.4").orElseThrow());
        assertEquals(List.of(9000.0, 10500.0, 12000.0, 13500.0, 15000.0, 16500.0, 18000.0), beam.lengthsMm());
    }

    @Test
    void stockLengthsOutOfOrderOrWithoutTheUsualOneAreRefused() {
        assertThrows(
                IllegalArgumentException.class,
                () -> new StockLengths(Family.BEAM, 9000, List.of(12000.0, 9000.0), "s"));
        assertThrows(IllegalArgumentException.class, () -> new StockLengths(Family.BEAM, 9000, List.of(12000.0), "s"));
        assertThrows(IllegalArgumentException.class, () -> new Catalogue(List.of(), List.of(), List.of(), List.of()));
    }

    /** Published masses of a metre of sheet 851 wide before folding, 762 wide once lapped: 3.17 and 4.27 kg/m. */
    @ParameterizedTest
    @CsvSource({"corrugate 0.40 NZ, 3.17", "corrugate 0.55 NZ, 4.27"})
    void sheetsWeighWhatIsPublished(String name, double massKgPerM) {
        SheetProfile sheet = CATALOGUE.sheet(name).orElseThrow();
        assertEquals(massKgPerM, sheet.massKgPerM2() * sheet.cover() / 1000, 0.005);
        assertEquals(762, sheet.cover());
        assertEquals(8, sheet.minPitchDeg());
    }

    /** Guards the data files: strip cannot weigh less than the flat sheet that it covers. */
    @Test
    void everySheetIsHeavierThanItsThicknessLaidFlat() {
        for (SheetProfile sheet : CATALOGUE.sheets()) {
            assertTrue(sheet.massKgPerM2() > sheet.thickness() * 7.85, sheet.name());
            assertTrue(sheet.massKgPerM2() < sheet.thickness() * 7.85 * 1.5, sheet.name());
            assertSame(
                    sheet,
                    CATALOGUE.sheet(sheet.name().toUpperCase(Locale.ROOT)).orElseThrow());
            assertFalse(sheet.source().isBlank());
        }
    }

    @Test
    void everyGutterAndDownpipeIsFoundByItsName() {
        RainwaterGoods goods = RainwaterGoods.shipped();
        assertEquals(5, goods.gutters().size());
        assertEquals(6, goods.downpipes().size());
        goods.gutters().forEach(g -> assertSame(g, goods.gutter(g.name()).orElseThrow()));
        goods.downpipes().forEach(d -> assertSame(d, goods.downpipe(d.name()).orElseThrow()));
        assertEquals(6362, goods.downpipe("downpipe 90 round").orElseThrow().areaMm2(), 1);
        assertThrows(
                IllegalArgumentException.class, () -> new RainwaterGoods.GutterSize("too full", 100, 100, 10_001, "s"));
    }

    /** Guards the data files: C150-15 is 150 nominal in strip of 1.5. */
    @Test
    void foldedSectionsAreNamedByDepthAndStrip() {
        for (Section section : CATALOGUE.sections()) {
            if (section instanceof ColdFormedSection folded) {
                String[] name = folded.designation().split("[A-Z-]+");
                double nominal = Double.parseDouble(name[1]);
                double strip = Double.parseDouble(name[2]) / Math.pow(10, name[2].length() - 1);
                assertEquals(folded.thickness(), strip, 1e-9, folded.designation());
                assertTrue(Math.abs(folded.depth() - nominal) <= 4, folded.designation());
            }
        }
    }

    @Test
    void theShippedCatalogueIsReadOnce() {
        assertSame(CATALOGUE, Catalogue.shipped());
    }
}
