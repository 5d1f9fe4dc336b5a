package org.baywright.model.parts;

import java.util.List;
import org.baywright.model.geometry.Profile;
import org.baywright.model.geometry.Solid;

/** Makes plates: a drilled rectangle swept through its thickness. */
final class PlateMaker {
    private PlateMaker() {}

    /** A plate whose thickness runs along its placement, its faces spanning depth and width. */
    static Piece plate(PartKind kind, double depth, double width, double thickness, List<Hole> holes, Place place) {
        Solid solid = Solid.square(drilled(depth, width, holes), 0, thickness);
        Material material = new Material.Plate(thickness, Math.min(depth, width));
        return new Piece(kind, material, solid, holes, place);
    }

    /** A rectangle with its holes taken out of area and second moments; the holes balance about the middle. */
    private static Profile drilled(double depth, double width, List<Hole> holes) {
        Profile whole = Profile.rectangle(depth, width);
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
