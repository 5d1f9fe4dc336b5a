package org.baywright.model.setout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Definitions;
import org.baywright.model.geometry.Vec2;
import org.junit.jupiter.api.Test;

/** A slab with a lean-to along the first two of three bays, measured by hand. */
class SlabEdgeTest {
    private static final Definition SHED = Definitions.of("span: 12000\nbays: 3\nbaySpacing: 6000\neaveHeight: 4200\n"
            + "roofPitch: 10\nleanTos: [{side: left, width: 4000, toBay: 2}]\n");
    private static final SlabEdge EDGE = SlabEdge.of(SHED, SetOut.of(SHED));

    private static double distance(double x, double y) {
        return EDGE.distance(new Vec2(x, y));
    }

    @Test
    void distances() {
        assertEquals(150, distance(6000, 0), 1e-9);
        assertEquals(115, distance(6000, -35), 1e-9);
        assertEquals(-1, distance(6000, -151), 1e-9);
        assertEquals(150, distance(-4000, 6000), 1e-9);
        // The lean-to ends at frame 3: its column and rafter are 100 wide, so the slab ends 50 + 150 past the line.
        assertEquals(200, distance(-2000, 12_000), 1e-9);
        // The corner that reaches back in lies at (-150, 12200).
        assertEquals(Math.hypot(30, 40), distance(-150 + 30, 12_200 - 40), 1e-9);
        assertEquals(-20, distance(-1000, 12_220), 1e-9);
    }

    @Test
    void eightCorners() {
        assertEquals(9, EDGE.rings().get(0).size());
    }
}
