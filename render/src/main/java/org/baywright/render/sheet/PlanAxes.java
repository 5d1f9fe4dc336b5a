package org.baywright.render.sheet;

import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.setout.SetOut;
import org.baywright.render.dimension.Side;
import org.baywright.render.view.Projection;

/**
 * How a plan lies on the sheet: the longer way of the building runs along the sheet. Seen from above either way, so
 * never mirrored.
 *
 * <pre>
 *   turned                 upright
 *      1   2   3              A     B
 *   A  +---+---+           3  +-----+
 *      |   |   |           2  +-----+
 *   B  +---+---+           1  +-----+
 * </pre>
 *
 * @param turned true when the frames run from left to right
 */
record PlanAxes(boolean turned) {
    /** The axes that suit a building. */
    static PlanAxes of(SetOut setOut) {
        double left =
                setOut.columnLines().stream().mapToDouble(l -> l.x()).min().orElseThrow();
        double right =
                setOut.columnLines().stream().mapToDouble(l -> l.x()).max().orElseThrow();
        return new PlanAxes(setOut.length() >= right - left);
    }

    Projection projection() {
        return turned ? Projection.of(Vec3.ALONG, Vec3.ACROSS.negated()) : Projection.above();
    }

    /** Where a place on the floor appears: across the building and along it. */
    Vec2 at(double across, double along) {
        return projection().flat(new Vec3(across, along, 0));
    }

    /** Where a line along the building crosses the side that names it. */
    double across(double x) {
        return turned ? -x : x;
    }

    /** The side of the view that names the frames. */
    Side frameNames() {
        return turned ? Side.ABOVE : Side.LEFT;
    }

    /** The side of the view that measures along the building. */
    Side alongside() {
        return turned ? Side.BELOW : Side.RIGHT;
    }

    /** The side of the view that names the column lines, before the first frame when turned. */
    Side lineNames() {
        return turned ? Side.LEFT : Side.ABOVE;
    }

    /** The side of the view that measures across the building. */
    Side crosswise() {
        return turned ? Side.RIGHT : Side.BELOW;
    }
}
