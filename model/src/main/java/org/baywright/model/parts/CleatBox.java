package org.baywright.model.parts;

import java.util.List;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Vec2;

/**
 * A girt's cleat, or a hanger on it, as it is made longer: a plate in the axes of the wall, up, out, and to the right seen
 * from outside.
 *
 * @param origin the middle of the plate's face where its thickness starts
 * @param depth of the plate
 * @param width of the plate
 * @param thickness of the plate
 * @param holes from the plate's middle
 * @param place of the cleat that it began as
 */
record CleatBox(Placement origin, double depth, double width, double thickness, List<Hole> holes, Place place) {
    static CleatBox of(Piece cleat) {
        var face = cleat.solid().profile();
        return new CleatBox(
                cleat.place().placement(),
                face.depth(),
                face.width(),
                cleat.solid().axisLength(),
                cleat.holes(),
                cleat.place());
    }

    Piece piece() {
        return PlateMaker.plate(
                PartKind.GIRT_CLEAT, depth, width, thickness, holes, new Place(origin, place.frame(), place.side()));
    }

    /** Larger by so much at its inner edge, to the right and to the left; the holes stay where they are. */
    CleatBox grown(double inward, double right, double left) {
        Vec2 middle = new Vec2(-inward / 2, (right - left) / 2);
        List<Hole> same =
                holes.stream().map(h -> h.shifted(-middle.x(), -middle.y())).toList();
        return new CleatBox(
                moved(0, middle.x(), middle.y()), depth + inward, width + right + left, thickness, same, place);
    }

    /** Larger to the right or left. */
    CleatBox along(int side, double by) {
        return side > 0 ? grown(0, by, 0) : grown(0, 0, by);
    }

    private Placement moved(double up, double out, double right) {
        return new Placement(origin.toWorld(up, out, right), origin.along(), origin.depth(), origin.width());
    }

    /**
     * The foot of a plate on edge, square to the wall, on a cleat at its right or left edge or beside that edge; it lies on
     * the cleat so far and reaches further inward.
     */
    CleatBox hanger(int side, boolean beside, double inward, double most) {
        double on = Math.min(depth, most);
        double out = -depth / 2 + (on - inward) / 2;
        double edge = side * width / 2;
        boolean before = beside == side > 0;
        Placement foot = moved(beside ? 0 : thickness, out, before ? edge : edge - thickness);
        // Its thickness runs to the right, its depth up and its width out.
        return new CleatBox(
                Placement.of(foot.origin(), foot.width(), foot.along()), 0, on + inward, thickness, List.of(), place);
    }

    /** A plate on edge, so high, along the inner edge of a cleat; its right is the wall's left. */
    CleatBox arm(double high) {
        Placement at = moved(thickness, -depth / 2, 0);
        Placement middle = new Placement(at.toWorld(high / 2, 0, 0), at.along(), at.depth(), at.width());
        return new CleatBox(
                Placement.of(middle.origin(), origin.depth(), origin.along()),
                high,
                width,
                thickness,
                List.of(),
                place);
    }

    /** A hanger so much higher over its foot. */
    CleatBox raised(double by) {
        double high = Math.max(by, thickness);
        Placement at = new Placement(origin.toWorld(0, high / 2, 0), origin.along(), origin.depth(), origin.width());
        return new CleatBox(at, high, width, thickness, holes, place);
    }
}
