package org.baywright.model.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

/** Placements, planes and turned profiles. */
class PlacementTest {
    private static final double HAIR = 1e-6;

    @Property(tries = 100)
    void thereAndBack(@ForAll("placements") Placement place, @ForAll("positions") Vec3 position) {
        assertTrue(place.toLocal(place.toWorld(position)).distance(position) < HAIR);
    }

    @Property(tries = 100)
    void distancesAreKept(
            @ForAll("placements") Placement place, @ForAll("positions") Vec3 a, @ForAll("positions") Vec3 b) {
        assertEquals(a.distance(b), place.toWorld(a).distance(place.toWorld(b)), HAIR);
        assertTrue(place.directionToWorld(b.minus(a)).distance(place.toWorld(b).minus(place.toWorld(a))) < HAIR);
    }

    @Property(tries = 100)
    void aPlaneMovesWithItsPiece(
            @ForAll("placements") Placement place, @ForAll("planes") Plane plane, @ForAll("positions") Vec3 position) {
        assertEquals(plane.distance(position), place.toWorld(plane).distance(place.toWorld(position)), HAIR);
    }

    @Property(tries = 100)
    void oneAfterAnother(
            @ForAll("placements") Placement outer, @ForAll("placements") Placement inner, @ForAll("positions") Vec3 p) {
        assertTrue(outer.then(inner).toWorld(p).distance(outer.toWorld(inner.toWorld(p))) < HAIR);
    }

    @Property(tries = 100)
    void aPlaneIsMetWhereItsReachSays(@ForAll("planes") Plane plane, @ForAll("positions") Vec3 from) {
        Vec3 direction = plane.normal().plus(new Vec3(0.1, 0.2, -0.1));
        double reach = plane.reach(from, direction);
        assertEquals(0, plane.distance(from.plus(direction.times(reach))), HAIR);
        assertEquals(-plane.distance(from), plane.flipped().distance(from), HAIR);
        assertEquals(plane.distance(from) - 12, plane.shifted(12).distance(from), HAIR);
    }

    @Test
    void axesThatAreMirroredSkewOrNotUnitAreRefused() {
        Vec3 origin = Vec3.ZERO;
        Vec3 x = Vec3.ACROSS;
        Vec3 y = Vec3.ALONG;
        Vec3 z = Vec3.UP;
        assertThrows(IllegalArgumentException.class, () -> new Placement(origin, x, y, z.negated()));
        assertThrows(IllegalArgumentException.class, () -> new Placement(origin, x.times(2), y, z.times(2)));
        assertThrows(IllegalArgumentException.class, () -> new Placement(origin, x.times(2), y.times(0.5), z));
        assertThrows(IllegalArgumentException.class, () -> Placement.of(origin, x, x.plus(y)));
        assertThrows(IllegalArgumentException.class, () -> Placement.of(origin, x, Vec3.ZERO));
    }

    @Test
    void aPlaneNeedsAUnitNormalAndAPlace() {
        assertThrows(IllegalArgumentException.class, () -> new Plane(new Vec3(0, 0, 2), 0));
        assertThrows(IllegalArgumentException.class, () -> new Plane(Vec3.UP, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> Plane.through(Vec3.UP, Vec3.ZERO));
    }

    @Test
    void aTurnedProfileLiesOnItsSide() {
        Profile upright = Profile.rectangle(150, 100);
        Profile turned = upright.turned();
        assertEquals(100, turned.depth(), 1e-12);
        assertEquals(150, turned.width(), 1e-12);
        assertEquals(upright.area(), turned.area());
        assertEquals(upright.inertiaDepth(), turned.inertiaWidth());
        assertEquals(upright.inertiaWidth(), turned.inertiaDepth());
        assertEquals(150 * 100, signedArea(turned), 1e-9, "still anticlockwise");
    }

    private static double signedArea(Profile profile) {
        double twice = 0;
        for (int i = 0; i < profile.outline().size(); i++) {
            twice += profile.outline()
                    .get(i)
                    .cross(profile.outline().get((i + 1) % profile.outline().size()));
        }
        return twice / 2;
    }

    @Provide
    Arbitrary<Vec3> positions() {
        Arbitrary<Double> mm = Arbitraries.doubles().between(-50_000, 50_000);
        return Combinators.combine(mm, mm, mm).as(Vec3::new);
    }

    @Provide
    Arbitrary<Vec3> directions() {
        Arbitrary<Double> part = Arbitraries.doubles().between(-1, 1);
        return Combinators.combine(part, part, part).as(Vec3::new).filter(v -> v.length() > 0.1);
    }

    @Provide
    Arbitrary<Plane> planes() {
        return Combinators.combine(positions(), directions()).as(Plane::through);
    }

    @Provide
    Arbitrary<Placement> placements() {
        return Combinators.combine(positions(), directions(), directions())
                .filter((origin, along, other) ->
                        along.unit().cross(other.unit()).length() > 0.1)
                .as((origin, along, other) -> Placement.of(origin, along, along.cross(other)));
    }
}
