package org.baywright.render.sheet;

import java.util.List;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.parts.Foundation;
import org.baywright.model.parts.Shed;
import org.baywright.model.parts.SlabJoints;
import org.baywright.render.mark.Layer;
import org.baywright.render.paper.Pen;

/** The slab's edge on a plan, in a thin line. */
final class SlabLine {
    private SlabLine() {}

    /** As much of it as lies between two distances along the building. */
    static void draw(PlacedView view, PlanAxes axes, Shed shed, double low, double high) {
        Foundation foundation = Foundation.of(shed);
        for (List<Vec2> ring : foundation.edge().rings()) {
            for (int i = 1; i < ring.size(); i++) {
                line(view, axes, ring.get(i - 1), ring.get(i), low, high, Pen.DIMENSION);
            }
        }
    }

    /** The joints that are sawn into it. */
    static void joints(PlacedView view, PlanAxes axes, Shed shed, double low, double high) {
        for (SlabJoints.Cut cut : Foundation.of(shed).joints(shed.setOut()).cuts()) {
            line(view, axes, cut.from(), cut.to(), low, high, Pen.HIDDEN);
        }
    }

    private static void line(PlacedView view, PlanAxes axes, Vec2 a, Vec2 b, double low, double high, Pen pen) {
        if (Math.max(a.y(), b.y()) > low && Math.min(a.y(), b.y()) < high) {
            view.line(at(axes, a, low, high), at(axes, b, low, high), pen, Layer.CONCRETE);
        }
    }

    private static Vec2 at(PlanAxes axes, Vec2 corner, double low, double high) {
        return axes.at(corner.x(), Math.max(low, Math.min(high, corner.y())));
    }
}
