package org.baywright.model.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.baywright.model.definition.Definitions;
import org.baywright.model.geometry.Clearance;
import org.baywright.model.geometry.Convex;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Profile;
import org.baywright.model.geometry.Solid;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.setout.SlidingLeaf;
import org.baywright.model.setout.WallFace;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Girts, uprights and wall braces against lengths and places worked by hand. */
class WallSteelTest {
    private static final String SHED = "span: 12000\nbays: 3\nbaySpacing: 6000\neaveHeight: 4200\nroofPitch: 10\n"
            + "column: SHS 100x100x5\nenvelope: full\n";

    private static Shed shed(String more) {
        return Shed.of(Definitions.of(SHED + more));
    }

    /** Girts that run along the building: those of the side walls. */
    private static List<Double> sideGirts(Shed shed) {
        return shed.parts(PartKind.GIRT).stream()
                .filter(p -> Math.abs(p.places().get(0).placement().along().y()) > 0.5)
                .map(Part::stockLength)
                .sorted()
                .distinct()
                .toList();
    }

    /**
     * Source: end S + 0.075 S, interior S + 0.15 S for lapped Zs; butted Cs S − 10, at an end 5 less; common practice.
     * A girt starts at the end string line. Flush Zs stop 5 short of the columns' faces, 50 from the line.
     */
    @ParameterizedTest
    @CsvSource({
        "{section: Z150-15}, 6450, 6900",
        "{section: C150-15}, 5990, 5995",
        "'{section: Z100-15, place: flush}', 5838, 5890"
    })
    void lengthsOfGirts(String girts, double one, double other) {
        String section = girts.replace("Z100-15", "C100-12");
        List<Double> lengths = sideGirts(shed("girts: " + section + "\n"));
        assertEquals(List.of(one, other), lengths);
    }

    /** A lap shares the cleat on the frame between: four cleats to a row of three bays, and three bolts to a lap. */
    @Test
    void lappedGirtsShareTheirCleats() {
        Shed shed = shed("girts: {section: Z150-15}\n");
        long girts =
                places(shed, PartKind.GIRT).filter(WallSteelTest::isOnTheLeft).count();
        long cleats = places(shed, PartKind.GIRT_CLEAT)
                .filter(WallSteelTest::isOnTheLeft)
                .count();
        assertEquals(girts / 3 * 4, cleats);
        List<Integer> bolts = shed.parts(PartKind.GIRT).stream()
                .filter(p -> p.stockLength() == 6900)
                .map(p -> p.punched().size())
                .toList();
        assertTrue(!bolts.isEmpty() && bolts.stream().allMatch(n -> n == 3 + 1 + 3), bolts::toString);
    }

    private static Stream<Vec3> places(Shed shed, PartKind kind) {
        return shed.parts(kind).stream()
                .flatMap(p -> p.places().stream()
                        .map(at -> at.placement()
                                .toWorld(kind.isMember() ? p.solid().axisLength() / 2 : 0, 0, 0)));
    }

    private static boolean isOnTheLeft(Vec3 at) {
        return at.x() < 0 && at.y() > 0 && at.y() < 18_000;
    }

    /** Strips of 300 to 700 over a lean-to have a girt, outside the columns or flush between or beside the rafters. */
    @ParameterizedTest
    @CsvSource({
        "600, '{section: C150-15}'",
        "600, '{section: Z150-15}'",
        "480, '{section: Z150-15}'",
        "480, '{section: C100-12, place: flush}'",
        "600, '{section: C100-12, place: flush}'",
        "900, '{section: C100-12, place: flush}'"
    })
    void everyStripOverALeanToHasAGirt(double drop, String girts) {
        Shed shed = shed("leanTos: [{side: left, width: 3000, pitch: 5, drop: " + drop + "}]\ngirts: " + girts + "\n");
        double roof = 4200 - drop;
        long over = places(shed, PartKind.GIRT)
                .filter(at -> Math.abs(at.x()) < 160 && at.z() > roof && at.y() > 300 && at.y() < 17_700)
                .count();
        assertEquals(3, over);
    }

    /** The middle of a channel's outline, not its centroid, stands on the jamb's line; the opening stays clear. */
    @Test
    void channelJambsStandBesideTheirOpening() {
        Shed shed = shed("mullions: {section: C150-19}\n"
                + "openings: [{type: door, wall: front, width: 1000, offset: 3000}]\n");
        List<Double> faces = shed.parts(PartKind.JAMB).stream()
                .flatMap(p -> p.places().stream().flatMap(at -> Convex.of(p.solid(), at.placement()).stream()))
                .flatMap(c -> c.corners().stream())
                .map(Vec3::x)
                .toList();
        assertEquals(
                3000, faces.stream().filter(x -> x < 3500).max(Double::compare).orElseThrow(), 1e-6);
        assertEquals(
                4000, faces.stream().filter(x -> x > 3500).min(Double::compare).orElseThrow(), 1e-6);
        assertEquals(3000 - 64, faces.stream().min(Double::compare).orElseThrow(), 1e-6);
    }

    /** Columns 252 deep have 100 behind girts of 152: an angle of 65 and its cleats of 8 go there, on the columns. */
    @Test
    void bracesBehindFlushGirtsHaveCleatsOnTheColumns() {
        Shed shed = Shed.of(Definitions.of("span: 14000\nbays: 3\nbaySpacing: 5500\neaveHeight: 4800\nroofPitch: 8\n"
                + "column: 250UB31.4\nrafter: 310UB40.4\nkneeJoint: butted\nenvelope: full\n"
                + "girts: {section: C150-15, place: flush}\nbracing: {section: EA 65x65x5}\n"));
        Assemblies assemblies = Assemblies.of(shed);
        long onWalls = shed.parts(PartKind.BRACE_CLEAT).stream()
                .filter(p -> Math.abs(p.places().get(0).placement().along().z()) < 0.1)
                .peek(p -> assertEquals(0, assemblies.loose(p), p.mark()))
                .count();
        assertTrue(onWalls > 0, "braces in the walls");
    }

    /** The cleat of a beam's narrow flange is wider than it, and stays under a steep rafter all the same. */
    @Test
    void cleatsWiderThanTheirMullionStayUnderTheRafter() {
        Shed shed = Shed.of(Definitions.of("span: 12000\nbays: 1\nbaySpacing: 5500\neaveHeight: 4200\nroofPitch: 22\n"
                + "column: 250UB31.4\nrafter: 310UB40.4\nenvelope: full\nmullions: {section: 150UB18.0}\n"));
        Stream<Convex> cleats = shed.parts(PartKind.MULLION_CLEAT).stream().flatMap(WallSteelTest::convexes);
        List<Convex> rafters = shed.parts(PartKind.RAFTER).stream()
                .flatMap(WallSteelTest::convexes)
                .toList();
        cleats.forEach(c -> rafters.forEach(r -> assertTrue(Clearance.overlap(c, r) < 0.1, "a cleat in a rafter")));
    }

    /** Over and under openings lower than the rows' spacing there is none, so that girts have no holes for it there. */
    @ParameterizedTest
    @ValueSource(strings = {"C100-12", "Z150-15"})
    void girtsArePunchedForBridgingWhereItIs(String girt) {
        Shed shed = Shed.of(Definitions.of("span: 12000\nbays: 3\nbaySpacing: 8000\neaveHeight: 4200\nroofPitch: 10\n"
                + "envelope: full\ngirts: {section: " + girt + "}\nopenings:\n"
                + "  - {type: window, wall: left, bay: 2, width: 2500, height: 900, sill: 1000}\n"
                + "  - {type: rollerDoor, wall: left, bay: 1, width: 4000, height: 3000}\n"
                + "  - {type: window, wall: front, width: 4200, height: 700, sill: 1100}\n"));
        List<Convex> bridging = shed.parts(PartKind.BRIDGING).stream()
                .flatMap(WallSteelTest::convexes)
                .toList();
        int holes = 0;
        for (Part part : shed.parts(PartKind.GIRT)) {
            for (Place place : part.places()) {
                // Those of cleats and laps lie within 1.3 m of the ends: laps reach a tenth of a bay past the frame.
                for (double at : part.punched()) {
                    if (at > 1300 && at < part.solid().axisLength() - 1300) {
                        holes++;
                        Vec3 hole = place.placement().toWorld(at, 0, 0);
                        double nearest = bridging.stream()
                                .mapToDouble(b -> b.distance(hole))
                                .min()
                                .orElseThrow();
                        assertTrue(nearest < 60, () -> part.mark() + " has a hole at " + at + ", nothing at " + hole);
                    }
                }
            }
        }
        assertTrue(holes > 20, "holes for bridging: " + holes);
    }

    /** Beside a sliding door girts stand at its head as far as its leaf goes, whatever the height: new ones, or rows. */
    @ParameterizedTest
    @CsvSource({
        "left, 2, 2300, C100-12, outside", "left, 2, 2905, C100-12, outside", "left, 2, 3100, Z150-15, outside",
        "front, 0, 2500, Z150-15, outside", "front, 0, 3050, C150-15, flush", "right, 1, 2955, TH64-10, outside",
        "right, 3, 2700, RHS 100x50x3, flush"
    })
    void aSlidingDoorsTrackHasGirtsBehindIt(String wall, int bay, double height, String girt, String place) {
        Shed shed = Shed.of(Definitions.of("span: 12000\nbays: 3\nbaySpacing: 6000\neaveHeight: 4200\nroofPitch: 10\n"
                + "column: SHS 150x150x6\nrafter: RHS 250x150x8\nenvelope: full\ngirts: {section: " + girt + ", place: "
                + place + "}\nopenings:\n  - {type: slidingDoor, wall: " + wall + (bay > 0 ? ", bay: " + bay : "")
                + ", width: 3000, height: " + height + "}\n"));
        SlidingLeaf leaf = new SlidingLeaf(shed.openings().get(0));
        WallFace face = leaf.place().face();
        List<Convex> girts = Stream.of(PartKind.GIRT, PartKind.HEADER)
                .flatMap(kind -> shed.parts(kind).stream())
                .flatMap(WallSteelTest::convexes)
                .toList();
        double inside = place.equals("flush") ? -40 : 40;
        int held = 0;
        for (double u = leaf.trackFrom() + 100; u < leaf.trackTo() - 100; u += 50) {
            // A rod through the band over the head.
            Placement at = Placement.of(
                    face.toWorld(u, height + 10, inside), Vec3.UP, face.axes().width());
            Convex rod =
                    Convex.of(Solid.square(Profile.rectangle(1, 1), 0, 180), at).get(0);
            held += girts.stream().anyMatch(g -> Clearance.overlap(rod, g) > 0) ? 1 : 0;
        }
        assertEquals((leaf.trackTo() - leaf.trackFrom() - 200) / 50, held, 12, "held of " + wall + " " + height);
    }

    private static Stream<Convex> convexes(Part part) {
        return part.places().stream().flatMap(p -> Convex.of(part.solid(), p.placement()).stream());
    }
}
