package org.baywright.model.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Definitions;
import org.baywright.model.definition.Seeds;
import org.baywright.model.geometry.Vec3;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The jambs of side walls, which stand under no rafter, are bolted to the purlin over them. */
class JambHeadsTest {
    private static Shed shed(String more) {
        return Shed.of(Definitions.of("span: 9000\nbays: 3\nbaySpacing: 5500\neaveHeight: 4200\nroofPitch: 10\n"
                + "envelope: full\n" + more.replace("; ", "\n") + "\n"));
    }

    private static final String DOORS =
            "openings: [{wall: left, bay: 2, type: rollerDoor, width: 3000, height: 3000}, {wall: right, bay: 1, type: door, width: 900, height: 2100}]; ";

    /** Rows past the rafters' ends and on them, with a back, lapped and hollow; jambs of every form. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "purlins: {section: Z200-19}",
                "purlins: {section: C150-15}",
                "purlins: {section: RHS 100x50x3}",
                "girts: {section: C100-12, place: flush}",
                "girts: {section: C100-12, place: flush}; purlins: {section: C150-15}",
                "mullions: {section: C150-19}",
                "mullions: {section: 150UB18.0}",
                "roofShape: skillion",
                "kneeJoint: butted",
            })
    void everyJambOfASideWallIsHeld(String more) {
        Shed shed = shed(DOORS + more);
        Assemblies assemblies = Assemblies.of(shed);
        assertEquals(4, shed.count(PartKind.JAMB));
        assertEquals(8, shed.count(PartKind.JAMB_CLEAT), "a leg and a cleat each");
        for (Part jamb : shed.parts(PartKind.JAMB)) {
            for (Assembly made : assemblies.of(jamb)) {
                List<Boolean> seats = made.welded().stream()
                        .filter(w -> w.plate().kind() == PartKind.JAMB_CLEAT)
                        .map(w -> w.plate().isSeat())
                        .sorted()
                        .toList();
                assertEquals(List.of(false, true), seats, made.mark());
            }
        }
    }

    /** Nothing is made up where the eave purlin is out of reach. */
    @Test
    void aPurlinFarOutHoldsNoJamb() {
        assertEquals(
                0,
                shed(DOORS + "rafterOverhang: 600; girts: {section: C100-12, place: flush}; "
                                + "purlins: {section: C200-19, spacing: 1600, endRule: asGiven}")
                        .count(PartKind.JAMB_CLEAT));
    }

    @Test
    void jambsUnderARafterHaveNone() {
        Shed shed = shed("openings: [{wall: front, type: door, width: 900, height: 2100}]");
        assertEquals(2, shed.count(PartKind.JAMB));
        assertEquals(0, shed.count(PartKind.JAMB_CLEAT));
    }

    @Provide
    Arbitrary<Definition> sheds() {
        return WallSheds.any();
    }

    /** Each of a cleat's holes has a purlin behind it that is punched there. */
    @Property(tries = 10, seed = Seeds.SHEDS)
    void theirPurlinsArePunchedForThem(@ForAll("sheds") Definition definition) {
        Shed shed = Shed.of(definition);
        List<Standing> purlins = shed.parts(PartKind.PURLIN).stream()
                .flatMap(p -> p.places().stream().map(place -> Standing.of(p, place)))
                .toList();
        for (Part cleat : shed.parts(PartKind.JAMB_CLEAT)) {
            for (Place place : cleat.places()) {
                Standing standing = Standing.of(cleat, place);
                for (Hole hole : cleat.holes()) {
                    Vec3 at = place.placement()
                            .toWorld(0, hole.at().x(), hole.at().y());
                    assertTrue(purlins.stream().anyMatch(p -> isPunched(p, standing, at)), cleat.mark() + " at " + at);
                }
            }
        }
    }

    private static boolean isPunched(Standing purlin, Standing cleat, Vec3 at) {
        Vec3 local = purlin.place().placement().toLocal(at);
        boolean within = Math.abs(local.y()) < purlin.part().solid().profile().depth() / 2;
        return within
                && cleat.gap(purlin) <= JointHoles.THROUGH
                && purlin.part().punched().stream().anyMatch(p -> Math.abs(p - local.x()) < 0.1);
    }
}
