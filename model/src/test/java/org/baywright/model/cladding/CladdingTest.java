package org.baywright.model.cladding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.baywright.model.definition.Definitions;
import org.baywright.model.definition.Side;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.GirtRows;
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
        List<Double> at = gutter.downpipes().stream().map(Vec3::y).toList();
        assertTrue(gutter.falls().stream().allMatch(f -> f.catchmentM2() <= 45 && f.to() - f.from() <= 12_000));
        assertEquals(at.get(0) + at.get(at.size() - 1), 18_000, 1e-9);
        assertEquals(gutter.catchmentM2() * 150 / 3600, gutter.flowLs(), 1e-9);
    }

    /** Girts of 102 and sheets of 17 stand out from the line: the gutter hangs before both, or on the girt's line only. */
    @Test
    void gutterHangsBeforeTheWallSheets() {
        assertEquals(-119, cladding("").gutters().get(0).from().x(), 1e-6);
        Cladding open = cladding("openings:\n  - {type: open, wall: left, bay: 1}\n"
                + "  - {type: open, wall: left, bay: 2}\n  - {type: open, wall: left, bay: 3}\n");
        assertEquals(-102, open.gutters().get(0).from().x(), 1e-6);
    }

    @Test
    void aBareFrameHasNoCladding() {
        assertEquals(new Cladding(List.of(), List.of(), List.of()), cladding("envelope: none\n"));
    }

    /** Worked by hand: 18 m and four columns at 6 m; a pipe at each end drains 9 m; 12.1 m each need four. */
    @Test
    void pipesAreAtColumnsAsFewAsCarryTheWater() {
        List<Double> columns = List.of(0.0, 6000.0, 12_000.0, 18_000.0);
        assertEquals(List.of(0.0, 18_000.0), pipes(9000, columns, List.of(), List.of()));
        assertEquals(List.of(6000.0, 12_000.0), pipes(9000, 6500, columns, List.of()));
        assertEquals(columns, pipes(6000, columns, List.of(), List.of()));
        // Two between columns when four at columns leave too much to one.
        assertEquals(
                List.of(2250.0, 6750.0, 11_250.0, 15_750.0), pipes(4500, List.of(0.0, 18_000.0), List.of(), List.of()));
    }

    /** An opening from 2000 to 5000 moves the pipe at 2250 aside; where there is no wall it goes to a column. */
    @Test
    void pipesHangBesideOpenings() {
        List<Double> ends = List.of(0.0, 18_000.0);
        List<double[]> door = List.of(new double[] {2000, 5000});
        List<Double> beside = pipes(4500, ends, door, List.of());
        assertTrue(beside.stream().noneMatch(p -> p > 1900 && p < 5100), beside::toString);
        assertEquals(ends, pipes(4500, ends, List.of(), List.<double[]>of(new double[] {0, 18_000})));
    }

    private static List<Double> pipes(double most, List<Double> columns, List<double[]> openings, List<double[]> open) {
        return new Downpipes(0, 18_000, most, 18_000, columns, openings, open).places();
    }

    private static List<Double> pipes(double most, double oneWay, List<Double> columns, List<double[]> openings) {
        return new Downpipes(0, 18_000, most, oneWay, columns, openings, List.of()).places();
    }

    /** A barge reaches the crest of the second corrugation of 76.2, or the first rib at 190.5. */
    @Test
    void bargesReachACrest() {
        assertEquals(152.4, Folds.barge(76.2).get(3).x(), 1e-9);
        assertEquals(190.5, Folds.barge(190.5).get(3).x(), 1e-9);
    }

    /** A plain shed has four corners as high as its side walls, and nothing at a free edge. */
    @Test
    void fourCorners() {
        Flashing corner = only(cladding(""), Flashing.Kind.CORNER);
        assertEquals(4, corner.runs().size());
        assertEquals(0, count(cladding(""), Flashing.Kind.INNER_CORNER) + count(cladding(""), Flashing.Kind.JAMB));
    }

    /** Both edges of an open bay are closed, and the corner it takes away leaves the other wall's edge to close. */
    @Test
    void edgesBesideOpenBays() {
        String open = "openings:\n  - {type: open, wall: left, bay: ";
        assertEquals(2, count(cladding(open + "2}\n"), Flashing.Kind.JAMB));
        Cladding first = cladding(open + "1}\n");
        assertEquals(2, count(first, Flashing.Kind.JAMB));
        assertEquals(3, only(first, Flashing.Kind.CORNER).runs().size());
    }

    /** The end walls of a lean-to inside the building's length run up against its wall. */
    @Test
    void leanToWallsMeetTheMainWall() {
        Cladding cladding =
                cladding("leanTos:\n  - {side: left, width: 4000, pitch: 5, drop: 700, fromBay: 2, toBay: 2}\n"
                        + "wallSheets: {leanToWalls: true, behindLeanTos: true}\n");
        assertEquals(2, count(cladding, Flashing.Kind.INNER_CORNER));
    }

    /** Sheets that start at two heights meet on the frame line between. */
    @Test
    void runsOfOneWallMeet() {
        Cladding cladding =
                cladding("leanTos:\n  - {side: left, width: 4000, pitch: 5, drop: 700, fromBay: 2, toBay: 2}\n");
        List<Surface> left = cladding.surfaces(Surface.Role.WALL).stream()
                .filter(s -> s.name().startsWith("left wall"))
                .toList();
        assertEquals(3, left.size());
        assertEquals(12_000, left.get(1).outline().get(1).x(), 1e-9);
        assertEquals(12_000, left.get(2).outline().get(0).x(), 1e-9);
    }

    /** Past the string line the end wall stays under a steeper lean-to: 4200 − 102·tan 20° + 152/cos 20° − 12. */
    @Test
    void endWallStaysUnderALeanToThatCarriesTheRoofOn() {
        Surface front = cladding("leanTos:\n  - {side: right, width: 4000, pitch: 20, drop: 0}\n")
                .surfaces(Surface.Role.WALL)
                .get(0);
        Vec2 corner = front.outline().get(2);
        assertEquals(12_102, corner.x(), 1e-9);
        assertEquals(4312.6, corner.y(), 0.05);
    }

    /**
     * A lean-to at 5 degrees carries on a roof at 15: planes of sheets 152 above the steel meet 26.5 out, and the main
     * sheets end there; in the bay without it they run into the gutter.
     */
    @Test
    void mainSheetsEndOnAFlatterLeanTo() {
        Cladding cladding = cladding("leanTos:\n  - {side: right, width: 4000, pitch: 5, drop: 0, toBay: 2}\n", 15);
        Surface main = named(cladding, "right roof");
        Surface lean = named(cladding, "right lean-to roof, line C");
        double out = 152
                * (1 / Math.cos(Math.toRadians(15)) - 1 / Math.cos(Math.toRadians(5)))
                / (Math.tan(Math.toRadians(15)) - Math.tan(Math.toRadians(5)));
        assertEquals(26.5, out, 0.01);
        Vec3 end = main.axes().toWorld(2000, main.sheets().get(2).low(), 0);
        assertEquals(12_000 + out, end.x(), 0.01);
        assertEquals(0, lean.axes().toLocal(end).z(), 0.01);
        assertEquals(0, main.sheets().get(main.sheets().size() - 1).low());
        double leanTop = lean.outline().get(2).y();
        assertEquals(12_000 + out, lean.axes().toWorld(0, leanTop, 0).x(), 0.01);
    }

    private static Cladding cladding(String more, double pitch) {
        return Cladding.of(Shed.of(Definitions.of(TWELVE.replace("roofPitch: 10", "roofPitch: " + pitch) + more)));
    }

    private static Surface named(Cladding cladding, String name) {
        return cladding.surfaces().stream()
                .filter(s -> s.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** Wall sheets of 4300 that may be 3000 long lap by 150 over a girt; rows at 150 and even spaces of at most 1500. */
    @Test
    void longWallSheetsLapOverAGirt() {
        Surface wall = named(cladding("longestSheet: 3000\n"), "left wall");
        List<Surface.Sheet> lapped = wall.lengths().get(0);
        assertEquals(2, lapped.size());
        assertEquals(150, lapped.get(0).high() - lapped.get(1).low(), 5);
        Shed shed = Shed.of(Definitions.of(TWELVE + "longestSheet: 3000\n"));
        double middle = lapped.get(1).low() + 75;
        List<Double> rows = GirtRows.of(
                        shed.definition(), shed.setOut(), shed.wallCovers().get(2))
                .at();
        assertTrue(rows.stream().anyMatch(r -> Math.abs(r - middle) < 5), () -> middle + " of " + rows);
        assertTrue(wall.sheets().stream().allMatch(s -> s.length() <= 3000));
    }

    /** Worked by hand: beside an open bay sheets end, with their girts, at the column's far edge, 50 past its line. */
    @Test
    void sheetsEndOnTheColumnBesideAnOpenBay() {
        Shed shed = Shed.of(Definitions.of(TWELVE + "openings:\n  - {type: open, wall: right, bay: 2}\n"));
        Surface first = named(Cladding.of(shed), "right wall, bays 1 to 1");
        assertEquals(
                6050, first.axes().toWorld(first.outline().get(1).x(), 0, 0).y(), 1e-9);
        double furthest = shed.parts(PartKind.GIRT).stream()
                .flatMap(p -> p.places().stream()
                        .filter(at -> at.side() == Side.RIGHT && at.frame() == 1)
                        .flatMap(at -> Stream.of(0.0, p.solid().axisLength())
                                .map(l -> at.placement().toWorld(l, 0, 0))))
                .filter(at -> at.x() > 12_000)
                .mapToDouble(Vec3::y)
                .max()
                .orElseThrow();
        assertEquals(6050, furthest, 1e-9);
    }

    @Test
    void twoHundredBays() {
        Cladding cladding = Cladding.of(Shed.of(Definitions.of(TWELVE.replace("bays: 3", "bays: 200"))));
        // ⌈(1 200 000 + 2 · 129)/762⌉ on either slope.
        assertEquals(
                2 * 1576,
                cladding.surfaces(Surface.Role.ROOF).stream()
                        .mapToInt(s -> s.sheets().size())
                        .sum());
    }

    private static Flashing only(Cladding cladding, Flashing.Kind kind) {
        return cladding.flashings().stream()
                .filter(f -> f.kind() == kind)
                .findFirst()
                .orElseThrow();
    }

    private static int count(Cladding cladding, Flashing.Kind kind) {
        return cladding.flashings().stream()
                .filter(f -> f.kind() == kind)
                .mapToInt(f -> f.runs().size())
                .sum();
    }
}
