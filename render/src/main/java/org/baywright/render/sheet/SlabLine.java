package org.baywright.render.sheet;

import java.util.List;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.SlabEdge;
import org.baywright.render.mark.Layer;
import org.baywright.render.paper.Pen;

/** The slab's edge on a plan, in a thin line. */
final class SlabLine {
    private SlabLine() {}

    /** As much of it as lies between two distances along the building. */
    static void draw(PlacedView view, PlanAxes axes, Shed shed, double low, double high) {
        List<Vec2> corners = SlabEdge.of(shed.definition(), shed.setOut()).corners();
        for (int i = 1; i < corners.size(); i++) {
            Vec2 a = corners.get(i - 1);
            Vec2 b = corners.get(i);
            if (Math.max(a.y(), b.y()) > low && Math.min(a.y(), b.y()) < high) {
                view.line(at(axes, a, low, high), at(axes, b, low, high), Pen.DIMENSION, Layer.CONCRETE);
            }
        }
    }

    private static Vec2 at(PlanAxes axes, Vec2 corner, double low, double high) {
        return axes.at(corner.x(), Math.max(low, Math.min(high, corner.y())));
    }
}
