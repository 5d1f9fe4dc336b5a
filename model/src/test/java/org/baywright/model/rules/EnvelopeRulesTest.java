package org.baywright.model.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.baywright.model.catalogue.Catalogue;
import org.baywright.model.definition.DefinitionReader;
import org.baywright.model.definition.Reading;
import org.baywright.model.parts.Shed;
import org.baywright.model.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What the envelope asks of the frame, just inside and just outside each limit. Limits are worked by hand for columns
 * of 100 x 100, rafters 200 deep at 10 degrees (203.1 plumb, underside 3996.9 at the outside face), jambs of 100.
 */
class EnvelopeRulesTest {
    private static final String SHED = """
            span: 12000
            bays: 3
            baySpacing: 6000
            eaveHeight: 4200
            roofPitch: 10
            envelope: full
            """;
    /**
     * What is told of the anchors of nearly every shed, of the pipes and braces of nearly every open lean-to, and of the
     * track of nearly every sliding door.
     */
    private static final Set<String> USUAL = Set.of(
            "anchor-near-edge",
            "anchors-share-concrete",
            "plates-share-concrete",
            "downpipe-short",
            "brace-in-open-bay",
            "sliding-wall-short",
            "sliding-track-unbacked",
            "plates-meet-nothing");

    private static final String DOOR = "openings: [{type: door, wall: front}]\n";
    private static final String LEAN_TO = "leanTos: [{side: left, width: 4000, drop: 300}]\n";

    private static List<Problem> found(String text) {
        return all(text).stream().filter(p -> !USUAL.contains(p.code())).toList();
    }

    private static List<Problem> all(String text) {
        Reading reading = DefinitionReader.read("test.yaml", text, List.of(), Catalogue.shipped());
        return ShedRules.check(
                reading.definition().orElseThrow(() -> new AssertionError(reading.problems())),
                reading.places()::where);
    }

    /** Every code that is found, advice in brackets. */
    private static void assertCodes(String codes, String text) {
        List<String> found = found(text).stream()
                .map(p -> p.isError() ? p.code() : "(" + p.code() + ")")
                .toList();
        assertEquals(codes == null ? "" : codes, String.join(" ", found), text);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "type: slidingDoor, wall: left, bay: 2, width: 5700 |",
                "type: slidingDoor, wall: left, bay: 2, width: 5701 | opening-too-wide",
                "type: slidingDoor, wall: right, bay: 3, width: 5650, offset: 150 |",
                "type: slidingDoor, wall: right, bay: 3, width: 5651, offset: 150 | opening-too-wide",
                "type: slidingDoor, wall: front, width: 11600, height: 2000 |",
                "type: slidingDoor, wall: front, width: 11601, height: 2000 | opening-too-wide",
                "type: slidingDoor, wall: left, bay: 2, height: 3896 |",
                "type: slidingDoor, wall: left, bay: 2, height: 3897 | opening-too-high",
                "type: rollerDoor, wall: left, bay: 2, height: 3546 |",
                "type: rollerDoor, wall: left, bay: 2, height: 3547 | (roller-door-head)",
                "type: slidingDoor, wall: front, offset: 200, height: 3932 |",
                "type: slidingDoor, wall: front, offset: 200, height: 3933 | opening-too-high",
                "type: slidingDoor, wall: rear, width: 3000, height: 4690 |",
                "type: slidingDoor, wall: rear, width: 3000, height: 4691 | opening-too-high",
                "type: door, wall: front, offset: 200 |",
                "type: door, wall: front, offset: 199 | opening-off-bay",
                "type: door, wall: rear, offset: 10980 |",
                "type: door, wall: rear, offset: 10981 | opening-off-bay",
                "type: door, wall: left, bay: 2, offset: 150 |",
                "type: door, wall: left, bay: 2, offset: 149 | opening-off-bay",
                "type: door, wall: left, bay: 3, offset: 4980 |",
                "type: door, wall: left, bay: 3, offset: 4981 | opening-off-bay",
                "type: rollerDoor, wall: front, offset: 250 |",
                "type: rollerDoor, wall: front, offset: 249 | (roller-door-side)",
                "type: open, wall: front |",
                "type: open, wall: left, bay: 3 |",
                "type: door, wall: left | bay-missing",
                "type: door, wall: left, bay: 4 | no-such-bay",
                "type: door, wall: front, bay: 1 | bay-in-end-wall",
                "type: door, wall: front, leanTo: left | no-such-lean-to",
                "type: window, wall: left, bay: 2 | (no-way-in)",
            })
    void anOpeningInItsWall(String opening, String codes) {
        assertCodes(codes, SHED + "openings: [{" + opening + "}]\n");
    }

    @Test
    void theRakeOfARearWallIsLowOverLineA() {
        String skillion = SHED + "roofShape: skillion\nlongestSheet: 20000\n"
                + "openings: [{type: slidingDoor, wall: rear, height: 4500, offset: ";
        assertCodes("opening-too-high", skillion + "200}]");
        assertCodes("", skillion + "8000}]");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "front, offset: 1000 | front, offset: 2020 |",
                "front, offset: 1000 | front, offset: 2019 | openings-overlap",
                "front, offset: 2019 | front, offset: 1000 | openings-overlap",
                "front, offset: 1000 | rear, offset: 1000 |",
                "left, bay: 2 | left, bay: 3 |",
                "left, bay: 2 | left, bay: 2 | openings-overlap",
            })
    void openingsStandApart(String first, String second, String codes) {
        String doors = "openings: [{type: door, wall: %s}, {type: door, wall: %s}]\n";
        assertCodes(codes, SHED + doors.formatted(first, second));
    }

    @Test
    void oneOpeningAboveAnotherSharesItsJambs() {
        String over = SHED + "openings: [{type: door, wall: front, offset: 2000, width: 820, height: 2040},"
                + " {type: window, wall: front, offset: 2000, width: %s, height: 600, sill: %s}]\n";
        assertCodes("", over.formatted("820", "2240"));
        assertCodes("openings-overlap", over.formatted("820", "2239"));
        assertCodes("openings-overlap", over.formatted("820", "2000"));
        assertCodes("openings-overlap", over.formatted("800", "2500"));
        Problem told = found(over.formatted("800", "2500")).get(0);
        assertTrue(told.message().contains("jambs run from the floor to the roof"));
        assertEquals("give both the same width and offset", told.remedy());
    }

    /** A leaf of 2200 slides to the right, from 2100 past the door's left edge to 4300. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "wall: front, offset: 6250, width: 900, sill: 900 | (sliding-leaf-over)",
                "wall: front, offset: 6301, width: 900, sill: 900 |",
                "wall: front, offset: 500, width: 900, sill: 900 |",
                "wall: front, offset: 6000, width: 900, sill: 2100, height: 500 |",
                "wall: front, offset: 6000, width: 900, sill: 2099, height: 500 | (sliding-leaf-over)",
                "wall: rear, offset: 6000, width: 900, sill: 900 |",
            })
    void aSlidingLeafParkedOverAnOpeningIsTold(String window, String codes) {
        assertCodes(
                codes,
                SHED + "openings: [{type: slidingDoor, wall: front, offset: 2000, width: 2000, height: 2000},"
                        + " {type: window, " + window + "}]\n");
    }

    @Test
    void aRollerDoorsRollWantsRoomBelowAnOpeningOverIt() {
        String over = SHED + "openings: [{type: rollerDoor, wall: front, width: 2400, height: 2000, sill: 0},"
                + " {type: window, wall: front, width: 2400, height: 600, sill: %s}]\n";
        assertCodes("", over.formatted("2450"));
        assertCodes("(roller-door-head)", over.formatted("2449"));
    }

    /** Two lean-tos on the right, of bay 1 and of bay 3; any bay tells which of their front walls is meant. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "leanTo: right, bay: 1 | | 1",
                "leanTo: right, bay: 3 | | 3",
                "leanTo: right | (lean-to-not-named) | 1",
                "leanTo: right, bay: 2 | no-such-bay |",
            })
    void anEndWallOfASecondLeanToIsNamedByItsBay(String where, String codes, Integer frame) {
        String text = SHED + "leanTos: [{side: right, width: 3000, drop: 300, toBay: 1},"
                + " {side: right, width: 4000, drop: 300, fromBay: 3}]\nwallSheets: {leanToWalls: true}\n"
                + "bracing: {bays: none}\n"
                + "openings: [{type: door, wall: front, " + where + "}]\n";
        assertCodes(codes, text);
        if (frame != null) {
            Shed shed = Shed.of(DefinitionReader.read("test.yaml", text, List.of(), Catalogue.shipped())
                    .definition()
                    .orElseThrow());
            assertEquals(
                    frame, shed.openings().get(0).face().leanTo().orElseThrow().firstFrame());
        }
    }

    /** An angle of 50 takes a rafter of 58, its own height and a cleat of 8; with less than 68 it is close to purlins. */
    @Test
    void anAngleBraceWantsARafterDeeperThanItself() {
        String angle = SHED + DOOR + "bracing: {section: EA 50x50x5}\nrafter: RHS %s\n";
        assertCodes("(brace-meets-purlins)", angle.formatted("65x35x3"));
        assertCodes(null, angle.formatted("75x50x3"));
        assertCodes("brace-through-purlins", angle.formatted("50x50x3").replace("RHS", "SHS"));
        assertCodes(null, SHED + DOOR + "rafter: RHS 65x35x3\n");
    }

    /** A lean-to has room for a panel of 1000 or has no braces, whatever its rafters. */
    @Test
    void aSlopeTooShortForBracesIsNotToldOfThem() {
        String lean = SHED + DOOR + "bracing: {section: EA 50x50x5}\nleanToRafter: SHS 50x50x3\n"
                + "leanTos: [{side: left, width: %s, drop: 300}]\n";
        assertTrue(codes(lean.formatted(4000)).contains("brace-through-purlins"));
        assertFalse(codes(lean.formatted(1200)).contains("brace-through-purlins"));
    }

    private static List<String> codes(String text) {
        return all(text).stream().map(Problem::code).toList();
    }

    @Test
    void splitSheetsOfRoofsAndWallsAreTold() {
        Problem told = found(SHED + DOOR + "longestSheet: 5000\n").get(0);
        assertEquals("sheet-split", told.code());
        assertTrue(told.message().contains("left roof, "), told.message());
        assertTrue(told.message().contains("front wall, "), told.message());
        assertFalse(told.message().contains("left wall"), told.message());
    }

    @Test
    void aBayLeftOpenHasNoRoomForADoor() {
        String open = SHED + "openings: [{type: open, wall: left, bay: 2}, {type: door, wall: left, bay: %d}]\n";
        assertCodes("openings-overlap", open.formatted(2));
        assertCodes(null, open.formatted(3));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "type: door, wall: left, bay: 2 | opening-behind-lean-to | (opening-into-lean-to)",
                "type: door, wall: right, bay: 2 | |",
                "type: open, wall: left, bay: 2 | |",
                "type: door, wall: left, bay: 2, leanTo: left | opening-in-open-wall |",
                "type: door, wall: front, leanTo: left | opening-in-open-wall |",
                "type: door, wall: right, bay: 2, leanTo: left | no-such-wall | no-such-wall",
            })
    void behindALeanTo(String opening, String open, String closed) {
        String text = SHED + LEAN_TO + "openings: [{type: door, wall: rear}, {" + opening + "}]\n";
        assertCodes(open, text);
        assertCodes(closed, text + "wallSheets: {leanToWalls: true, behindLeanTos: true}\n");
    }

    /** 4200 − 300 − 4000·tan 5° − 150/cos 5° is 3399.5 under the outer rafter, less a header of 100. */
    @Test
    void aLeanToIsLowerThanTheMainWall() {
        String door = SHED + LEAN_TO + "wallSheets: {leanToWalls: true}\n"
                + "openings: [{type: slidingDoor, wall: left, bay: 2, leanTo: left, height: %d}]\n";
        assertCodes(null, door.formatted(3299));
        assertCodes("opening-too-high", door.formatted(3300));
    }

    /** It starts at frame 2; an offset counts from the frame's line, where half a column of 100 and a jamb take 150. */
    @Test
    void anOffsetInALeanToThatStartsBetweenCountsFromTheFrameLine() {
        String door = SHED + "leanTos: [{side: right, width: 4000, drop: 300, fromBay: 2}]\n"
                + "wallSheets: {leanToWalls: true}\nbracing: {bays: none}\n"
                + "openings: [{type: door, wall: right, bay: 2, leanTo: right, offset: %d}]\n";
        assertCodes(null, door.formatted(150));
        assertCodes("opening-off-bay", door.formatted(149));
    }

    /** The roof: 4200 − 1500, and a purlin of 152 at 5 degrees, 152.6 plumb. */
    @Test
    void aWindowMayStandAboveTheRoofOfALeanTo() {
        String window = SHED + "leanTos: [{side: left, width: 2000, drop: 1500}]\n"
                + "openings: [{type: window, wall: left, bay: 2, height: 500, sill: %d}]\n";
        assertCodes(null, window.formatted(2853));
        assertCodes("opening-behind-lean-to", window.formatted(2852));
    }

    @Test
    void aClosedShedNeedsAWayIn() {
        assertCodes("(no-way-in)", SHED);
        assertCodes(null, SHED + LEAN_TO);
        assertCodes("(no-way-in)", SHED + LEAN_TO + "wallSheets: {behindLeanTos: true}\n");
    }

    @Test
    void aBareFrameHasNoUseForOpenings() {
        String bare = SHED.replace("full", "none");
        assertCodes(null, bare);
        assertCodes("(openings-unused)", bare + "openings: [{type: door, wall: front, width: 20000}]\n");
    }

    @Test
    void bracesKeepOutOfOpenings() {
        String doors = SHED + "openings: [{type: slidingDoor, wall: left, bay: 1, width: 5000}]\nbracing: {bays: %s}\n";
        assertCodes("(brace-at-opening)", doors.formatted("[1]"));
        assertCodes(null, doors.formatted("[2]"));
        assertCodes(null, doors.formatted("none"));
        Problem told = found(doors.formatted("[1]")).get(0);
        assertTrue(told.message().contains("left wall bay 2 is braced in place of bay 1"), told.message());
        assertEquals("bracing.bays", told.where().path());
    }

    /**
     * In the middle of an end wall of 12 m the two halves of a leaf 100 wider on either side just slide clear of an opening
     * of 5800: half of 6000 beside it on both sides.
     */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "wall: front, width: 5800 | 0",
                "wall: front, width: 5810 | 10",
                "wall: front, width: 7800 | 2000",
                "wall: front, width: 4000, offset: 1000 | 0",
                "wall: left, bay: 2, width: 5700 | 0",
            })
    void aWallTooShortForALeafIsTold(String door, int lacking) {
        List<Problem> told = all(SHED + "openings: [{type: slidingDoor, height: 2500, " + door + "}]\n").stream()
                .filter(p -> p.code().equals("sliding-wall-short"))
                .toList();
        assertEquals(lacking > 0 ? 1 : 0, told.size());
        if (lacking > 0) {
            assertTrue(told.get(0).message().contains(" " + lacking + " mm too short"), told.get(0)::message);
            assertEquals("openings[0]", told.get(0).where().path());
        }
    }

    /** Rows stand at 150 and then no more than 1500 apart: the track has a girt of its own, or a row, beside any head. */
    @ParameterizedTest
    @ValueSource(doubles = {2300, 2500, 2890, 2910, 3090, 3110})
    void aTrackHasAGirtBehindIt(double height) {
        assertEquals(
                0,
                tracks(SHED + "openings: [{type: slidingDoor, wall: left, bay: 2, width: 3000, height: " + height
                        + "}]\n"));
    }

    /** The next bay is left open, or a door in it is higher. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "width: 3000, height: 2500}, {type: open, wall: left, bay: 1",
                "width: 3000, height: 2500}, {type: rollerDoor, wall: left, bay: 1, width: 3000, height: 3000",
            })
    void aTrackThatNothingCanStandBehindIsTold(String door) {
        assertEquals(1, tracks(SHED + "openings: [{type: slidingDoor, wall: left, bay: 2, " + door + "}]\n"));
    }

    private static long tracks(String text) {
        return all(text).stream()
                .filter(p -> p.code().equals("sliding-track-unbacked"))
                .count();
    }

    @Test
    void bracesInOpenBaysAreTold() {
        String braced = SHED + LEAN_TO + "bracing: {bays: [2]}\n";
        Problem told = all(braced).stream()
                .filter(p -> p.code().equals("brace-in-open-bay"))
                .findFirst()
                .orElseThrow();
        assertTrue(
                told.message().endsWith("bay 2 of the left wall; bay 2 of the left wall of the lean-to"),
                told.message());
        assertEquals("bracing.bays", told.where().path());
        String closed = braced + "wallSheets: {leanToWalls: true, behindLeanTos: true}\n";
        assertTrue(all(closed).stream().noneMatch(p -> p.code().equals("brace-in-open-bay")));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "roofPitch: 5 |",
                "roofPitch: 4.9 | (pitch-under-sheet)",
                "roofPitch: 8; roofSheets: {profile: corrugate 0.40 NZ} |",
                "roofPitch: 7.9; roofSheets: {profile: corrugate 0.40 NZ} | (pitch-under-sheet)",
                "roofPitch: 3; roofSheets: {profile: trapezoidal 0.42} |",
                "roofPitch: 10; leanTos: [{side: left, width: 3000, pitch: 4.9}] | (pitch-under-sheet)",
                "roofPitch: 10; longestSheet: 6275 |",
                "roofPitch: 10; longestSheet: 6274 | (sheet-split)",
                "roofPitch: 10; liftingBeam: {fromFrame: 3, underside: 3000} |",
                "roofPitch: 10; liftingBeam: {fromFrame: 5, underside: 3000} | no-such-frame",
                "roofPitch: 10; liftingBeam: {fromFrame: 4, underside: 3000, run: along} | no-such-frame",
                "roofPitch: 10; liftingBeam: {fromFrame: 1, toFrame: 4, underside: 3000, run: along, offset: 173} |",
                "roofPitch: 10; liftingBeam: {fromFrame: 1, underside: 3000, run: along, offset: 172}"
                        + " | lifting-beam-outside",
                "roofPitch: 10; liftingBeam: {fromFrame: 2, underside: 3762} | lifting-beam-meets-steel",
                "roofPitch: 10; liftingBeam: {fromFrame: 2, underside: 3740} |",
                "roofPitch: 10; liftingBeam: {fromFrame: 2, underside: 3763} | lifting-beam-too-high",
                "roofPitch: 10; liftingBeam: {fromFrame: 2, underside: 2600} |",
                "roofPitch: 10; liftingBeam: {fromFrame: 2, underside: 2599} | (hook-low)",
            })
    void roofAndBeam(String more, String codes) {
        assertCodes(codes, SHED.replace("roofPitch: 10\n", "") + more.replace("; ", "\n") + "\n" + DOOR);
    }

    /**
     * The door's jambs stand from 5490 and to 6510, the other uprights of 100 at 2770 and 9230 at the front, at 4000 and
     * 8000 at the rear; the beam is 146 wide, its plate 170, the column 100.
     */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "fromFrame: 4, underside: 3000 | lifting-beam-past-wall | set fromFrame to 3",
                "fromFrame: 1, underside: 3000 | lifting-beam-past-wall | set fromFrame to 2",
                "fromFrame: 1, underside: 3000, section: SHS 50x50x3 | lifting-beam-meets-steel | set fromFrame to 2",
                "fromFrame: 2, underside: 3000, run: along, toFrame: 4, offset: 4000 | lifting-beam-meets-steel"
                        + " | set offset to 3851, or run it from frame 2 to frame 3",
                "fromFrame: 2, underside: 3000, run: along, toFrame: 3, offset: 4000 | |",
                "fromFrame: 2, underside: 3000, run: along, toFrame: 4, offset: 3876 | |",
                "fromFrame: 2, underside: 3000, run: along, toFrame: 4, offset: 3878 | lifting-beam-meets-steel"
                        + " | set offset to 3851, or run it from frame 2 to frame 3",
                "fromFrame: 1, underside: 2141, run: along, hookDrop: 100 | |",
                "fromFrame: 1, underside: 2139, run: along, hookDrop: 100 | lifting-beam-meets-steel"
                        + " | set offset to 5391, or run it from frame 2 to frame 3",
                "fromFrame: 1, underside: 3000, bracket: SHS 125x125x5, run: along | lifting-beam-past-wall"
                        + " | run it from frame 2 to frame 3",
            })
    void aBeamKeepsOutOfEndWalls(String beam, String code, String remedy) {
        List<Problem> told = found(SHED + DOOR + "liftingBeam: {" + beam + "}\n");
        assertEquals(
                code == null ? List.of() : List.of(code),
                told.stream().map(Problem::code).toList(),
                beam);
        if (code != null) {
            assertTrue(told.get(0).isError());
            assertEquals("liftingBeam", told.get(0).where().path());
            assertEquals(remedy, told.get(0).remedy());
        }
    }

    @Test
    void aBeamKeepsOutOfDoors() {
        String door = SHED + "openings: [{type: rollerDoor, wall: %s, width: 4000, height: 3000}]\n"
                + "liftingBeam: {fromFrame: 1, toFrame: 2, run: along, hookDrop: 300, underside: %d, offset: %d}\n";
        assertCodes("lifting-beam-in-opening lifting-beam-meets-steel", door.formatted("front", 2900, 5000));
        assertCodes("(lifting-beam-at-roll)", door.formatted("front", 3110, 5000));
        assertCodes(null, door.formatted("front", 3110, 3800));
        assertCodes("(lifting-beam-at-roll)", door.formatted("left, bay: 1", 2900, 250));
        assertCodes(null, door.formatted("left, bay: 1", 2900, 600));
    }

    @Test
    void pastAnOpenEndItIsAdvice() {
        String open = SHED + "openings: [{type: open, wall: front}]\nliftingBeam: {fromFrame: 1, underside: 3000}\n";
        assertCodes("(lifting-beam-past-wall)", open);
    }

    @Test
    void aBareFrameSaysThatItHasNoBeam() {
        assertCodes(
                "(lifting-beam-unused)",
                SHED.replace("full", "none") + "liftingBeam: {fromFrame: 9, underside: 3000}\n");
    }

    /** What is proposed in place of an offset is free of all steel. */
    @Test
    void theOffsetProposedIsClear() {
        String beam = SHED + DOOR + "mullions: {spacing: 2000}\n"
                + "liftingBeam: {fromFrame: 1, toFrame: 4, run: along, underside: 3000, offset: %s}\n";
        for (int offset = 400; offset < 11_600; offset += 1300) {
            for (Problem told : found(beam.formatted(offset))) {
                assertEquals("lifting-beam-meets-steel", told.code());
                String other = told.remedy().replaceAll("set offset to (\\d+), .*", "$1");
                assertCodes(null, beam.formatted(other));
            }
        }
    }

    /**
     * Worked by hand: past the string lines girts of 152 and sheets of 17 stand 169, and gutters of 125
     * before the sheets 294.
     */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "[[19705, 9831], [32295, 9831], [32295, 28169], [19705, 28169]]} |",
                "[[19705, 9831], [32292, 9831], [32292, 28169], [19705, 28169]]} | (eaves-over-boundary)",
                "[[19705, 9831], [32170, 9831], [32170, 28169], [19705, 28169]]} | (eaves-over-boundary)",
                "[[19705, 9831], [32167, 9831], [32167, 28169], [19705, 28169]]} | shed-outside-boundary",
                "[[19831, -2295], [38169, -2295], [38169, 10295], [19831, 10295]], turn: 90} |",
                "[[19831, -2295], [38169, -2295], [38169, 10295], [19831, 10295]], turn: 80} | shed-outside-boundary",
                "[[0, 0], [60000, 40000], [60000, 0], [0, 40000]]} | boundary-crosses",
                "[[0, 0], [60000, 0], [30000, 0]]} | boundary-crosses",
                "[[0, 0], [60, 0], [60, 40], [0, 40]]} | boundary-small",
                "[[0, 0], [60000, 0], [60000, 40000], [0, 40000]],"
                        + " neighbours: [[[32295, 10000], [40000, 10000], [40000, 20000]]]} |",
                "[[0, 0], [60000, 0], [60000, 40000], [0, 40000]],"
                        + " neighbours: [[[32250, 10000], [40000, 10000], [40000, 20000]]]} | shed-on-neighbour",
                "[[0, 0], [60000, 0], [60000, 40000], [0, 40000]],"
                        + " neighbours: [[[32250, 10000], [32250, 12000], [40000, 10000], [40000, 20000]]]}"
                        + " | boundary-crosses",
            })
    void theSite(String site, String codes) {
        assertCodes(codes, SHED + DOOR + "site: {corner: [20000, 10000], boundary: " + site + "\n");
    }

    /** Columns 6000 apart: 6000 of lean-to, 4000 wide, and of the main roof above it, 6000: over 60 m² each. */
    @Test
    void aPipeThatTakesTooMuchIsTold() {
        assertTrue(
                shortPipes("")
                        .get(0)
                        .matches(
                                "on gutter line A0 the downpipe (6000|12000) mm from frame 1 takes 6[0-9.]+ m² of roof;"
                                        + " a downpipe 100x75 takes about 45[.]0 m² at 150 mm/h .*"),
                () -> shortPipes("").get(0));
        assertEquals(List.of(), shortPipes("roofWater: {downpipe: downpipe 150 round}\n"));
    }

    /** 10000 mm² take 4/3 of 45 m², which is less than the worst pipe gets; 17671 take 106. */
    @Test
    void aPipeThatIsEnoughIsNamed() {
        String remedy = pipeRemedy("");
        assertTrue(remedy.startsWith("name downpipe 150 round or a larger one, give a pipe"), remedy);
    }

    /** At 500 mm/h the largest takes 32 m²: none is named that cannot be had. */
    @Test
    void noPipeIsNamedWhereNoneIsEnough() {
        for (String pipe : List.of("", ", downpipe: downpipe 150 round")) {
            String remedy = pipeRemedy("roofWater: {rainfall: 500" + pipe + "}\n");
            assertTrue(remedy.startsWith("no downpipe in the catalogue takes so much: give a pipe a post"), remedy);
        }
    }

    private static String pipeRemedy(String water) {
        return all(SHED + LEAN_TO + DOOR + water).stream()
                .filter(p -> p.code().equals("downpipe-short"))
                .map(Problem::remedy)
                .findFirst()
                .orElseThrow();
    }

    private static List<String> shortPipes(String water) {
        return all(SHED + LEAN_TO + DOOR + water).stream()
                .filter(p -> p.code().equals("downpipe-short"))
                .map(Problem::message)
                .toList();
    }

    @Test
    void aLeanToIsPartOfTheShedOnItsSite() {
        String site = "site: {corner: [20000, 10000], boundary: [[%d, 0], [60000, 0], [60000, 40000], [%d, 40000]]}\n";
        assertCodes(null, SHED + LEAN_TO + site.formatted(15_722, 15_722));
        assertCodes("(eaves-over-boundary)", SHED + LEAN_TO + site.formatted(15_725, 15_725));
        assertCodes("shed-outside-boundary", SHED + LEAN_TO + site.formatted(15_835, 15_835));
        Problem told = found(SHED + LEAN_TO + site.formatted(15_750, 15_750)).get(0);
        assertTrue(told.message().contains("27 mm over leg 4 of the boundary, 15723 east"), told.message());
    }

    @Test
    void placesNameTheOpeningOfTheList() {
        String openings = "openings:\n  - {type: door, wall: front}\n  - type: window\n    wall: left\n    bay: 2\n"
                + "    width: 9000\n";
        Problem told = found(SHED + openings).get(0);
        assertEquals("openings[1].width", told.where().path());
        assertEquals(12, told.where().line());
        assertTrue(told.remedy().contains("5700"), told.remedy());
    }
}
