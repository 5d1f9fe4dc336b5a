package org.baywright.model.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.baywright.model.definition.Definitions;
import org.junit.jupiter.api.Test;

/**
 * Which face has the long point. Source: the trade's rule that a gable's long point is inside and that of a skillion's
 * high side outside; having it reversed is a usual error.
 */
class LongPointTest {
    private static final String FIVE = "span: 9000\nbays: 1\nbaySpacing: 6000\neaveHeight: 3000\nroofPitch: 8\n";

    private static List<String> columns(String more) {
        return Shed.of(Definitions.of(FIVE + more)).parts(PartKind.COLUMN).stream()
                .map(Part::longPoint)
                .toList();
    }

    @Test
    void gableColumnsAreLongInside() {
        assertEquals(List.of("inside"), columns(""));
        assertEquals(List.of("inside"), columns("kneeJoint: butted\n"));
    }

    @Test
    void theHighSideOfASkillionIsLongOutside() {
        assertEquals(List.of("inside", "outside"), columns("roofShape: skillion\n"));
    }

    @Test
    void aLeanToColumnIsLongTowardsTheBuilding() {
        Shed shed = Shed.of(Definitions.of(FIVE + "leanTos: [{side: right, width: 3000}]\n"));
        assertEquals("inside", shed.parts(PartKind.LEAN_TO_COLUMN).get(0).longPoint());
    }

    @Test
    void aPlumbCutRafterLeadsAtItsTop() {
        Shed shed = Shed.of(Definitions.of(FIVE));
        assertEquals("top at upper end", shed.parts(PartKind.RAFTER).get(0).longPoint());
    }

    @Test
    void unevenRaftersShareOneApexPlate() {
        Shed shed = Shed.of(Definitions.of(
                FIVE + "heavier: [{frames: all, side: left, rafter: RHS 250x150x6, column: SHS 150x150x6}]\n"));
        assertEquals(1, shed.parts(PartKind.APEX_PLATE).size());
        assertEquals(4, shed.count(PartKind.APEX_PLATE));
    }
}
