package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import org.baywright.model.definition.Opening.Type;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Profile;
import org.baywright.model.geometry.Solid;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.setout.OpeningPlace;
import org.baywright.model.setout.SlidingLeaf;
import org.baywright.render.view.Item;
import org.baywright.render.view.ThinLine;

/**
 * What closes an opening, as a figure: slats of a roller door, the leaf of a sliding door under its track, a door with
 * its handle, a window with its frame. The figures show what it is, not a product.
 *
 * @param place the opening
 * @param out from the string line to the outside of the wall's sheets
 */
record Leaf(OpeningPlace place, double out) {
    private static final double SLAT = 150;
    private static final double THICK = 20;
    private static final double FRAME = 60;
    private static final double HANDLE = 1000;

    private boolean sliding() {
        return place.opening().type() == Type.SLIDING_DOOR;
    }

    private double face() {
        return sliding() ? out + 2 * THICK : 0;
    }

    private double left() {
        return sliding() ? new SlidingLeaf(place).left() : place.left();
    }

    private double right() {
        return sliding() ? new SlidingLeaf(place).right() : place.right();
    }

    private double top() {
        return place.head() + (sliding() ? SlidingLeaf.LAP : 0);
    }

    /** The leaf as something that hides; nothing in an opening that stays open. */
    List<Item> blinds() {
        if (place.opening().type() == Type.OPEN) {
            return List.of();
        }
        double width = right() - left();
        double height = top() - place.sill();
        Placement at = Placement.of(
                place.face().toWorld(left() + width / 2, place.sill() + height / 2, face() - THICK),
                place.face().axes().width(),
                place.face().axes().along());
        return List.of(new Item(Scene.LEAF, Solid.square(Profile.rectangle(width, height), 0, THICK), at));
    }

    /** The figure as it is seen from inside, on the back of the leaf. */
    List<ThinLine> linesInside() {
        Vec3 through = place.face().axes().width().times(-THICK);
        return lines().stream()
                .map(l -> new ThinLine(l.from().plus(through), l.to().plus(through), l.part()))
                .toList();
    }

    /** The lines of the figure. */
    List<ThinLine> lines() {
        List<ThinLine> lines = new ArrayList<>();
        switch (place.opening().type()) {
            case ROLLER_DOOR -> slats(lines);
            case SLIDING_DOOR -> slide(lines);
            case DOOR -> door(lines);
            case WINDOW -> window(lines);
            case OPEN -> {}
        }
        return lines;
    }

    private void slats(List<ThinLine> lines) {
        box(left(), right(), place.sill(), top(), lines);
        for (double v = place.sill() + SLAT; v < top() - SLAT / 3; v += SLAT) {
            line(left(), v, right(), v, lines);
        }
    }

    private void slide(List<ThinLine> lines) {
        SlidingLeaf sliding = new SlidingLeaf(place);
        if (sliding.parts()) {
            double middle = (left() + right()) / 2;
            leaf(left(), middle, lines);
            leaf(middle, right(), lines);
        } else {
            leaf(left(), right(), lines);
        }
        track(sliding.trackFrom(), sliding.trackTo(), lines);
    }

    private void leaf(double from, double to, List<ThinLine> lines) {
        box(from, to, place.sill(), top(), lines);
        double middle = (place.sill() + top()) / 2;
        line(from, middle, to, middle, lines);
        line(from, place.sill(), to, middle, lines);
        line(from, middle, to, top(), lines);
    }

    private void track(double from, double to, List<ThinLine> lines) {
        line(from, top() + FRAME, to, top() + FRAME, lines);
        line(from, top() + 2 * FRAME, to, top() + 2 * FRAME, lines);
    }

    private void door(List<ThinLine> lines) {
        box(left(), right(), place.sill(), top(), lines);
        double handle = right() - FRAME;
        box(handle - FRAME, handle, place.sill() + HANDLE, place.sill() + HANDLE + FRAME, lines);
    }

    private void window(List<ThinLine> lines) {
        box(left(), right(), place.sill(), top(), lines);
        box(left() + FRAME, right() - FRAME, place.sill() + FRAME, top() - FRAME, lines);
        double middle = (left() + right()) / 2;
        line(middle, place.sill() + FRAME, middle, top() - FRAME, lines);
    }

    private void box(double u0, double u1, double v0, double v1, List<ThinLine> lines) {
        line(u0, v0, u1, v0, lines);
        line(u1, v0, u1, v1, lines);
        line(u1, v1, u0, v1, lines);
        line(u0, v1, u0, v0, lines);
    }

    private void line(double u0, double v0, double u1, double v1, List<ThinLine> lines) {
        lines.add(
                new ThinLine(place.face().toWorld(u0, v0, face()), place.face().toWorld(u1, v1, face()), Scene.LEAF));
    }
}
