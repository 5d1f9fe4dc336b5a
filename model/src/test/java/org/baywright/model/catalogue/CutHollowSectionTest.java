package org.baywright.model.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.baywright.model.geometry.Plane;
import org.baywright.model.geometry.Solid;
import org.baywright.model.geometry.Vec3;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class CutHollowSectionTest {
    @Test
    @DisplayName(
            "100x50x4 (ro 10, ri 6), 20° at one end, mean length 1000, as an open-source solid-geometry kernel has it")
    void cutAtTwentyDegrees() {
        Section section = new HollowSection("100x50x4", 100, 50, 4, 10, 6, "any", "the check");
        double slope = Math.tan(Math.toRadians(20));
        Solid piece = new Solid(
                section.profile(),
                new Plane(new Vec3(-1, 0, 0), 0),
                Plane.through(new Vec3(1000, 0, 0), new Vec3(1, -slope, 0)));
        assertEquals(1_081_061.93, piece.volume(), 0.01);
        assertEquals(1018.1985, piece.longEdge(), 5e-5);
        assertEquals(1018.1985, piece.stockLength(), 5e-5);
        assertEquals(20, piece.endAngleDeg(), 1e-9);
    }
}
