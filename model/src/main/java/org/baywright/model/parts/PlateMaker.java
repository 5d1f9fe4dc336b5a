package org.baywright.model.parts;

import java.util.List;
import org.baywright.model.geometry.Profile;
import org.baywright.model.geometry.Solid;
import org.baywright.model.geometry.Vec2;

/** Makes plates: a drilled rectangle, or one with a sloped edge, swept through its thickness. */
final class PlateMaker {
    private PlateMaker() {}

    /** A plate whose thickness runs along its placement, its faces spanning depth and width. */
    static Piece plate(PartKind kind, double depth, double width, double thickness, List<Hole> holes, Place place) {
        return plate(kind, Profile.rectangle(depth, width), thickness, holes, place);
    }

    /**
     * A plate whose edge at the depth's positive end is cut to a slope: one long side is longer by the rise, the depth is
     * that of the longer. Its place is that of the middle of the rectangle it is cut from, which is a little off its
     * centre of gravity.
     *
     * @param rise from the corner at the width's negative side to that at its positive side, not less than zero
     */
    static Piece sloped(
            PartKind kind, double depth, double width, double rise, double thickness, List<Hole> holes, Place place) {
        double half = width / 2;
        List<Vec2> corners = List.of(
                new Vec2(-depth / 2, -half),
                new Vec2(depth / 2 - rise, -half),
                new Vec2(depth / 2, half),
                new Vec2(-depth / 2, half));
        Profile whole = Profile.rectangle(depth, width);
        double area = whole.area() - rise * half;
        double share = area / whole.area();
        Profile cut = new Profile(
                corners, List.of(), List.of(corners), area, whole.inertiaDepth() * share, whole.inertiaWidth() * share);
        return plate(kind, cut, thickness, holes, place);
    }

    private static Piece plate(PartKind kind, Profile whole, double thickness, List<Hole> holes, Place place) {
        Solid solid = Solid.square(drilled(whole, holes), 0, thickness);
        Material material = new Material.Plate(thickness, Math.min(whole.depth(), whole.width()));
        return new Piece(kind, material, solid, holes, place);
    }

    /** A face with its holes taken out of area and second moments; the holes balance about the middle. */
    private static Profile drilled(Profile whole, List<Hole> holes) {
        double area = whole.area();
        double inertiaDepth = whole.inertiaDepth();
        double inertiaWidth = whole.inertiaWidth();
        for (Hole hole : holes) {
            area -= hole.area();
            inertiaDepth -= own(hole, hole.run().x())
                    + hole.area() * hole.at().x() * hole.at().x();
            inertiaWidth -= own(hole, hole.run().y())
                    + hole.area() * hole.at().y() * hole.at().y();
        }
        return new Profile(whole.outline(), whole.bore(), whole.pieces(), area, inertiaDepth, inertiaWidth);
    }

    /**
     * ∫ s² over a hole about its own middle, s along one axis of the plate, r the length of its run and c the run's part
     * along that axis over r: c² along the run and 1 − c² across it.
     *
     * <p>@source two half circles of radius R, their middles r apart, and a rectangle between them: plane geometry
     */
    private static double own(Hole hole, double along) {
        double radius = hole.diameter() / 2;
        double run = hole.run().length();
        double across = Math.PI * Math.pow(radius, 4) / 4 + run * Math.pow(hole.diameter(), 3) / 12;
        double lengthways = Math.PI * Math.pow(radius, 4) / 4
                + 4 * run * Math.pow(radius, 3) / 3
                + run * run * Math.PI * radius * radius / 4
                + hole.diameter() * Math.pow(run, 3) / 12;
        double share = hole.isSlot() ? along * along / (run * run) : 0;
        return share * lengthways + (1 - share) * across;
    }
}
