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
            double across = hole.area() * hole.diameter() * hole.diameter() / 16;
            double along = hole.area() * hole.length() * hole.length() / 16;
            area -= hole.area();
            inertiaDepth -= along + hole.area() * hole.at().x() * hole.at().x();
            inertiaWidth -= across + hole.area() * hole.at().y() * hole.at().y();
        }
        return new Profile(whole.outline(), whole.bore(), whole.pieces(), area, inertiaDepth, inertiaWidth);
    }
}
