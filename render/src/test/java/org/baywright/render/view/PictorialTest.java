package org.baywright.render.view;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.baywright.model.definition.Side;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The angles and ratios that the standard gives, the dimetric ones before it rounds them to 7 and 42 degrees. Seen from
 * the left, across runs away to the right and along runs away to the left.
 */
class PictorialTest {
    @ParameterizedTest
    @CsvSource({
        "isometric, LEFT, across, 30, 0.816497",
        "isometric, LEFT, along, 150, 0.816497",
        "isometric, RIGHT, across, -30, 0.816497",
        "isometric, RIGHT, along, 30, 0.816497",
        "isometric, RIGHT, up, 90, 0.816497",
        "dimetric, LEFT, across, 7.1808, 0.942809",
        "dimetric, LEFT, along, 138.5904, 0.471405",
        "dimetric, RIGHT, across, -7.1808, 0.942809",
        "dimetric, RIGHT, along, 41.4096, 0.471405",
        "dimetric, LEFT, up, 90, 0.942809"
    })
    void axes(String kind, Side side, String axis, double angleDeg, double ratio) {
        Projection view = kind.equals("isometric") ? Pictorial.isometric(side) : Pictorial.dimetric(side);
        Vec2 seen = view.flat(
                switch (axis) {
                    case "across" -> Vec3.ACROSS;
                    case "along" -> Vec3.ALONG;
                    default -> Vec3.UP;
                });
        assertEquals(angleDeg, Math.toDegrees(Math.atan2(seen.y(), seen.x())), 1e-4);
        assertEquals(ratio, seen.length(), 1e-6);
    }
}
