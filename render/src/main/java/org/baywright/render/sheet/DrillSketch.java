package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import org.baywright.model.definition.Anchor;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.takeoff.Drilling;
import org.baywright.render.dimension.Figure;
import org.baywright.render.mark.Fill;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Stroke;
import org.baywright.render.mark.Text;
import org.baywright.render.paper.Face;
import org.baywright.render.paper.Pen;

/**
 * The bit in the hole and its mark, three times: plate away, plate flat on the slab, plate on its packers.
 *
 * <pre>
 *      ||              ||              ||
 *      ||            --||-- mark  ===  ||  === plate
 *  ----||----      ====||====      ▯   ||   ▯  packers
 *      ||              ||              ||
 *      ||              ||              ||
 * </pre>
 */
record DrillSketch(Drilling drilling, Anchor anchor) {
    /** All of it, mm of paper. */
    static final double HEIGHT = 88;

    private static final double TEXT = 2.5;

    /** From the mark to the bottom of the hole, at most. */
    private static final double DEEPEST = 60;

    /** From the top of the drawing to the mark at its highest. */
    private static final double ABOVE = 24;

    private static final double HALF_SLAB = 38;
    private static final double HALF_PLATE = 28;
    private static final double FIGURE = 44;
    private static final double PACKER = 5;

    List<Mark> draw(Vec2 topLeft) {
        double cell = SheetFrame.room().getWidth() / 3;
        double plate = drilling.markThroughPlate() - drilling.depth();
        List<Mark> marks = new ArrayList<>();
        String name = drilling.plate().mark();
        Vec2 middle = topLeft.plus(new Vec2(cell / 2, 0));
        Vec2 step = new Vec2(cell, 0);
        marks.addAll(new Case("Plate away, or a thin template", 0, 0).draw(middle));
        marks.addAll(new Case(name + " flat on the slab", 0, plate).draw(middle.plus(step)));
        marks.addAll(new Case(name + " on its packers", drilling.packed(), plate).draw(middle.plus(step.times(2))));
        return marks;
    }

    /** Paper millimetres to a millimetre; in proportion, to no scale. */
    private double factor() {
        return DEEPEST / drilling.markThroughPackedPlate();
    }

    /** One of the three, about a vertical line. */
    private final class Case {
        private final String title;
        private final double packed;
        private final double plate;
        private final List<Mark> marks = new ArrayList<>();

        Case(String title, double packed, double plate) {
            this.title = title;
            this.packed = packed;
            this.plate = plate;
        }

        List<Mark> draw(Vec2 top) {
            double f = factor();
            double x = top.x();
            double floor = top.y() - ABOVE - (drilling.markThroughPackedPlate() - drilling.depth()) * f;
            double bottom = floor - drilling.depth() * f;
            double level = floor + (packed + plate) * f;
            double bit = Math.max(1.5, anchor.holeDiameter() / 2 * f);
            marks.add(
                    new Text(title, new Vec2(x, top.y() - 4), TEXT, Text.Align.CENTRE, 0, Face.BOLD, Layer.LABEL, ""));
            line(x - HALF_SLAB, floor, x - bit, floor, Pen.CUT, Layer.CONCRETE);
            line(x + bit, floor, x + HALF_SLAB, floor, Pen.CUT, Layer.CONCRETE);
            marks.add(new Stroke(
                    List.of(
                            new Vec2(x - bit, floor),
                            new Vec2(x - bit, bottom),
                            new Vec2(x + bit, bottom),
                            new Vec2(x + bit, floor)),
                    false,
                    Pen.OUTLINE,
                    Layer.CONCRETE,
                    ""));
            steel(x, floor, bit);
            bit(x, bit, bottom, level, top.y() - 8);
            word("concrete", x - HALF_SLAB, floor - 4.5, Text.Align.LEFT);
            word("mark on the bit", x - bit - 4.5, level + 1.2, Text.Align.RIGHT);
            dimension(x + FIGURE, bottom, level, x + bit + 4);
            return marks;
        }

        /** Plate and packers, nothing where the plate is away. */
        private void steel(double x, double floor, double bit) {
            double f = factor();
            double under = floor + packed * f;
            double hole = Math.max(bit + 0.8, anchor.plateHole() / 2 * f);
            if (plate > 0) {
                box(x - HALF_PLATE, under, x - hole, under + plate * f, Layer.PLATE);
                box(x + hole, under, x + HALF_PLATE, under + plate * f, Layer.PLATE);
            }
            if (packed > 0) {
                box(x - HALF_PLATE + 2, floor, x - HALF_PLATE + 2 + PACKER, under, Layer.PLATE);
                box(x + HALF_PLATE - 2 - PACKER, floor, x + HALF_PLATE - 2, under, Layer.PLATE);
            }
        }

        private void bit(double x, double bit, double bottom, double level, double top) {
            double half = bit - 0.6;
            marks.add(new Fill(
                    List.of(List.of(
                            new Vec2(x - half, bottom),
                            new Vec2(x + half, bottom),
                            new Vec2(x + half, top),
                            new Vec2(x - half, top))),
                    0.85,
                    Layer.ANCHOR,
                    ""));
            box(x - half, bottom, x + half, top, Layer.ANCHOR);
            line(x - bit - 3.5, level, x + bit + 3.5, level, Pen.CUT, Layer.ANCHOR);
        }

        private void dimension(double x, double low, double high, double from) {
            line(from, high, x + 1.5, high, Pen.DIMENSION, Layer.DIMENSION);
            line(from, low, x + 1.5, low, Pen.DIMENSION, Layer.DIMENSION);
            line(x, low, x, high, Pen.DIMENSION, Layer.DIMENSION);
            line(x - 1, low - 1, x + 1, low + 1, Pen.VISIBLE, Layer.DIMENSION);
            line(x - 1, high - 1, x + 1, high + 1, Pen.VISIBLE, Layer.DIMENSION);
            double mm = drilling.depth() + packed + plate;
            word(Figure.length(mm), x + 2.5, (low + high) / 2 - TEXT / 2, Text.Align.LEFT);
        }

        private void line(double x0, double y0, double x1, double y1, Pen pen, Layer layer) {
            marks.add(Stroke.line(new Vec2(x0, y0), new Vec2(x1, y1), pen, layer));
        }

        private void box(double x0, double y0, double x1, double y1, Layer layer) {
            List<Vec2> corners = List.of(new Vec2(x0, y0), new Vec2(x1, y0), new Vec2(x1, y1), new Vec2(x0, y1));
            marks.add(new Stroke(corners, true, Pen.VISIBLE, layer, ""));
        }

        private void word(String words, double x, double y, Text.Align align) {
            marks.add(Text.level(words, new Vec2(x, y), TEXT, align, Layer.LABEL));
        }
    }
}
