package org.baywright.model.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.baywright.model.definition.Definitions;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Rafter lengths against the rafter table printed on a steel framing square (widely printed): length of common rafter
 * for each 12 of run, by rise.
 */
class SteelSquareTest {
    @ParameterizedTest
    @CsvSource({"4, 12.65", "6, 13.42", "8, 14.42", "10, 15.62", "12, 16.97"})
    void lengthOfCommonRafterPerTwelveOfRun(double rise, double length) {
        double pitch = Math.toDegrees(Math.atan2(rise, 12));
        Shed shed = Shed.of(Definitions.of("""
                span: 12000
                bays: 1
                baySpacing: 6000
                eaveHeight: 6000
                roofPitch: %s
                apexPlate: {thickness: 0}
                """.formatted(pitch)));
        double run = 6000 - 1.5;
        double edge = shed.parts(PartKind.RAFTER).get(0).longEdge();
        assertEquals(length, edge * 12 / run, 0.006);
    }
}
