package org.baywright.model.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Definitions;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Place;
import org.baywright.model.parts.Shed;
import org.baywright.model.problem.Problem;
import org.baywright.model.problem.Where;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Plates that no member meets are told, and others are not. */
class LooseCleatRuleTest {
    private static final String CODE = "plates-meet-nothing";

    private static Definition shed(String more) {
        return Definitions.of(
                "span: 9000\nbays: 2\nbaySpacing: 5000\neaveHeight: 3600\nroofPitch: 10\nenvelope: full\n" + more);
    }

    private static List<String> told(Definition definition) {
        return ShedRules.check(definition, Where::whole).stream()
                .filter(p -> p.code().equals(CODE))
                .map(Problem::message)
                .toList();
    }

    /** In the end wall of a lean-to that begins inside the building, between the ends of the main wall's Zs. */
    @ParameterizedTest
    @ValueSource(strings = {"Z200-19", "Z150-15", "Z100-12"})
    void aCleatInTheCornerBesideARowOfZsHasAnArm(String girt) {
        for (boolean behind : new boolean[] {true, false}) {
            assertEquals(
                    List.of(),
                    told(shed("girts: {section: " + girt + "}\nleanTos: [{side: right, width: 4000, fromBay: 2}]\n"
                            + "wallSheets: {leanToWalls: true, behindLeanTos: " + behind + "}\n")));
        }
    }

    /** Rows of the lean-to's end wall that would come just beside those of the main wall go on at their heights. */
    @ParameterizedTest
    @ValueSource(doubles = {3600, 3900, 4200, 4500})
    void rowsOfALeanToPassThoseOfTheMainWall(double eave) {
        for (String girt : List.of("C150-15", "Z150-15", "TH64-10", "RHS 100x50x3")) {
            String text = "span: 9000\nbays: 2\nbaySpacing: 5000\neaveHeight: " + eave + "\nroofPitch: 10\n"
                    + "envelope: full\ncolumn: SHS 150x150x6\ngirts: {section: " + girt + "}\n"
                    + "leanTos: [{side: right, width: 4100, fromBay: 2, pitch: 6, drop: 0}]\n"
                    + "wallSheets: {leanToWalls: true, behindLeanTos: true}\n";
            assertEquals(List.of(), told(Definitions.of(text)), girt);
        }
    }

    @Test
    void aShedWhoseCleatsAllMeetSomethingHasNoSuchAdvice() {
        assertEquals(List.of(), told(shed("")));
    }

    /** One plate of a kind that went astray, of whatever kind. */
    @ParameterizedTest
    @EnumSource(
            value = PartKind.class,
            names = {"PURLIN_CLEAT", "GIRT_CLEAT", "BRACE_CLEAT", "MULLION_CLEAT", "BASE_PLATE", "CAP_PLATE"})
    void aPlateMovedAwayIsTold(PartKind kind) {
        Shed shed = Shed.of(shed(""));
        assertEquals("", LooseCleatRule.told(shed));
        Part plate = shed.parts(kind).get(0);
        List<Part> parts = new ArrayList<>(shed.parts());
        parts.set(parts.indexOf(plate), firstMoved(plate));
        Shed moved = new Shed(shed.definition(), shed.setOut(), parts, shed.anchorHoles());
        assertEquals("1 of " + kind.label() + " " + plate.mark(), LooseCleatRule.told(moved));
    }

    private static Part firstMoved(Part plate) {
        Place place = plate.places().get(0);
        Placement at = place.placement();
        Placement away = new Placement(at.origin().plus(new Vec3(-5000, -5000, 0)), at.along(), at.depth(), at.width());
        List<Place> places = new ArrayList<>(plate.places());
        places.set(0, new Place(away, place.frame(), place.side()));
        return new Part(
                plate.mark(), plate.kind(), plate.material(), plate.solid(), plate.holes(), plate.punched(), places);
    }
}
