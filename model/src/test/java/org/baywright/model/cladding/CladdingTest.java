package org.baywright.model.cladding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.baywright.model.definition.Definitions;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.parts.Shed;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sheets, flashings and roof water against published cases and figures worked by hand. */
class CladdingTest {
    private static final String TWELVE =
            "span: 12000\nbays: 3\nbaySpacing: 6000\neaveHeight: 4200\nroofPitch: 10\ngirts: {section: C100-12}\n";

    private static Cladding cladding(String more) {
        return Cladding.of(Shed.of(Definitions.of(TWELVE + more)));
    }

    /**
     * Worked case published for AS/NZS 3500.3:2018 (roof gutter design calculators): 175 m² on plan at 24° has a slope
     * factor of 1.22, and 175 m² of catchment drains 7.05 L/s at 145 mm/h.
     */
    @Test
    void publishedRoofWaterCase() {
        double rise = Math.tan(Math.toRadians(24));
        assertEquals(1.22, RoofDrainage.catchment(1, rise), 0.005);
        assertEquals(7.05, RoofDrainage.flow(175, 145), 0.005);
    }

    /** Source: corrugated sheet 762 cover, published technical summary; n = ⌈width/cover⌉. */
    @ParameterizedTest
    @CsvSource({"762, 1", "763, 2", "7620, 10", "7620.5, 11", "100, 1"})
    void sheetsAcross(double width, int count) {
        var sheet = Definitions.of(TWELVE).envelope().sheeting().roof().profile();
        assertEquals(762, sheet.cover());
        assertEquals(count, SheetRun.count(width, sheet));
    }

    /** Source: (B/2 + f)/cos θ + 50 − 25, rounded up to 5, with f the girts' 102: 6221.1, ordered as 6225. */
    @Test
    void roofSheetLength() {
        Surface roof = cladding("").surfaces(Surface.Role.ROOF).get(0);
        assertTrue(roof.sheets().stream().allMatch(s -> s.length() == 6225));
        // 18000 and 102 + 17 + 10 past either end: 18258 takes 24 sheets of 762.
        assertEquals(24, roof.sheets().size());
    }

    /** Source: step = cover · tan θ, 762 at 10° gives 134; common practice, worked by hand. */
    @Test
    void gableSheetsStepUp() {
        Surface front = cladding("").surfaces(Surface.Role.WALL).get(0);
        double step = front.sheets().get(3).length() - front.sheets().get(2).length();
        assertEquals(134, step, 5.1);
    }

    @Test
    void bandedRakesAreCutFromFourLengths() {
        Surface front = cladding("wallSheets: {rake: banded}\n")
                .surfaces(Surface.Role.WALL)
                .get(0);
        assertTrue(front.sheets().stream().map(Surface.Sheet::length).distinct().count() <= 4);
    }

    /** Source: a sheet longer than can be carried is lapped over a row, 150, or 200 below 10°. From memory. */
    @ParameterizedTest
    @CsvSource({"10, 150", "9.9, 200", "15, 150", "5, 200"})
    void endLapByPitch(double pitch, double lap) {
        assertEquals(lap, RoofSheets.lap(pitch));
    }

    @Test
    void longSheetsAreLappedOverRows() {
        List<double[]> pieces = SheetRun.lengths(0, 14_000, List.of(75.0, 7000.0, 13_900.0), 150, 12_000);
        assertEquals(2, pieces.size());
        assertEquals(7075, pieces.get(0)[1]);
        assertEquals(6925, pieces.get(1)[0]);
        assertEquals(1, SheetRun.lengths(0, 12_000, List.of(), 150, 12_000).size());
    }

    /** Source: pieces = ⌈(run − lap)/(stock − lap)⌉, common practice. */
    @ParameterizedTest
    @CsvSource({"6000, 1", "6001, 2", "11850, 2", "11851, 3", "300, 1", "100, 1"})
    void flashingPieces(double run, int pieces) {
        Flashing.Run level = new Flashing.Run(new Vec3(0, 0, 0), new Vec3(run, 0, 0));
        assertEquals(pieces, level.pieces(6000, 150));
    }

    @Test
    void girthIsTheFoldLaidFlat() {
        Flashing flashing = new Flashing(
                "F1",
                Flashing.Kind.CORNER,
                List.of(new Vec2(0, 0), new Vec2(30, 40), new Vec2(30, 140)),
                6000,
                150,
                List.of());
        assertEquals(150, flashing.girth(), 1e-9);
        assertEquals(1, flashing.folds());
    }

    /** At most 12 m of gutter to a downpipe, and about 45 m² to one of 100 x 75 at 150 mm/h; from memory. */
    @Test
    void downpipes() {
        GutterRun gutter = cladding("").gutters().get(0);
        double share = gutter.catchmentM2() / gutter.downpipes().size();
        assertTrue(share <= 45 && gutter.length() / gutter.downpipes().size() <= 12_000);
        assertEquals(gutter.catchmentM2() * 150 / 3600, gutter.flowLs(), 1e-9);
    }

    @Test
    void aBareFrameHasNoCladding() {
        assertEquals(new Cladding(List.of(), List.of(), List.of()), cladding("envelope: none\n"));
    }
}
