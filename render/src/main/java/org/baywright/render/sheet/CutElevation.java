package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.nesting.CutList;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Stroke;
import org.baywright.render.paper.Pen;

/**
 * A piece in elevation on the saw bench: both ends at their true angle, the length cut short by a break at each side of
 * the figures.
 *
 * @param entry the piece
 * @param width paper it may take, mm
 */
record CutElevation(CutList.Entry entry, double width) {
    /** Depth of every piece on paper. */
    static final double DEEP = 12;

    /** From the end of the paper to a break, as a share of it. */
    private static final double BREAK = 0.22;

    private static final double ZIG = 1.2;

    /** Draws with the upper left corner of the room for the piece at a point. */
    List<Mark> draw(Vec2 corner) {
        double start = entry.blank().startSlope() * DEEP;
        double end = entry.blank().endSlope() * DEEP;
        List<Mark> drawn = new ArrayList<>();
        half(drawn, corner.x() + Math.max(0, -start), start, corner.x() + width * BREAK, corner.y());
        double right = corner.x() + width - Math.max(0, end);
        half(drawn, right, end, corner.x() + width * (1 - BREAK), corner.y());
        return drawn;
    }

    /** One end: its cut from the low corner up, both edges, and the break. */
    private void half(List<Mark> drawn, double low, double lean, double stop, double top) {
        double foot = top - DEEP;
        Vec2 lowCorner = new Vec2(low, foot);
        Vec2 highCorner = new Vec2(low + lean, top);
        drawn.add(new Stroke(
                List.of(new Vec2(stop, foot), lowCorner, highCorner, new Vec2(stop, top)),
                false,
                Pen.OUTLINE,
                Layer.STEEL,
                entry.part().mark()));
        double middle = (foot + top) / 2;
        drawn.add(new Stroke(
                List.of(
                        new Vec2(stop, foot - 1),
                        new Vec2(stop, middle - ZIG),
                        new Vec2(stop - ZIG, middle - ZIG / 2),
                        new Vec2(stop + ZIG, middle + ZIG / 2),
                        new Vec2(stop, middle + ZIG),
                        new Vec2(stop, top + 1)),
                false,
                Pen.DIMENSION,
                Layer.STEEL,
                ""));
    }
}
