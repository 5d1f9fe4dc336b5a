package org.baywright.model.catalogue;

import java.util.List;
import org.baywright.model.geometry.Profile;
import org.baywright.model.geometry.Vec2;

/**
 * A cold-formed rectangular or square hollow section with rounded corners.
 *
 * @param designation trade name
 * @param depth first outside dimension, mm
 * @param width second outside dimension, mm
 * @param thickness wall, mm
 * @param outerRadius outside corner radius, mm
 * @param innerRadius inside corner radius, mm
 * @param grade grade and product standard
 * @param source where the row comes from
 */
public record HollowSection(
        String designation,
        double depth,
        double width,
        double thickness,
        double outerRadius,
        double innerRadius,
        String grade,
        String source)
        implements Section {
    /** Checks that the wall fits inside the section. */
    public HollowSection {
        if (!(thickness > 0) || !(2 * thickness < Math.min(depth, width)) || !Double.isFinite(depth * width)) {
            throw new IllegalArgumentException("a hollow section needs a wall thinner than half its side");
        }
        if (!(innerRadius >= 0) || !(outerRadius >= innerRadius) || !(2 * outerRadius <= Math.min(depth, width))) {
            throw new IllegalArgumentException("corner radii do not fit the hollow section");
        }
    }

    /** Corner radii as AS/NZS 1163 assumes for its properties: 2.0t/1.0t to 3 mm, 2.5t/1.5t above. */
    public static HollowSection asNzs1163(
            String designation, double depth, double width, double t, String grade, String source) {
        double outer = t <= 3 ? 2.0 * t : 2.5 * t;
        return new HollowSection(designation, depth, width, t, outer, outer - t, grade, source);
    }

    /** Corner radii of EN 10219-2 annex B: 2.0T/1.0T to 6 mm, 2.5T/1.5T to 10 mm, 3.0T/2.0T above. */
    public static HollowSection en10219(
            String designation, double depth, double width, double t, String grade, String source) {
        double outer = t <= 6 ? 2.0 * t : t <= 10 ? 2.5 * t : 3.0 * t;
        return new HollowSection(designation, depth, width, t, outer, outer - t, grade, source);
    }

    /**
     * Exact properties of the rounded shape: the outer rounded rectangle less the bore.
     *
     * <p>@source EN 10219-2 annex B: A = 2T(B + H − 2T) − (4 − π)(ro² − ri²)
     */
    @Override
    public Profile profile() {
        RoundedBox outer = new RoundedBox(depth, width, outerRadius);
        RoundedBox bore = new RoundedBox(depth - 2 * thickness, width - 2 * thickness, innerRadius);
        List<Vec2> corners = Profile.corners(depth, width);
        return new Profile(
                corners,
                Profile.corners(bore.depth, bore.width),
                List.of(corners),
                outer.area() - bore.area(),
                outer.inertiaDepth() - bore.inertiaDepth(),
                outer.turned().inertiaDepth() - bore.turned().inertiaDepth());
    }

    /** Outside perimeter less the corners: 2(b + h) − (8 − 2π)·ro. */
    @Override
    public double surfaceM2PerM() {
        return (2 * (depth + width) - (8 - 2 * Math.PI) * outerRadius) / 1000;
    }

    /** A rectangle with rounded corners. */
    private record RoundedBox(double depth, double width, double radius) {
        double area() {
            return depth * width - (4 - Math.PI) * radius * radius;
        }

        RoundedBox turned() {
            return new RoundedBox(width, depth, radius);
        }

        /**
         * The rectangle less four spandrels (a square of side r less its quarter circle). About the line through the
         * circle's centre a spandrel has area (1 − π/4)r², first moment r³/2 − r³/3 and second moment r⁴/3 − πr⁴/16;
         * the parallel-axis rule carries it to the middle of the section.
         */
        double inertiaDepth() {
            double r = radius;
            double c = depth / 2 - r;
            double area = (1 - Math.PI / 4) * r * r;
            double first = r * r * r / 2 - r * r * r / 3;
            double second = r * r * r * r / 3 - Math.PI * r * r * r * r / 16;
            double spandrel = second + 2 * c * first + c * c * area;
            return width * depth * depth * depth / 12 - 4 * spandrel;
        }
    }
}
