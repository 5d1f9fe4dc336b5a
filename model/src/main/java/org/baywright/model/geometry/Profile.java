package org.baywright.model.geometry;

import java.util.List;

/**
 * A cross-section that is swept into a solid, in (depth, width) about its centroid. Millimetres.
 *
 * <p>The polygons are what is drawn and what hides other lines: corners are sharp. The properties are exact, computed
 * from the true shape with its radii, and are what mass and balance are taken from.
 *
 * @param outline outer corners in order, anticlockwise
 * @param bore inner corners in order, empty when solid
 * @param pieces convex polygons, anticlockwise, that together fill the outline (bore included)
 * @param area true area, mm²
 * @param inertiaDepth second moment ∫ depth² dA, mm⁴ (bending in the plane of the depth)
 * @param inertiaWidth second moment ∫ width² dA, mm⁴
 */
public record Profile(
        List<Vec2> outline,
        List<Vec2> bore,
        List<List<Vec2>> pieces,
        double area,
        double inertiaDepth,
        double inertiaWidth) {
    /** Copies the lists and checks the properties. */
    public Profile {
        outline = List.copyOf(outline);
        bore = List.copyOf(bore);
        pieces = pieces.stream().map(List::copyOf).toList();
        if (outline.size() < 3 || pieces.isEmpty() || !(area > 0) || !(inertiaDepth > 0) || !(inertiaWidth > 0)) {
            throw new IllegalArgumentException("a profile needs an outline, pieces and positive properties");
        }
    }

    /** A solid rectangle. */
    public static Profile rectangle(double depth, double width) {
        List<Vec2> corners = corners(depth, width);
        double area = depth * width;
        return new Profile(
                corners, List.of(), List.of(corners), area, area * depth * depth / 12, area * width * width / 12);
    }

    /** The corners of a rectangle about zero, anticlockwise. */
    public static List<Vec2> corners(double depth, double width) {
        return box(-depth / 2, -width / 2, depth / 2, width / 2);
    }

    /** The corners of a rectangle, anticlockwise. */
    public static List<Vec2> box(double depth0, double width0, double depth1, double width1) {
        return List.of(
                new Vec2(depth0, width0), new Vec2(depth1, width0), new Vec2(depth1, width1), new Vec2(depth0, width1));
    }

    /** The extent along the depth. */
    public double depth() {
        return extent(outline, true);
    }

    /** The extent along the width. */
    public double width() {
        return extent(outline, false);
    }

    /** The middle of its extents, which is not its centroid when one side is heavier. */
    public Vec2 middle() {
        return new Vec2(middle(true), middle(false));
    }

    private double middle(boolean alongDepth) {
        var values =
                outline.stream().mapToDouble(p -> alongDepth ? p.x() : p.y()).summaryStatistics();
        return (values.getMin() + values.getMax()) / 2;
    }

    private static double extent(List<Vec2> points, boolean alongDepth) {
        double most = Double.NEGATIVE_INFINITY;
        double least = Double.POSITIVE_INFINITY;
        for (Vec2 point : points) {
            double at = alongDepth ? point.x() : point.y();
            most = Math.max(most, at);
            least = Math.min(least, at);
        }
        return most - least;
    }

    /** The profile turned a quarter: its width in the plane of its former depth. */
    public Profile turned() {
        return new Profile(
                turn(outline),
                turn(bore),
                pieces.stream().map(Profile::turn).toList(),
                area,
                inertiaWidth,
                inertiaDepth);
    }

    private static List<Vec2> turn(List<Vec2> points) {
        return points.stream().map(Vec2::left).toList();
    }
}
