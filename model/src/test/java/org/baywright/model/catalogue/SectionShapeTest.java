package org.baywright.model.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.function.DoubleUnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.baywright.model.geometry.Profile;
import org.junit.jupiter.api.Test;

/** Areas, second moments and painted surfaces against sums over thin strips of the rounded shape. */
class SectionShapeTest {
    private static final int STRIPS = 20_000;

    @Property(tries = 20)
    @Label("a hollow section's closed formulas agree with strips across its rounded shape")
    void hollow(
            @ForAll @DoubleRange(min = 40, max = 400) double depth,
            @ForAll @DoubleRange(min = 40, max = 400) double width,
            @ForAll @DoubleRange(min = 1.6, max = 8) double t) {
        HollowSection section = HollowSection.asNzs1163("any", depth, width, t, "any", "random");
        assertStrips(
                section, depth / 2 - t, width / 2 - t, y -> chord(section, y, false), z -> chord(section, z, true));
    }

    @Property(tries = 20)
    @Label("a beam's closed formulas agree with strips across its shape with fillets")
    void beam(
            @ForAll @DoubleRange(min = 100, max = 600) double depth,
            @ForAll @DoubleRange(min = 75, max = 300) double width,
            @ForAll @DoubleRange(min = 6, max = 20) double flange,
            @ForAll @DoubleRange(min = 4, max = 12) double web,
            @ForAll @DoubleRange(min = 0, max = 16) double root) {
        BeamSection section = new BeamSection("any", depth, width, flange, web, root, "any", "random");
        assertStrips(section, depth / 2 - flange, web / 2, y -> acrossWeb(section, y), z -> alongWeb(section, z));
    }

    @Test
    void theSurfaceOfABeamIsItsOutlineMeasuredRound() {
        // Three flange faces and tips and two web faces, less 2r and more a quarter circle at each of four fillets.
        BeamSection beam = new BeamSection("any", 203, 133, 7.8, 5.8, 8.9, "any", "any");
        double flange = 133 + 2 * 7.8 + (133 - 5.8 - 2 * 8.9);
        double web = 2 * (203 - 2 * 7.8 - 2 * 8.9);
        double outline = 2 * flange + web + 2 * Math.PI * 8.9;
        assertEquals(outline / 1000, beam.surfaceM2PerM(), 1e-12);
    }

    @Test
    void cornersFollowTheStandardAtItsLimits() {
        assertEquals(6, HollowSection.asNzs1163("a", 75, 75, 3, "g", "s").outerRadius());
        assertEquals(8.75, HollowSection.asNzs1163("a", 75, 75, 3.5, "g", "s").outerRadius());
        assertEquals(12, HollowSection.en10219("a", 150, 150, 6, "g", "s").outerRadius());
        assertEquals(20, HollowSection.en10219("a", 150, 150, 8, "g", "s").outerRadius());
        assertEquals(25, HollowSection.en10219("a", 150, 150, 10, "g", "s").outerRadius());
        assertEquals(36, HollowSection.en10219("a", 250, 250, 12, "g", "s").outerRadius());
    }

    @Test
    void shapesThatCannotBeMadeAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> new HollowSection("a", 50, 50, 25, 25, 0, "g", "s"));
        assertThrows(IllegalArgumentException.class, () -> new HollowSection("a", 50, 50, 3, 26, 23, "g", "s"));
        assertThrows(IllegalArgumentException.class, () -> new HollowSection("a", 50, 50, 3, 2, 3, "g", "s"));
        assertThrows(IllegalArgumentException.class, () -> new HollowSection("a", Double.NaN, 50, 3, 6, 3, "g", "s"));
        assertThrows(
                IllegalArgumentException.class,
                () -> new HollowSection("a", Double.POSITIVE_INFINITY, 50, 3, 6, 3, "g", "s"));
        assertThrows(IllegalArgumentException.class, () -> new BeamSection("a", 40, 90, 10, 6, 10, "g", "s"));
        assertThrows(IllegalArgumentException.class, () -> new BeamSection("a", 200, 20, 10, 6, 7, "g", "s"));
    }

    /** The inner distances are where the chord jumps: no strip may lie across a jump. */
    private static void assertStrips(
            Section section,
            double innerDepth,
            double innerWidth,
            DoubleUnaryOperator atDepth,
            DoubleUnaryOperator atWidth) {
        Profile profile = section.profile();
        double outerDepth = section.depth() / 2;
        double outerWidth = section.width() / 2;
        assertNear(bothSides(innerDepth, outerDepth, 0, atDepth), profile.area());
        assertNear(bothSides(innerWidth, outerWidth, 0, atWidth), profile.area());
        assertNear(bothSides(innerDepth, outerDepth, 2, atDepth), profile.inertiaDepth());
        assertNear(bothSides(innerWidth, outerWidth, 2, atWidth), profile.inertiaWidth());
    }

    private static void assertNear(double strips, double formula) {
        assertEquals(strips, formula, 1e-5 * formula);
    }

    private static double bothSides(double inner, double outer, int power, DoubleUnaryOperator chord) {
        return 2 * (sum(0, inner, power, chord) + sum(inner, outer, power, chord));
    }

    private static double sum(double from, double to, int power, DoubleUnaryOperator chord) {
        double strip = (to - from) / STRIPS;
        double sum = 0;
        for (int i = 0; i < STRIPS; i++) {
            double at = from + (i + 0.5) * strip;
            sum += Math.pow(at, power) * chord.applyAsDouble(at) * strip;
        }
        return sum;
    }

    private static double chord(HollowSection s, double at, boolean turned) {
        double along = turned ? s.width() : s.depth();
        double across = turned ? s.depth() : s.width();
        double t = s.thickness();
        return rounded(along, across, s.outerRadius(), at)
                - rounded(along - 2 * t, across - 2 * t, s.innerRadius(), at);
    }

    /** The chord of a rounded rectangle at a distance from its middle. */
    private static double rounded(double along, double across, double r, double at) {
        double intoCorner = Math.abs(at) - (along / 2 - r);
        if (intoCorner > r) {
            return 0;
        }
        return intoCorner <= 0 ? across : across - 2 * (r - Math.sqrt(r * r - intoCorner * intoCorner));
    }

    /** Steel met by a line across the web, at a distance from mid-depth. */
    private static double acrossWeb(BeamSection s, double at) {
        double fromFlange = s.depth() / 2 - s.flangeThickness() - Math.abs(at);
        return fromFlange < 0 ? s.width() : s.webThickness() + 2 * fillet(s.rootRadius(), fromFlange);
    }

    /** Steel met by a line along the web, at a distance from its middle. */
    private static double alongWeb(BeamSection s, double at) {
        double fromWeb = Math.abs(at) - s.webThickness() / 2;
        return fromWeb < 0 ? s.depth() : 2 * s.flangeThickness() + 2 * fillet(s.rootRadius(), fromWeb);
    }

    /** How far a fillet stands out of one face, at a distance from the other. */
    private static double fillet(double r, double distance) {
        return distance >= r ? 0 : r - Math.sqrt(r * r - (r - distance) * (r - distance));
    }
}
