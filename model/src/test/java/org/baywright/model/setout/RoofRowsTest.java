package org.baywright.model.setout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Definitions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rows of purlins from greatest spacings, and sheet lengths, against figures worked by hand. */
class RoofRowsTest {
    private static final String TWELVE =
            "span: 12000\nbays: 3\nbaySpacing: 6000\neaveHeight: 4200\nroofPitch: 10\nenvelope: full\n"
                    + "girts: {section: C100-12}\n";

    private static List<RoofRows> rows(String yaml) {
        Definition definition = Definitions.of(yaml);
        return RoofRows.of(definition, SetOut.of(definition));
    }

    /**
     * Source: n = ⌈(slope − first offsets)/greatest spacing⌉ + 1 rows, common practice; with closer end spaces, first
     * two ends, then what is left between them.
     */
    @ParameterizedTest
    @CsvSource({
        "199, 1200, 900, 1", "201, 1200, 900, 2", "900, 1200, 900, 2", "901, 1200, 900, 3", "1800, 1200, 900, 3",
        "1801, 1200, 900, 4", "3000, 1200, 900, 4", "3001, 1200, 900, 5", "5400, 1200, 900, 6", "5401, 1200, 900, 7",
        "5000, 1000, 1000, 6", "5001, 1000, 1000, 7", "5000, 1000, 2000, 6", "100000, 1200, 900, 85"
    })
    void rowsAtTheLimits(double reach, double interior, double end, int rows) {
        assertEquals(rows, RoofRows.spread(40, 40 + reach, interior, end).size());
    }

    /** Source: by hand, 2 end and 3 interior spaces of 900 and 1200 hold 5400; 4860 shortens each to nine tenths. */
    @Test
    void spacesAreShortenedAlike() {
        assertEquals(List.of(0.0, 810.0, 1890.0, 2970.0, 4050.0, 4860.0), rounded(RoofRows.spread(0, 4860, 1200, 900)));
    }

    private static List<Double> rounded(List<Double> at) {
        return at.stream().map(s -> Math.round(s * 1e6) / 1e6).toList();
    }

    /** Source: sheet = (B/2 + f)/cos θ + into gutter − ridge gap, common practice, with f the girts' 102. */
    @Test
    void sheetOfAGable() {
        RoofRows slope = rows(TWELVE).get(0);
        assertEquals(6102 / Math.cos(Math.toRadians(10)) + 50 - 25, slope.sheetHigh() - slope.sheetLow(), 1e-6);
        assertEquals(-102, slope.from(), 1e-9);
        assertEquals(18102, slope.to(), 1e-9);
    }

    /** Source: as above, with both faces of a skillion past its columns. */
    @Test
    void sheetOfASkillion() {
        RoofRows slope = rows(TWELVE + "roofShape: skillion\n").get(0);
        assertEquals(12204 / Math.cos(Math.toRadians(10)) + 100, slope.sheetHigh() - slope.sheetLow(), 1e-6);
    }

    /** Source: lean-to sheet = (W + f)/cos φ + into gutter − 15 at the apron, common practice, less the wall's girts. */
    @Test
    void sheetOfALeanTo() {
        RoofRows slope = rows(TWELVE + "leanTos: [{side: right, width: 4000, pitch: 5, drop: 400}]\n")
                .get(2);
        assertEquals(RoofSlope.Top.WALL, slope.slope().top());
        assertEquals(
                (4000 + 102 - 102) / Math.cos(Math.toRadians(5)) + 50 - 15, slope.sheetHigh() - slope.sheetLow(), 1e-6);
    }

    /** Source: ridge purlin 150 from the apex along the slope, within 130 to 200 of the roofing code of practice. */
    @Test
    void firstRowBelowTheRidge() {
        List<Double> at = rows(TWELVE).get(0).at();
        assertEquals(6000 / Math.cos(Math.toRadians(10)) - 150, at.get(at.size() - 1), 1e-9);
    }

    /** Source: eave purlin 50 to 100 inside the sheet's end, common practice. */
    @Test
    void eaveRowLiesUnderTheSheetsEnd() {
        RoofRows slope = rows(TWELVE).get(0);
        double inside = slope.at().get(0) - slope.sheetLow();
        assertEquals(75, inside, 25);
    }

    /** A lean-to that carries the roof on needs the main eave row inside the kink. */
    @Test
    void aRoofCarriedOnMovesTheEaveRowOntoTheRafter() {
        List<RoofRows> all =
                rows(TWELVE + "leanTos: [{side: left, width: 4000, pitch: 5, drop: 0, fromBay: 2, toBay: 2}]\n");
        assertEquals(RoofSlope.Top.MAIN_ROOF, all.get(2).slope().top());
        assertEquals(true, all.get(0).at().get(0) > 62);
        assertEquals(true, all.get(1).at().get(0) < 0);
        assertEquals(6000 - 102, all.get(2).from(), 1e-9);
    }
}
