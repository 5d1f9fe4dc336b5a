package org.baywright.render.dimension;

import java.util.ArrayList;
import java.util.List;
import org.baywright.model.geometry.Vec2;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Text;
import org.baywright.render.paper.Face;

/**
 * A row of dimensions laid out in the axes of its rail, the dimension line at v = 0. Where the row stands off the view
 * is settled afterwards, so everything here is relative.
 */
final class RailPlan {
    private final List<List<Vec2>> lines = new ArrayList<>();
    private final List<Vec2> strokes = new ArrayList<>();
    private final List<Vec2[]> arrows = new ArrayList<>();
    private final List<Vec2> rings = new ArrayList<>();
    private final List<Words> words = new ArrayList<>();
    private double from = Double.POSITIVE_INFINITY;
    private double to = Double.NEGATIVE_INFINITY;

    private record Words(String content, Vec2 at, Text.Align align, boolean across) {}

    /** The dimension line itself; its extent is what the row claims. */
    void spine(double s0, double s1) {
        line(new Vec2(s0, 0), new Vec2(s1, 0));
        from = Math.min(from, s0);
        to = Math.max(to, s1);
    }

    void line(Vec2... points) {
        lines.add(List.of(points));
    }

    /** An oblique stroke where a dimension ends. */
    void stroke(double s) {
        strokes.add(new Vec2(s, 0));
    }

    void arrow(double s, int direction) {
        arrows.add(new Vec2[] {new Vec2(s, 0), new Vec2(direction, 0)});
    }

    /** The circle that marks the datum of running dimensions. */
    void origin(double s) {
        rings.add(new Vec2(s, 0));
    }

    void words(String content, Vec2 at, Text.Align align) {
        words.add(new Words(content, at, align, false));
    }

    /** Words that read square to the row. */
    void wordsAcross(String content, Vec2 at, Text.Align align) {
        words.add(new Words(content, at, align, true));
    }

    /** The paper the line takes when it stands at an offset. */
    TurnedBox band(Rail rail, double v) {
        double half = Drafting.PASS - 0.1;
        return new TurnedBox(List.of(
                rail.at(from - half, v - half),
                rail.at(to + half, v - half),
                rail.at(to + half, v + half),
                rail.at(from - half, v + half)));
    }

    List<Text> texts(Rail rail, double v) {
        List<Text> texts = new ArrayList<>();
        for (Words w : words) {
            texts.add(new Text(
                    w.content,
                    rail.at(w.at.x(), w.at.y() + v),
                    Drafting.TEXT,
                    w.align,
                    w.across ? rail.acrossDeg() : rail.turnDeg(),
                    Face.REGULAR,
                    Layer.DIMENSION,
                    ""));
        }
        return texts;
    }

    List<Mark> marks(Rail rail, double v) {
        List<Mark> marks = new ArrayList<>();
        lines.forEach(l -> marks.add(Ink.thin(
                l.stream().map(p -> rail.at(p.x(), p.y() + v)).toList(), Layer.DIMENSION)));
        strokes.forEach(p -> marks.add(oblique(rail, p.x(), v)));
        rings.forEach(p -> marks.add(Ink.ring(rail.at(p.x(), v), 1, Layer.DIMENSION)));
        arrows.forEach(a ->
                marks.add(Ink.arrow(rail.at(a[0].x(), v), rail.along().times(a[1].x()), Layer.DIMENSION)));
        return marks;
    }

    /** The stroke leans the way a reader leans a slash: up to the right. */
    static Mark oblique(Rail rail, double s, double v) {
        double half = 1.1;
        return Ink.thin(rail.at(s - half, v - half), rail.at(s + half, v + half), Layer.DIMENSION);
    }
}
