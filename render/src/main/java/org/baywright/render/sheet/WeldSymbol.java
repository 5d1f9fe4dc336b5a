package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.parts.Attached;
import org.baywright.render.dimension.Figure;
import org.baywright.render.mark.Arc;
import org.baywright.render.mark.Fill;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Stroke;
import org.baywright.render.mark.Text;
import org.baywright.render.paper.Face;
import org.baywright.render.paper.Lettering;
import org.baywright.render.paper.Pen;
import org.locationtech.jts.geom.Envelope;

/**
 * The symbol of a fillet weld: arrow line, reference line, triangle with the leg before it, tail with words. A weld all
 * round has a circle at the bend and the dashed line of the other side under the reference line; a weld on both sides
 * has a triangle on either side of the line and no dashed line.
 *
 * <pre>
 *        z6 |\  <
 *   o-------+-+--<  words
 *  /  - - - - - -
 * v
 * </pre>
 *
 * <p>@source ISO 2553, system A: reference and identification line, fillet triangle, leg z, weld all round, tail (from
 * memory)
 *
 * @param target where the arrow points
 * @param toRight whether the reference line runs right from the bend
 * @param legMm leg of the fillet
 * @param allRound all round rather than on both sides
 * @param words in the tail
 */
record WeldSymbol(Vec2 target, boolean toRight, double legMm, boolean allRound, String words) {
    /** From the middle of the reference line to the edge of the room that the symbol takes. */
    static final double HALF = 3.5;

    /** How far aside of the target the line bends. */
    static final double BEND = 2;

    private static final double TEXT = 2.5;
    private static final double LEG = 2.6;
    private static final double LEAD = 3;
    private static final double TAIL = 2.5;
    private static final double DASHED = 1.1;

    /** The weld of a plate, for so many of its kind. */
    static WeldSymbol of(Attached plate, int count, Vec2 target, boolean toRight) {
        String words = plate.plate().mark() + (count > 1 ? " × " + count : "") + ", or as engineer";
        return new WeldSymbol(target, toRight, plate.weldLeg(), plate.isWeldedRound(), words);
    }

    private String leg() {
        return "z" + Figure.length(legMm);
    }

    private static double width(String words) {
        return Lettering.width(words, TEXT, Face.REGULAR);
    }

    private double lineLength() {
        return LEAD + width(leg()) + 1 + LEG + 2;
    }

    /** From the bend to the end of the words, mm. */
    double length() {
        return lineLength() + TAIL + 1 + width(words);
    }

    /** Where the arrow line meets the reference line. */
    Vec2 bend(double y) {
        return new Vec2(target.x() + (toRight ? BEND : -BEND), y);
    }

    /** The paper that it takes with its words, the arrow line left out. */
    Envelope room(double y) {
        double bend = bend(y).x();
        return new Envelope(bend, bend + (toRight ? length() : -length()), y - HALF, y + HALF);
    }

    /** Draws with the reference line at a height of the paper. */
    List<Mark> draw(double y) {
        int way = toRight ? 1 : -1;
        Vec2 bend = bend(y);
        Vec2 tail = bend.plus(new Vec2(way * lineLength(), 0));
        double left = Math.min(bend.x(), tail.x());
        List<Mark> marks = new ArrayList<>();
        marks.add(Stroke.line(target, bend, Pen.DIMENSION, Layer.LABEL));
        marks.add(arrow(bend));
        marks.add(Stroke.line(bend, tail, Pen.DIMENSION, Layer.LABEL));
        marks.add(new Stroke(
                List.of(
                        tail.plus(new Vec2(way * TAIL, TAIL * 0.7)),
                        tail,
                        tail.plus(new Vec2(way * TAIL, -TAIL * 0.7))),
                false,
                Pen.DIMENSION,
                Layer.LABEL,
                ""));
        double foot = left + (toRight ? LEAD : 2) + width(leg()) + 1;
        triangle(marks, new Vec2(foot, y), 1);
        if (allRound) {
            marks.add(Arc.circle(bend, 1, Pen.DIMENSION, Layer.LABEL, ""));
            double low = y - DASHED;
            for (double x = left + 1.2; x < left + lineLength() - 1; x += 2) {
                marks.add(Stroke.line(new Vec2(x, low), new Vec2(x + 1.2, low), Pen.DIMENSION, Layer.LABEL));
            }
        } else {
            triangle(marks, new Vec2(foot, y), -1);
        }
        marks.add(text(leg(), new Vec2(foot - 1, y + 0.6), Text.Align.RIGHT));
        Vec2 said = tail.plus(new Vec2(way * (TAIL + 1), -TEXT / 2));
        marks.add(text(words, said, toRight ? Text.Align.LEFT : Text.Align.RIGHT));
        return marks;
    }

    private static Text text(String words, Vec2 at, Text.Align align) {
        return Text.level(words, at, TEXT, align, Layer.LABEL);
    }

    /** The upright leg always stands on the left, whichever way the line runs. */
    private static void triangle(List<Mark> marks, Vec2 foot, int up) {
        marks.add(new Stroke(
                List.of(foot, foot.plus(new Vec2(0, up * LEG)), foot.plus(new Vec2(LEG, 0))),
                true,
                Pen.DIMENSION,
                Layer.LABEL,
                ""));
    }

    private Fill arrow(Vec2 bend) {
        Vec2 way = target.minus(bend).unit();
        Vec2 tail = target.minus(way.times(2.5));
        Vec2 half = way.left().times(0.33);
        return new Fill(List.of(List.of(target, tail.plus(half), tail.minus(half))), 0, Layer.LABEL, "");
    }
}
