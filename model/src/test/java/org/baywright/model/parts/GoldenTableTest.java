package org.baywright.model.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.baywright.model.definition.Definitions;
import org.baywright.model.takeoff.Summary;
import org.junit.jupiter.api.Test;

/**
 * Worked lengths to 0.1 mm. Source: the closed formulas of the trade for seated, butted, skillion and lean-to frames
 * (SP = He − (dr + tcap)/cos θ − tb − g and so on), evaluated by hand calculator apart from this code.
 */
class GoldenTableTest {
    private static final String COMMON = """
            span: 12000
            bays: 2
            baySpacing: 6000
            eaveHeight: 4200
            roofPitch: 10
            column: SHS 100x100x5
            rafter: RHS 200x100x5
            leanToColumn: SHS 100x100x4
            leanToRafter: RHS 150x100x4
            basePlate: {thickness: 16}
            groutGap: 20
            capPlate: {thickness: 12}
            kneePlate: {thickness: 12}
            apexPlate: {thickness: 12}
            """;

    private static Part only(Shed shed, PartKind kind) {
        assertEquals(1, shed.parts(kind).size(), () -> "marks of " + kind);
        return shed.parts(kind).get(0);
    }

    private static void edges(Part part, double stock, double longEdge, double shortEdge) {
        assertEquals(stock, part.stockLength(), 0.05, part.mark() + " stock");
        assertEquals(longEdge, part.longEdge(), 0.05, part.mark() + " long");
        assertEquals(shortEdge, part.shortEdge(), 0.05, part.mark() + " short");
    }

    @Test
    void seatedGable() {
        Shed shed = Shed.of(Definitions.of(COMMON));
        Part column = only(shed, PartKind.COLUMN);
        edges(column, 3966.4, 3966.4, 3948.7);
        assertEquals(CutForm.MITRE, column.cutForm());
        assertEquals(0, column.cutADeg(), 1e-9);
        assertEquals(10, column.cutBDeg(), 1e-9);
        Part rafter = only(shed, PartKind.RAFTER);
        edges(rafter, 6115.6, 6080.4, 6080.4);
        assertEquals(CutForm.PARALLEL, rafter.cutForm());
        assertEquals(10, rafter.cutADeg(), 1e-9);
        assertEquals(5258.0, Summary.of(shed).get("apexHeightMm"), 0.05);
    }

    @Test
    void buttedGable() {
        Shed shed = Shed.of(Definitions.of(COMMON + "kneeJoint: butted\n"));
        edges(only(shed, PartKind.RAFTER), 6001.9, 5966.6, 5966.6);
        double outside = 4200 - 12 / Math.cos(Math.toRadians(10)) - 16 - 20;
        double inside = outside + 100 * Math.tan(Math.toRadians(10));
        edges(only(shed, PartKind.COLUMN), inside, inside, outside);
    }

    @Test
    void skillion() {
        Shed shed = Shed.of(Definitions.of(COMMON.replace("span: 12000", "span: 9000")
                        .replace("eaveHeight: 4200", "eaveHeight: 3000")
                        .replace("roofPitch: 10", "roofPitch: 5")
                + "roofShape: skillion\n"));
        Part high = shed.parts(PartKind.COLUMN).get(1);
        edges(high, 3538.6, 3538.6, 3529.8);
        assertEquals(9034.4, only(shed, PartKind.RAFTER).longEdge(), 0.05);
    }

    @Test
    void leanTo() {
        Shed shed = Shed.of(Definitions.of(COMMON + "leanTos: [{side: right, width: 4000, pitch: 5, drop: 300}]\n"));
        edges(only(shed, PartKind.LEAN_TO_COLUMN), 3360.2, 3360.2, 3351.4);
        assertEquals(4005.2, only(shed, PartKind.LEAN_TO_RAFTER).longEdge(), 0.05);
    }

    @Test
    void rafterOverhangLengthensTheRafterOnTheSlope() {
        Shed plain = Shed.of(Definitions.of(COMMON));
        Shed over = Shed.of(Definitions.of(COMMON + "rafterOverhang: 300\n"));
        double longer = 300 / Math.cos(Math.toRadians(10));
        assertEquals(
                longer,
                only(over, PartKind.RAFTER).longEdge()
                        - only(plain, PartKind.RAFTER).longEdge(),
                0.11);
    }

    @Test
    void withoutApexPlatesHalfARootGapIsLeft() {
        Shed shed = Shed.of(Definitions.of(COMMON.replace("apexPlate: {thickness: 12}", "apexPlate: {thickness: 0}")));
        assertEquals(
                (6000 - 1.5) / Math.cos(Math.toRadians(10)),
                only(shed, PartKind.RAFTER).longEdge(),
                0.05);
        assertEquals(0, shed.count(PartKind.APEX_PLATE));
    }
}
