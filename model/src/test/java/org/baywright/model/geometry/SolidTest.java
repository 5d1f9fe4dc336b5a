package org.baywright.model.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Lengths, volume and balance of swept solids. */
class SolidTest {
    @Property(tries = 100)
    @Label("volume = area × mean length, and long edge ≥ axis ≥ short edge, tip to tip longest of all")
    void lengths(@ForAll("solids") Solid solid) {
        Profile profile = solid.profile();
        double mean = profile.outline().stream()
                .mapToDouble(solid::lengthAt)
                .average()
                .orElseThrow();
        assertEquals(profile.area() * mean, solid.volume(), 1e-9 * solid.volume());
        assertTrue(solid.longEdge() >= solid.axisLength() - 1e-9 && solid.axisLength() >= solid.shortEdge() - 1e-9);
        assertTrue(solid.stockLength() >= solid.longEdge() - 1e-9);
    }

    @Property(tries = 40)
    @Label("volume and centre of gravity agree with the sum over thin fibres")
    void balance(@ForAll("solids") Solid solid) {
        Fibres fibres = Fibres.of(solid, 120);
        assertEquals(fibres.volume, solid.volume(), 1e-9 * fibres.volume);
        // Midpoint fibres leave out 1/n² of a second moment: 1/14400 of what the slope of a cut adds.
        assertTrue(solid.centreOfGravity().distance(fibres.centre) < 0.01, () -> fibres.centre + " is summed");
    }

    @Property(tries = 40)
    @Label("the same piece turned end for end has the same lengths and mirrored balance")
    void endForEnd(@ForAll("solids") Solid solid) {
        Solid turned = new Solid(solid.profile(), endForEnd(solid.end()), endForEnd(solid.start()));
        assertEquals(solid.stockLength(), turned.stockLength(), 1e-9);
        assertEquals(solid.longEdge(), turned.longEdge(), 1e-9);
        Vec3 g = solid.centreOfGravity();
        assertTrue(turned.centreOfGravity().distance(new Vec3(-g.x(), g.y(), -g.z())) < 1e-9);
        assertEquals(solid.startAngleDeg(), turned.endAngleDeg(), 1e-5);
    }

    @Test
    @DisplayName("a plumb-plumb rafter on the slope has edges E and E + d·tan tip to tip (worked by hand)")
    void plumbRafter() {
        double slope = Math.tan(Math.toRadians(10));
        Solid rafter = cut(Profile.rectangle(200, 100), 0, slope, 6080.4, slope);
        assertEquals(6080.4, rafter.longEdge(), 1e-9);
        assertEquals(6080.4, rafter.shortEdge(), 1e-9);
        assertEquals(6080.4 + 200 * slope, rafter.stockLength(), 1e-9);
        assertEquals(10, rafter.startAngleDeg(), 1e-9);
        assertEquals(10, rafter.endAngleDeg(), 1e-9);
        assertEquals(slope, rafter.startSlope(), 1e-12);
        assertEquals(slope, rafter.endSlope(), 1e-12);
        assertEquals(0, rafter.centreOfGravity().y(), 1e-9);
    }

    @Test
    @DisplayName("a triangular wedge balances a third of the way from its thick end (textbook)")
    void wedge() {
        Solid wedge = cut(Profile.rectangle(60, 10), 0, 0, 30, 1);
        assertEquals(0, wedge.shortEdge(), 1e-9);
        assertEquals(60, wedge.longEdge(), 1e-9);
        assertEquals(20, wedge.centreOfGravity().x(), 1e-9);
        assertEquals(10, wedge.centreOfGravity().y(), 1e-9);
    }

    @Test
    void aBlockLiesBetweenItsStations() {
        Solid block = Solid.square(Profile.rectangle(20, 10), -5, 95);
        assertEquals(100, block.axisLength(), 1e-12);
        assertTrue(block.centreOfGravity().distance(new Vec3(45, 0, 0)) < 1e-12);
        List<Vec3> ring = block.endRing(block.profile().outline());
        assertTrue(ring.stream().allMatch(p -> p.x() == 95) && ring.size() == 4);
    }

    @Test
    void cutsThatCrossOrFaceInwardsAreRefused() {
        Profile profile = Profile.rectangle(200, 100);
        assertThrows(IllegalArgumentException.class, () -> cut(profile, 0, 0, 99, 1));
        assertThrows(IllegalArgumentException.class, () -> Solid.square(profile, 10, 5));
        Plane inwards = new Plane(new Vec3(1, 0, 0), 0);
        assertThrows(IllegalArgumentException.class, () -> new Solid(profile, inwards, inwards));
    }

    @Test
    void theConvexLumpOfACutBlockHoldsItsOwnCornersAndNoMore() {
        Solid wedge = cut(Profile.rectangle(60, 10), 0, 0, 50, 1);
        Placement place = Placement.of(new Vec3(1000, 200, 30), Vec3.UP, Vec3.ALONG);
        Convex lump = Convex.of(wedge, place).get(0);
        assertEquals(8, lump.corners().size());
        lump.corners().forEach(c -> assertEquals(0, lump.distance(c), 1e-9));
        assertTrue(lump.distance(place.toWorld(wedge.centreOfGravity())) < -4.9);
        assertEquals(5, lump.distance(place.toWorld(20, 0, 10)), 1e-9);
        assertEquals(7, lump.distance(place.toWorld(-7, 0, 0)), 1e-9);
    }

    @Provide
    Arbitrary<Solid> solids() {
        Arbitrary<Double> slope = Arbitraries.doubles().between(-1.5, 1.5);
        Arbitrary<Profile> profile = Combinators.combine(
                        Arbitraries.doubles().between(20, 300),
                        Arbitraries.doubles().between(20, 300))
                .as(Profile::rectangle);
        Arbitrary<Double> length = Arbitraries.doubles().between(1000, 9000);
        return Combinators.combine(profile, slope, slope, slope, slope, length)
                .as((p, b0, c0, b1, c1, l) -> new Solid(p, start(-50, b0, c0), end(l, b1, c1)));
    }

    private static Solid cut(Profile profile, double from, double slopeFrom, double to, double slopeTo) {
        return new Solid(profile, start(from, slopeFrom, 0), end(to, slopeTo, 0));
    }

    private static Plane start(double at, double slopeDepth, double slopeWidth) {
        return end(at, slopeDepth, slopeWidth).flipped();
    }

    /** The cut whose station is at + slopeDepth·d + slopeWidth·w. */
    private static Plane end(double at, double slopeDepth, double slopeWidth) {
        return Plane.through(new Vec3(at, 0, 0), new Vec3(1, -slopeDepth, -slopeWidth));
    }

    /** Half a turn about the depth. */
    private static Plane endForEnd(Plane cut) {
        Vec3 n = cut.normal();
        return new Plane(new Vec3(-n.x(), n.y(), -n.z()), cut.offset());
    }

    /** A rectangular solid summed over n × n fibres, from nothing but the two planes. */
    private record Fibres(double volume, Vec3 centre) {
        static Fibres of(Solid solid, int n) {
            double depth = solid.profile().depth();
            double width = solid.profile().width();
            double area = depth * width / n / n;
            double volume = 0;
            Vec3 moment = Vec3.ZERO;
            for (int i = 0; i < n; i++) {
                for (int j = 0; j < n; j++) {
                    double d = ((i + 0.5) / n - 0.5) * depth;
                    double w = ((j + 0.5) / n - 0.5) * width;
                    double from = station(solid.start(), d, w);
                    double to = station(solid.end(), d, w);
                    volume += area * (to - from);
                    moment = moment.plus(new Vec3((from + to) / 2, d, w).times(area * (to - from)));
                }
            }
            return new Fibres(volume, moment.times(1 / volume));
        }

        private static double station(Plane cut, double d, double w) {
            Vec3 n = cut.normal();
            return (cut.offset() - n.y() * d - n.z() * w) / n.x();
        }
    }
}
