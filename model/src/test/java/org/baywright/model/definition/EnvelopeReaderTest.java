package org.baywright.model.definition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.baywright.model.catalogue.Catalogue;
import org.baywright.model.catalogue.ColdFormedSection;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What goes on the frame and what it stands on: usual values, ranges, and what cannot be read. */
class EnvelopeReaderTest {
    private static final String FIVE = "span: 12000\nbays: 3\nbaySpacing: 6000\neaveHeight: 4200\nroofPitch: 10\n";

    private static List<String> codes(String more, String... overrides) {
        return DefinitionReader.read("shed.yaml", FIVE + more, List.of(overrides), Catalogue.shipped())
                .problems()
                .stream()
                .map(Problem::code)
                .toList();
    }

    private static Envelope envelope(String more) {
        return Definitions.of(FIVE + more).envelope();
    }

    private static String name(Member member) {
        return member.section().designation();
    }

    @Test
    void fiveNumbersHaveTheUsualEnvelope() {
        Envelope e = envelope("");
        Purlins p = e.purlins();
        assertEquals("Z150-15", name(p.member()));
        assertEquals(new Purlins(p.member(), 1200, 900, 150, 75, 0.15, OptionalInt.empty()), p);
        Girts g = e.walls().girts();
        assertEquals("C150-15", name(g.member()));
        assertEquals(new Girts(g.member(), 1500, 150, false), g);
        assertEquals("SHS 100x100x4", name(e.walls().mullions().member()));
        assertEquals("ROD 16", e.bracing().section().designation());
        assertEquals(List.of(1), e.bracing().bays());
        assertEquals("corrugated 0.42", e.sheeting().roof().profile().name());
        assertEquals(12_000, e.sheeting().longest());
        assertEquals(
                new RoofWater(
                        150,
                        new RoofWater.Gutter("box gutter 125x100", 100, 125, 11_000),
                        500,
                        new RoofWater.Downpipe("downpipe 100x75", 7500)),
                e.roofWater());
        assertTrue(e.openings().isEmpty() && e.liftingBeam().isEmpty());
        assertEquals(
                new Ground(
                        new Slab(Floor.SLAB, 125, 150, 600, 300, 300, 300, 6000, Optional.empty()), Optional.empty()),
                Definitions.of(FIVE).ground());
    }

    @ParameterizedTest
    @CsvSource({
        "4500, Z150-15, C100-12",
        "4501, Z150-15, C150-15",
        "6500, Z150-15, C150-15",
        "6501, Z200-19, C200-19",
        "8000, Z200-19, C200-19",
        "8001, Z250-24, C250-24"
    })
    void rowsFollowTheLongestBay(String bay, String purlin, String girt) {
        String text = FIVE.replace("baySpacing: 6000", "baySpacing: [4000, " + bay + ", 4000]");
        Envelope e = Definitions.of(text).envelope();
        assertEquals(purlin, name(e.purlins().member()));
        assertEquals(girt, name(e.walls().girts().member()));
    }

    @ParameterizedTest
    @CsvSource({
        "purlins.spacing, 199, 200, 3000, 3001",
        "purlins.fromRidge, 19, 20, 1000, 1001",
        "purlins.fromEave, -1, 0, 500, 501",
        "purlins.lap, -1, 0, 50, 51",
        "purlins.bridging, -1, 0, 5, 6",
        "girts.spacing, 199, 200, 3000, 3001",
        "girts.fromFloor, -1, 0, 1000, 1001",
        "mullions.spacing, 499, 500, 10000, 10001",
        "mullions.slipGap, -1, 0, 100, 101",
        "bracing.flyBraceEvery, -1, 0, 20, 21",
        "longestSheet, 999, 1000, 30000, 30001",
        "roofSheets.intoGutter, -1, 0, 200, 201",
        "roofSheets.ridgeGap, -1, 0, 200, 201",
        "roofSheets.translucentEvery, -1, 0, 100, 101",
        "wallSheets.belowFloor, -1, 0, 300, 301",
        "roofWater.rainfall, 9, 10, 500, 501",
        "roofWater.fall, 49, 50, 2000, 2001",
        "roofWater.downpipeArea, 499, 500, 500000, 500001",
        "slab.thickness, 49, 50, 1000, 1001",
        "slab.beyond, -1, 0, 5000, 5001",
        "slab.padSide, -1, 0, 5000, 5001",
        "slab.padDepth, -1, 0, 3000, 3001"
    })
    void rangesEndWhereTheySay(String key, String below, String low, String high, String above) {
        assertEquals(List.of("out-of-range"), codes("", key + "=" + below));
        assertEquals(List.of(), codes("", key + "=" + low));
        assertEquals(List.of(), codes("", key + "=" + high));
        assertEquals(List.of("out-of-range"), codes("", key + "=" + above));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "purlins: {section: ROD 16} | section-kind",
                "purlins: {section: RHS 100x50x3} |",
                "girts: {section: 200UB25.4} | section-kind",
                "mullions: {section: Z150-15} | section-kind",
                "mullions: {section: C150-15} |",
                "bracing: {section: SHS 100x100x4} | section-kind",
                "bracing: {flyBraces: ROD 16} | section-kind",
                "liftingBeam: {fromFrame: 1, underside: 3000, section: Z150-15} | section-kind",
                "purlins: {section: Z155-15} | unknown-section",
                "purlins: {endSpacing: 1200} |",
                "purlins: {endSpacing: 1201} | end-spacing",
                "purlins: {endRule: twoThirds, endSpacing: 800} |",
                "purlins: {endRule: twoThirds, endSpacing: 801} | end-spacing",
                "purlins: {endRule: half} | not-a-choice",
                "bracing: {bays: [0]} | no-such-bay",
                "bracing: {bays: [3]} |",
                "bracing: {bays: [4]} | no-such-bay",
                "bracing: {bays: all} | no-such-bay",
                "roofSheets: {profile: corugated 0.42} | unknown-sheet",
                "roofSheets: {blanket: maybe} | not-a-choice",
                "roofWater: {gutter: square gutter} | unknown-gutter",
                "roofWater: {gutter: square gutter, gutterDepth: 100, gutterWidth: 100} |",
                "roofWater: {gutterDepth: 100, gutterWidth: 100, gutterArea: 10000} |",
                "roofWater: {gutterDepth: 100, gutterWidth: 100, gutterArea: 10001} | gutter-area",
                "roofWater: {downpipe: hose} | unknown-downpipe",
                "roofWater: {downpipe: hose, downpipeArea: 700} |",
                "openings: [{type: hatch, wall: front}] | not-a-choice",
                "openings: [{type: roller_door, wall: front}] | not-a-choice",
                "openings: [{wall: front}] | missing-key",
                "openings: [{type: door}] | missing-key",
                "openings: {type: door, wall: front} | wrong-type",
                "openings: [{type: open, wall: front, width: 2000}] | opening-size",
                "openings: [{type: open, wall: front, width: 2000, height: 2000}] |",
                "liftingBeam: {fromFrame: 2} | missing-key",
                "liftingBeam: {fromFrame: 2, underside: 3000, run: along, toFrame: 3} |",
                "liftingBeam: {fromFrame: 2, underside: 3000, run: along, toFrame: 2} | frame-order",
                "site: {boundary: [[0, 0], [9, 0]], corner: [0, 0]} | too-few-corners",
                "site: {boundary: [[0, 0], [9, 0], [9]], corner: [0, 0]} | not-a-point",
                "site: {boundary: [[0, 0], [9, 0], [9, x]], corner: [0, 0]} | not-a-number",
                "site: {boundary: 5, corner: [0, 0]} | wrong-type",
                "site: {corner: [0, 0]} | missing-key",
            })
    void whatCannotBeReadIsToldOnce(String more, String code) {
        assertEquals(code == null ? List.of() : List.of(code), codes(more));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "roofSheets: {profile: corugated 0.42} | did you mean corrugated 0.42",
                "roofWater: {gutter: quad guter 115} | did you mean quad gutter 115",
                "purlins: {section: Z150} | did you mean Z150-",
                "purlins: {lap: 15%} | write 15",
                "openings: [{type: rollerdor, wall: front}] | did you mean rollerDoor",
                "mullion: {spacing: 3000} | did you mean mullions",
            })
    void theNearestIsNamed(String more, String remedy) {
        List<Problem> told = DefinitionReader.read("shed.yaml", FIVE + more, List.of(), Catalogue.shipped())
                .problems();
        assertEquals(1, told.size());
        assertTrue(told.get(0).remedy().startsWith(remedy), told.get(0).remedy());
    }

    @Test
    void endSpacesAreNeverWiderThanTheOthers() {
        assertEquals(800, envelope("purlins: {endRule: twoThirds}").purlins().endSpacing());
        assertEquals(
                900,
                envelope("purlins: {endRule: twoThirds, spacing: 1700}")
                        .purlins()
                        .endSpacing());
        assertEquals(800, envelope("purlins: {spacing: 800}").purlins().endSpacing());
    }

    @Test
    void openingsHaveUsualSizes() {
        List<Opening> openings = envelope("""
                openings:
                  - {type: door, wall: left, bay: 2}
                  - {type: window, wall: rear, offset: 700}
                  - {type: rollerDoor, wall: right, leanTo: right, bay: 1, width: 3000}
                  - {type: OPEN, wall: front}
                """).openings();
        assertEquals(
                new Opening(
                        Opening.Type.DOOR,
                        Wall.LEFT,
                        Optional.empty(),
                        OptionalInt.of(2),
                        Optional.of(new Opening.Size(820, 2040, 0)),
                        OptionalDouble.empty()),
                openings.get(0));
        assertEquals(
                Optional.of(new Opening.Size(1500, 1200, 900)), openings.get(1).size());
        assertEquals(700, openings.get(1).offset().orElseThrow());
        assertEquals(Optional.of(Side.RIGHT), openings.get(2).leanTo());
        assertEquals(
                Optional.of(new Opening.Size(3000, 3300, 0)), openings.get(2).size());
        assertEquals(Optional.empty(), openings.get(3).size());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1 | 6000 | 1",
                "5 | 6000 | 1",
                "6 | 6000 | 1, 6",
                "5 | 3000 | 1",
                "6 | 3000 | 1, 6",
                "12 | 6000 | 1, 6, 11",
                "4 | 7500 | 1",
                "5 | 7500 | 1, 5",
                "5 | 8000 | 1, 4",
            })
    void anEndBayAndEveryFifthAreBraced(String bays, String spacing, String braced) {
        String text = FIVE.replace("bays: 3", "bays: " + bays).replace("baySpacing: 6000", "baySpacing: " + spacing);
        assertEquals(
                "[" + braced + "]",
                Definitions.of(text).envelope().bracing().bays().toString());
    }

    @Test
    void bracesMakeWayForOpeningsUnlessNamed() {
        String door = "openings: [{type: door, wall: left, bay: 1}]\n";
        assertEquals(List.of(2), envelope(door).bracing().bays());
        assertEquals(
                List.of(1), envelope(door + "bracing: {bays: [1]}").bracing().bays());
        assertEquals(
                List.of(), envelope(door + "bracing: {bays: none}").bracing().bays());
        assertEquals(
                List.of(1),
                envelope("openings: [{type: door, wall: front}]").bracing().bays());
    }

    @Test
    void onlyBeamsHaveFlyBracesUnlessAsked() {
        assertEquals(0, envelope("").bracing().flyBraceEvery());
        assertEquals(2, envelope("rafter: 200UB25.4").bracing().flyBraceEvery());
        assertEquals(3, envelope("bracing: {flyBraceEvery: 3}").bracing().flyBraceEvery());
    }

    @Test
    void everythingElseIsReadAsWritten() {
        Envelope e = envelope("""
                envelope: full
                girts: {place: flush}
                mullions: {section: RHS 125x75x4, turned: true}
                roofSheets: {profile: Trapezoidal 0.48, colour: red, translucentEvery: 5, blanket: yes}
                wallSheets: {rake: banded, leanToWalls: true, behindLeanTos: true}
                roofWater: {gutter: quad gutter 115, downpipe: downpipe 90 round}
                liftingBeam: {section: 310UB40.4, run: along, fromFrame: 2, underside: 3400, hookDrop: 700}
                """);
        assertTrue(e.isFull() && e.walls().girts().flush());
        assertEquals(75, e.walls().mullions().member().depth());
        assertEquals("trapezoidal 0.48", e.sheeting().roof().profile().name());
        assertEquals("red", e.sheeting().roof().colour());
        assertEquals(5, e.sheeting().roof().translucentEvery());
        assertTrue(e.sheeting().roof().blanket() && e.sheeting().walls().banded());
        assertTrue(e.sheeting().leanToWalls() && e.sheeting().behindLeanTos());
        assertEquals(5300, e.roofWater().gutter().areaMm2());
        assertEquals("downpipe 90 round", e.roofWater().downpipe().name());
        LiftingBeam beam = e.liftingBeam().orElseThrow();
        assertEquals(new LiftingBeam(beam.member(), beam.bracket(), true, 2, 3, 6000, 3400, 700), beam);
        assertTrue(envelope("").isFull());
        assertFalse(envelope("envelope: none\n").isFull());
    }

    @Test
    void purlinsMayBeOfYourOwnSection() {
        String own = "sections: [{name: Zed, shape: z, depth: 180, width: 70, thickness: 1.6, lip: 18}]\n"
                + "purlins: {section: zed}\n";
        Member zed = envelope(own).purlins().member();
        assertEquals(
                new ColdFormedSection(
                        "Zed", ColdFormedSection.Form.Z, 180, 70, 18, 1.6, "as engineer", "given in the definition"),
                zed.section());
        assertEquals(List.of("missing-key"), codes(own.replace(", lip: 18", "")));
        assertEquals(List.of("bad-section"), codes(own.replace("lip: 18", "lip: 90")));
        assertEquals(List.of("shape-key"), codes(own.replace("lip: 18", "lip: 18, rootRadius: 3")));
        assertEquals(List.of(), codes(own.replace("shape: z", "shape: topHat")));
    }

    @Test
    void aSiteIsItsCorners() {
        Site site = Definitions.of(FIVE + "site: {boundary: [[0, 0], [60000, -500], [60000, 40000]],"
                        + " corner: [1e3, 2000], turn: 15, neighbours: [[[0, 0], [1, 0], [1, 1]]]}")
                .ground()
                .site()
                .orElseThrow();
        assertEquals(new Vec2(60_000, -500), site.boundary().get(1));
        assertEquals(new Vec2(1000, 2000), site.corner());
        assertEquals(15, site.turnDeg());
        assertEquals(3, site.neighbours().get(0).size());
    }
}
