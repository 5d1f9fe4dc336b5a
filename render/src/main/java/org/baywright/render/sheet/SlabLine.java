package org.baywright.render.sheet;

import java.util.List;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.parts.Foundation;
import org.baywright.model.parts.Shed;
import org.baywright.model.parts.SlabJoints;
import org.baywright.render.mark.Layer;
import org.baywright.render.paper.Pen;

/** The concrete on plans: the slab's edge or pads in a thin line, sawn joints dashed. */
final class SlabLine {
    private final PlanAxes axes;
    private final List<List<Vec2>> rings;
    private final SlabJoints joints;

    private SlabLine(PlanAxes axes, Foundation foundation, SlabJoints joints) {
        this.axes = axes;
        this.rings = foundation.edge().rings();
        this.joints = joints;
    }

    /** The edge of a shed's concrete alone. */
    static SlabLine edgeOf(Shed shed, PlanAxes axes) {
        return new SlabLine(axes, Foundation.of(shed), SlabJoints.NONE);
    }

    /** The edge of a shed's concrete with its joints. */
    static SlabLine of(Shed shed, PlanAxes axes) {
        Foundation foundation = Foundation.of(shed);
        return new SlabLine(axes, foundation, foundation.joints(shed.setOut()));
    }

    SlabJoints joints() {
        return joints;
    }

    /** As much of the edge as lies between two distances along the building. */
    void edge(PlacedView view, double low, double high) {
        for (List<Vec2> ring : rings) {
            for (int i = 1; i < ring.size(); i++) {
                line(view, ring.get(i - 1), ring.get(i), low, high, Pen.DIMENSION);
            }
        }
    }

    /** Edge and joints in a strip of a plan; past the ends of the building they are whole. */
    void strip(PlacedView view, Shed shed, Strip strip) {
        double low = strip.firstFrame() == 1 ? -1e9 : shed.setOut().frameLine(strip.firstFrame());
        double high = strip.lastFrame() == shed.setOut().frames()
                ? 1e9
                : shed.setOut().frameLine(strip.lastFrame());
        edge(view, low, high);
        joints.cuts().forEach(cut -> line(view, cut.from(), cut.to(), low, high, Pen.HIDDEN));
    }

    private void line(PlacedView view, Vec2 a, Vec2 b, double low, double high, Pen pen) {
        if (Math.max(a.y(), b.y()) > low && Math.min(a.y(), b.y()) < high) {
            view.line(at(a, low, high), at(b, low, high), pen, Layer.CONCRETE);
        }
    }

    private Vec2 at(Vec2 corner, double low, double high) {
        return axes.at(corner.x(), Math.max(low, Math.min(high, corner.y())));
    }
}
