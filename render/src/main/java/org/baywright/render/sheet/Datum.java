package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import org.baywright.model.geometry.Vec2;
import org.baywright.render.dimension.Label;
import org.baywright.render.dimension.Spot;
import org.baywright.render.mark.Arc;
import org.baywright.render.mark.Fill;
import org.baywright.render.mark.Layer;
import org.baywright.render.paper.Face;
import org.baywright.render.paper.Pen;

/** The corner that everything is measured from: a target with two black quarters. */
final class Datum {
    private static final double RADIUS = 2.2;

    private Datum() {}

    /** Draws and names it at a point of the view. */
    static void draw(PlacedView view, Vec2 corner) {
        Vec2 at = view.port().toPaper(corner);
        view.draw(List.of(Arc.circle(at, RADIUS, Pen.VISIBLE, Layer.LABEL, "")));
        view.draw(List.of(quarter(at, 0), quarter(at, 180)));
        view.annotate()
                .place(new Label(
                        List.of("Datum"), at, Label.Pointer.ARROW, List.of(Spot.BELOW_RIGHT), 3.5, Face.BOLD, ""));
    }

    private static Fill quarter(Vec2 at, double from) {
        List<Vec2> ring = new ArrayList<>(List.of(at));
        for (int i = 0; i <= 6; i++) {
            double angle = Math.toRadians(from + 15 * i);
            ring.add(at.plus(new Vec2(Math.cos(angle), Math.sin(angle)).times(RADIUS)));
        }
        return new Fill(List.of(ring), 0, Layer.LABEL, "");
    }
}
