package org.baywright.render.view;

import java.util.List;
import org.baywright.model.geometry.Vec2;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Mark;
import org.baywright.render.paper.Pen;
import org.baywright.render.paper.Scale;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

/**
 * Where a view lies on paper.
 *
 * @param scale of the view
 * @param inView a point of the view, building mm
 * @param onPaper where that point lies on the sheet, paper mm
 */
public record ViewPort(Scale scale, Vec2 inView, Vec2 onPaper) {
    /** The middle of a view in the middle of a room on paper, at the largest preferred scale that fits. */
    public static ViewPort fitted(Envelope bounds, Envelope room) {
        Scale scale = Scale.fitting(bounds.getWidth(), bounds.getHeight(), room.getWidth(), room.getHeight());
        return centred(bounds, room, scale);
    }

    /** The middle of a view in the middle of a room on paper. */
    public static ViewPort centred(Envelope bounds, Envelope room, Scale scale) {
        return new ViewPort(scale, middle(bounds), middle(room));
    }

    private static Vec2 middle(Envelope box) {
        if (box.isNull()) {
            throw new IllegalArgumentException("an empty box has no middle");
        }
        Coordinate centre = box.centre();
        return new Vec2(centre.x, centre.y);
    }

    /** Where a point of the view lies on paper. */
    public Vec2 toPaper(Vec2 view) {
        return onPaper.plus(view.minus(inView).times(1.0 / scale.n()));
    }

    /** How long a length of the view is on paper. */
    public double toPaper(double mm) {
        return scale.toPaper(mm);
    }

    /** Lines of a view as marks on paper; lines of one part that meet are joined. */
    public static List<Mark> strokes(List<ViewLine> lines, ViewPort port, Pen pen, Layer layer) {
        return Strokes.of(lines, port, pen, layer);
    }
}
