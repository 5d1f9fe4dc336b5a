package org.baywright.render.dimension;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.baywright.model.geometry.Vec2;
import org.locationtech.jts.geom.Geometry;

class TurnedBoxTest {
    private static TurnedBox box(double x, double y, double width, double turnDeg) {
        Vec2 along = new Vec2(Math.cos(Math.toRadians(turnDeg)), Math.sin(Math.toRadians(turnDeg)));
        Vec2 a = new Vec2(x, y);
        Vec2 b = a.plus(along.times(width));
        Vec2 up = along.left().times(4);
        return new TurnedBox(List.of(a, b, b.plus(up), a.plus(up)));
    }

    /** Against polygon overlay, an independent way to the same answer. */
    @Property(tries = 500)
    void overlapsWhenThePolygonsShareArea(
            @ForAll @DoubleRange(min = -20, max = 20) double x,
            @ForAll @DoubleRange(min = -20, max = 20) double y,
            @ForAll @DoubleRange(min = 1, max = 30) double width,
            @ForAll @DoubleRange(min = -90, max = 90) double turn) {
        TurnedBox one = box(0, 0, 15, 0);
        TurnedBox other = box(x, y, width, turn);
        Geometry shared = Overlaps.polygon(one.corners()).intersection(Overlaps.polygon(other.corners()));
        boolean marginal = shared.getArea() > 0 && shared.getArea() < 1e-3;
        if (!marginal) {
            assertEquals(shared.getArea() > 0, one.overlaps(other));
            assertEquals(shared.getArea() > 0, other.overlaps(one));
        }
    }
}
