package org.baywright.model.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import org.baywright.model.definition.Bracing;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Definitions;
import org.baywright.model.setout.RoofRows;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Purlins, bridging and braces of the roof against lengths and counts worked by hand. */
class RoofSteelTest {
    private static final Bracing RODS = RoofSheds.bracing("ROD 16", 0);

    private static Definition twelve(String bays) {
        return Definitions.of(
                "span: 12000\n" + bays + "\neaveHeight: 4200\nroofPitch: 10\nrafter: 200UB25.4\nenvelope: full\n"
                        + "girts: {section: C100-12}\n");
    }

    private static Shed shed(String bays, String purlin, Bracing bracing) {
        return Shed.of(RoofSheds.with(twelve(bays), RoofSheds.purlins(purlin), bracing, false));
    }

    /** Those that lie in a slope: steel of the walls stands upright, across the building. */
    private static long onRoof(Shed shed, PartKind kind) {
        return shed.parts(kind).stream()
                .flatMap(part -> part.places().stream())
                .map(place -> kind.isMember()
                        ? place.placement().along()
                        : place.placement().depth())
                .filter(way -> Math.abs(way.x()) > 1e-6)
                .count();
    }

    private static List<Double> lengths(Shed shed, PartKind kind) {
        return shed.parts(kind).stream()
                .map(Part::stockLength)
                .sorted()
                .distinct()
                .collect(Collectors.toList());
    }

    /**
     * Source: trade's rule for a 6000 × 6000 run at 10°: 8551 true, 8485 on plan, 66 short if plan is used; true
     * length √(S² + (run/cos θ)²).
     */
    @Test
    void trueLengthOfABrace() {
        assertEquals(8551, BracePanels.trueLength(6000, 6000, Math.cos(Math.toRadians(10))), 0.5);
        assertEquals(8485, BracePanels.trueLength(6000, 6000, 1), 0.5);
    }

    /** The same rule on the made piece: nodes 250 and a little from the rafter's ends, clear of cap and plate. */
    @Test
    void braceOfTheFirstBay() {
        Shed shed = shed("bays: 3\nbaySpacing: 6000", "Z150-15", RODS);
        double cosine = Math.cos(Math.toRadians(10));
        double room = 250 + 2 * (16 + 8 + 10) * Math.tan(Math.toRadians(10));
        double run = 6000 - 12 - 2 * room * cosine;
        // UB 200: 133 wide, so a lug of 50 is stopped 66.5 + 25·sin + 10 from the middle, along the building.
        double along = 6000 - 100.0 / 2;
        double node = Math.hypot(along, run / cosine);
        double stop = (66.5 + 25 * run / cosine / node + 10) / (along / node);
        double[] rods = shed.parts(PartKind.BRACE).stream()
                .filter(p -> Math.abs(p.places().get(0).placement().along().x()) > 1e-6)
                .mapToDouble(Part::stockLength)
                .toArray();
        assertEquals(2, rods.length, "a longer and a shorter rod");
        assertEquals(8, onRoof(shed, PartKind.BRACE), "a pair of two rods each on either slope");
        assertEquals(8, onRoof(shed, PartKind.BRACE_LUG));
        // A lug holds its bolt 25 from its end and the rod 35 further; 4 d lie between the rods.
        assertEquals(node - 2 * stop, rods[0] + rods[1] + 4 * 16 + 2 * (25 + 35), 0.2);
        assertEquals(4, shed.count(PartKind.STRUT));
        assertEquals(8, onRoof(shed, PartKind.BRACE_CLEAT));
    }

    /** Long slopes take several crossed pairs, none of them flat. */
    @Test
    void longSlopesAreDividedIntoPanels() {
        Definition wide = Definitions.of(
                "span: 30000\nbays: 2\nbaySpacing: 5000\neaveHeight: 4200\nroofPitch: 10\nenvelope: full\n");
        Shed shed = Shed.of(RoofSheds.with(wide, RoofSheds.purlins("Z200-19"), RODS, false));
        assertEquals(2 * 3 * 2 * 2, onRoof(shed, PartKind.BRACE));
        assertEquals(2 * 4, shed.count(PartKind.STRUT));
    }

    @Test
    void aLeanToIsBracedWhereItSpansTheBracedBay() {
        String lean = "\nleanTos: [{side: right, width: 4000, pitch: 5, drop: 400, fromBay: %d, toBay: 2}]\n";
        Definition over = twelve("bays: 2\nbaySpacing: 4000" + lean.formatted(1));
        Definition beside = twelve("bays: 2\nbaySpacing: 4000" + lean.formatted(2));
        long alone = onRoof(Shed.of(twelve("bays: 2\nbaySpacing: 4000")), PartKind.BRACE);
        assertEquals(alone + 4, onRoof(Shed.of(over), PartKind.BRACE));
        assertEquals(alone, onRoof(Shed.of(beside), PartKind.BRACE));
    }

    /**
     * Source: interior S + 0.15 S, end S + 0.075 S + overhang, a lap of 600 at least, butted lengths S − 10; common
     * practice. The overhang is the end wall's girts, 102. At an end only one butted length ends on the cleat, 5 short.
     */
    @ParameterizedTest
    @CsvSource({
        "Z150-15, 6000, 6552, 6900",
        "Z150-15, 4000, 4402, 4600",
        "Z150-15, 3900, 4302, 4500",
        "Z200-19, 8000, 8702, 9200",
        "C150-15, 6000, 6097, 5990",
        "RHS 100x50x3, 6000, 6097, 5990",
        "TH64-10, 3000, 3097, 2990"
    })
    void lengthsOfARow(String section, int bay, double end, double interior) {
        Shed shed = shed("bays: 3\nbaySpacing: " + bay, section, RODS);
        assertEquals(List.of(Math.min(end, interior), Math.max(end, interior)), lengths(shed, PartKind.PURLIN));
    }

    @Test
    void oneBayHasOneLengthPastBothEndWalls() {
        assertEquals(List.of(6204.0), lengths(shed("bays: 1\nbaySpacing: 6000", "Z150-15", RODS), PartKind.PURLIN));
    }

    /** Where bays differ the longer one sets the lap, the same for both lengths. */
    @Test
    void unevenBaysShareTheirLaps() {
        Shed shed = shed("bays: 2\nbaySpacing: [4000, 8000]", "Z150-15", RODS);
        assertEquals(List.of(4000 + 102 + 600.0, 8000 + 102 + 600.0), lengths(shed, PartKind.PURLIN));
    }

    /** Both end bays of Zs are alike but of different hand; a C is the same turned end for end. */
    @Test
    void endLengthsOfZsAreHandedAndThoseOfCsAreNot() {
        assertEquals(
                3,
                shed("bays: 3\nbaySpacing: 6000", "Z150-15", RODS)
                        .parts(PartKind.PURLIN)
                        .size());
        assertEquals(
                2,
                shed("bays: 3\nbaySpacing: 6000", "C150-15", RODS)
                        .parts(PartKind.PURLIN)
                        .size());
    }

    /** Source: no bridging to 3 m, one row to 6 m, two to 9 m; common practice. None for sections without a web. */
    @ParameterizedTest
    @CsvSource({
        "Z150-15, 3000, 0", "Z150-15, 3001, 1", "Z150-15, 6000, 1", "Z150-15, 6001, 2",
        "C150-15, 9000, 2", "C150-15, 9001, 3", "RHS 100x50x3, 6000, 0", "TH64-10, 6000, 0"
    })
    void rowsOfBridging(String section, int bay, int rows) {
        Shed shed = shed("bays: 2\nbaySpacing: " + bay, section, RODS);
        int spaces = RoofRows.of(shed.definition(), shed.setOut()).stream()
                .mapToInt(r -> r.at().size() - 1)
                .sum();
        assertEquals(rows * spaces * 2, onRoof(shed, PartKind.BRIDGING));
    }

    /**
     * Source: each side of knee and apex, then every second or third purlin; common practice. Length by Pythagoras from
     * half the purlin's depth, 76, to 30 over the inner flange, 203 below the rafter's top, at 45°.
     */
    @Test
    void flyBraces() {
        assertEquals(0, shed("bays: 3\nbaySpacing: 6000", "Z150-15", RODS).count(PartKind.FLY_BRACE));
        Shed shed = shed("bays: 3\nbaySpacing: 6000", "Z150-15", RoofSheds.bracing("ROD 16", 2));
        assertEquals(List.of(352.1), lengths(shed, PartKind.FLY_BRACE));
        int onInnerFrame = (int) shed.parts(PartKind.FLY_BRACE).get(0).places().stream()
                .filter(p -> p.frame() == 3)
                .count();
        // Seven rows to a slope: the second, fourth and sixth, and the last.
        assertEquals(2 * 4, onInnerFrame);
    }

    /** A row past the rafter's end has a bracket that reaches back on it. */
    @Test
    void bracketsReachBackOntoTheRafter() {
        Shed shed = shed("bays: 3\nbaySpacing: 6000", "C150-15", RODS);
        RoofRows rows = RoofRows.of(shed.definition(), shed.setOut()).get(0);
        assertTrue(rows.at().get(0) < 0 && rows.lowest().turned());
        assertEquals(
                8,
                shed.parts(PartKind.PURLIN_CLEAT).stream()
                        .filter(c -> c.holes().isEmpty())
                        .mapToInt(Part::quantity)
                        .sum());
    }

    /** Shallow rafters have room for a lug only from their underside to their top: over it lie the purlins. */
    @ParameterizedTest
    @ValueSource(strings = {"{section: RHS 150x50x5, turned: true}", "RHS 75x50x3", "SHS 50x50x3", "200UB25.4"})
    void lugsOfFlyBracesStayBelowThePurlins(String rafter) {
        Shed shed = Shed.of(Definitions.of("span: 9000\nbays: 2\nbaySpacing: 5000\neaveHeight: 3600\nroofPitch: 10\n"
                + "rafter: " + rafter + "\nbracing: {flyBraceEvery: 1}\nenvelope: full\n"));
        List<Standing> purlins = standing(shed, PartKind.PURLIN);
        List<Standing> lugs = standing(shed, PartKind.FLY_BRACE_LUG);
        assertTrue(!lugs.isEmpty());
        lugs.forEach(lug -> purlins.forEach(p ->
                assertTrue(!p.plan().intersects(lug.plan()) || Neighbours.overlap(lug, p) < 0.1, "a lug in a purlin")));
    }

    /** What is cut and drilled alike has one mark. */
    @Test
    void lugsOfOneShapeHaveOneMark() {
        for (String rafter : List.of("310UB40.4", "RHS 200x100x5")) {
            List<Part> lugs = Shed.of(Definitions.of("span: 12000\nbays: 3\nbaySpacing: 5000\neaveHeight: 3600\n"
                            + "roofPitch: 10\nrafter: " + rafter + "\nbracing: {flyBraceEvery: 1}\nenvelope: full\n"))
                    .parts(PartKind.FLY_BRACE_LUG);
            assertTrue(!lugs.isEmpty());
            for (Part a : lugs) {
                for (Part b : lugs) {
                    assertTrue(a == b || !isLike(a, b), a.mark() + " and " + b.mark());
                }
            }
        }
    }

    private static boolean isLike(Part a, Part b) {
        return Math.abs(a.solid().profile().depth() - b.solid().profile().depth()) < 0.01
                && Math.abs(a.solid().profile().width() - b.solid().profile().width()) < 0.01
                && a.holes().get(0).at().distance(b.holes().get(0).at()) < 0.01;
    }

    /** A mullion right under a node of the roof's braces: its head's plates and the strut keep apart. */
    @Test
    void strutsEndClearOfTheHeadsOfUprights() {
        Shed shed = Shed.of(Definitions.of("span: 10200\nbays: 1\nbaySpacing: 3100\neaveHeight: 5600\nroofPitch: 3.5\n"
                + "column: SHS 89x89x5\nrafter: {section: RHS 150x50x5, turned: true}\n"
                + "mullions: {section: RHS 125x75x4, spacing: 2560}\nenvelope: full\n"));
        List<Standing> struts = standing(shed, PartKind.STRUT);
        assertTrue(!struts.isEmpty() && shed.count(PartKind.MULLION_CLEAT) > 0);
        standing(shed, PartKind.MULLION_CLEAT)
                .forEach(cleat -> struts.forEach(s -> assertTrue(
                        Neighbours.overlap(cleat, s) < 0.1,
                        () -> "strut in cleat at " + cleat.place().placement().origin())));
    }

    private static List<Standing> standing(Shed shed, PartKind kind) {
        return shed.parts(kind).stream()
                .flatMap(p -> p.places().stream().map(at -> Standing.of(p, at)))
                .toList();
    }
}
