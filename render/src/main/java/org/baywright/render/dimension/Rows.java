package org.baywright.render.dimension;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.baywright.model.geometry.Vec2;
import org.baywright.render.mark.Bounds;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Text;
import org.locationtech.jts.geom.Envelope;

/**
 * Finds how far off the view a row of dimensions can stand: at the first row that is free, each further one a row
 * pitch on, and closer steps only when the frame leaves no such row.
 */
final class Rows {
    private static final double CLOSEST = 4;
    private static final double FINE_STEP = 1;

    /** Rows further off than these belong to nothing within a detail. */
    private static final int MOST_ROWS = 3;

    private final LabelField field;

    Rows(LabelField field) {
        this.field = field;
    }

    /** The row drawn where it is free and its figures stay on some paper, else nothing. */
    Optional<Ink> placeWithin(Rail rail, RailPlan plan, List<Vec2> pointsOnPaper, Envelope paper) {
        for (double off = Drafting.FIRST_ROW; off > CLOSEST; off -= FINE_STEP) {
            if (isWithin(rail, plan, off, paper)) {
                return Optional.of(place(rail, plan, pointsOnPaper, OptionalDouble.of(off)));
            }
        }
        return DoubleStream.iterate(Drafting.FIRST_ROW, off -> off + Drafting.ROW)
                .limit(MOST_ROWS)
                .filter(off -> isWithin(rail, plan, off, paper))
                .mapToObj(off -> place(rail, plan, pointsOnPaper, OptionalDouble.of(off)))
                .findFirst();
    }

    private boolean isWithin(Rail rail, RailPlan plan, double off, Envelope paper) {
        double v = rail.outSign() * off;
        return isFree(rail, plan, v)
                && plan.texts(rail, v).stream().map(Bounds::of).allMatch(paper::covers);
    }

    /** The row drawn, with an extension line from each point; its paper is taken. */
    Ink place(Rail rail, RailPlan plan, List<Vec2> pointsOnPaper) {
        return place(rail, plan, pointsOnPaper, freeOffset(rail, plan));
    }

    private Ink place(Rail rail, RailPlan plan, List<Vec2> pointsOnPaper, OptionalDouble off) {
        double v = rail.outSign() * off.orElse(Drafting.FIRST_ROW);
        List<Mark> lines = new ArrayList<>(extensions(rail, v, pointsOnPaper));
        lines.addAll(plan.marks(rail, v));
        List<Text> texts = plan.texts(rail, v);
        Ink ink = off.isPresent() ? new Ink(lines, texts) : onLeaders(lines, texts);
        field.obstacle(plan.band(rail, v));
        field.take(ink);
        return ink;
    }

    private OptionalDouble freeOffset(Rail rail, RailPlan plan) {
        OptionalDouble row = firstFree(rail, plan, Drafting.FIRST_ROW, Drafting.ROW);
        return row.isPresent() ? row : firstFree(rail, plan, CLOSEST, FINE_STEP);
    }

    private OptionalDouble firstFree(Rail rail, RailPlan plan, double first, double step) {
        double frame = Math.hypot(field.frame().getWidth(), field.frame().getHeight());
        for (double off = first; off < frame; off += step) {
            double v = rail.outSign() * off;
            if (isFree(rail, plan, v)) {
                return OptionalDouble.of(off);
            }
        }
        return OptionalDouble.empty();
    }

    private boolean isFree(Rail rail, RailPlan plan, double v) {
        return field.free(plan.band(rail, v))
                && plan.texts(rail, v).stream().map(TurnedBox::of).allMatch(field::free);
    }

    private static List<Mark> extensions(Rail rail, double v, List<Vec2> points) {
        List<Mark> lines = new ArrayList<>();
        for (Vec2 point : points) {
            Vec2 p = rail.of(point);
            double start = p.y() + rail.outSign() * Drafting.OFF;
            double end = v + rail.outSign() * Drafting.PASS;
            if ((end - start) * rail.outSign() > 0) {
                lines.add(Ink.thin(rail.at(p.x(), start), rail.at(p.x(), end), Layer.DIMENSION));
            }
        }
        return lines;
    }

    /** No row is free: the line stays at the first row and each text finds its own place. */
    private Ink onLeaders(List<Mark> lines, List<Text> texts) {
        List<Mark> marks = new ArrayList<>(lines);
        for (Text text : texts) {
            marks.addAll(field.place(Label.of(text.at(), Label.Pointer.DOT, text.content()))
                    .marks());
        }
        return Ink.of(marks);
    }
}
