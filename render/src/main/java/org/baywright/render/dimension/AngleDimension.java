package org.baywright.render.dimension;

import java.util.ArrayList;
import java.util.List;
import org.baywright.model.geometry.Vec2;
import org.baywright.render.mark.Arc;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Mark;
import org.baywright.render.paper.Pen;
import org.baywright.render.view.ViewPort;

/** The angle between two lines from one corner: an arc with arrows and the degrees. */
final class AngleDimension {
    private AngleDimension() {}

    /** From one leg anticlockwise to the other; legs and corner in view mm, radius on paper. */
    static Ink place(Vec2 corner, Vec2 first, Vec2 second, double radius, ViewPort view, LabelField field) {
        Vec2 centre = view.toPaper(corner);
        double start = degrees(first.minus(corner));
        double sweep = ((degrees(second.minus(corner)) - start) % 360 + 360) % 360;
        List<Mark> marks = new ArrayList<>();
        marks.add(new Arc(centre, radius, start, sweep, Pen.DIMENSION, Layer.DIMENSION, ""));
        // Arrows point at the legs from inside the angle when both have room on the arc, else from outside.
        boolean inside = Math.toRadians(sweep) * radius > 2.5 * Drafting.ARROW;
        marks.add(arrow(centre, radius, start, inside ? -1 : 1));
        marks.add(arrow(centre, radius, start + sweep, inside ? 1 : -1));
        Vec2 middle = centre.plus(unit(start + sweep / 2).times(radius));
        field.drawn(marks);
        Label label = Label.of(middle, Label.Pointer.BESIDE, Figure.angle(sweep));
        marks.addAll(
                field.place(label.preferring(Spot.nearest(start + sweep / 2))).marks());
        return Ink.of(marks);
    }

    private static Mark arrow(Vec2 centre, double radius, double deg, int way) {
        Vec2 spoke = unit(deg);
        return Ink.arrow(centre.plus(spoke.times(radius)), spoke.left().times(way), Layer.DIMENSION);
    }

    private static double degrees(Vec2 step) {
        double deg = Math.toDegrees(Math.atan2(step.y(), step.x()));
        return deg < 0 ? deg + 360 : deg;
    }

    private static Vec2 unit(double deg) {
        return new Vec2(Math.cos(Math.toRadians(deg)), Math.sin(Math.toRadians(deg)));
    }
}
