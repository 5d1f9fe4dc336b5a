package org.baywright.render.sheet;

import java.util.List;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Tolerance;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.Place;
import org.baywright.model.parts.Shed;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Stroke;
import org.baywright.render.paper.Pen;
import org.baywright.render.view.Projection;

/**
 * The sizes of a cleat, and its holes where they face the eye.
 *
 * @param shed the building
 * @param detail of a cleat
 * @param figures its sizes
 */
record CleatDetail(Shed shed, Detail detail, DetailFigures figures) {
    void draw() {
        for (Part part : shed.parts(detail.parts().named().get(0))) {
            for (Place place : part.places()) {
                if (place.placement().origin().distance(detail.at()) < Tolerance.COINCIDENT) {
                    holes(part, place.placement());
                    figures.plate(part, place.placement(), new Vec2(1, 0));
                }
            }
        }
    }

    private void holes(Part part, Placement plate) {
        Projection look = detail.view();
        PlacedView view = figures.view();
        if (Math.abs(plate.along().dot(look.towards())) > 1 - Tolerance.COINCIDENT) {
            part.holes().forEach(hole -> {
                List<Vec2> ring = hole.outline().stream()
                        .map(p -> view.port().toPaper(look.flat(plate.toWorld(0, p.x(), p.y()))))
                        .toList();
                view.draw(List.of(new Stroke(ring, true, Pen.VISIBLE, Layer.STEEL, part.mark())));
            });
        }
    }
}
