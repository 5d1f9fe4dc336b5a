package org.baywright.render.sheet;

import java.util.List;
import java.util.Optional;
import org.baywright.model.geometry.Vec2;
import org.baywright.render.mark.Arc;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Stroke;
import org.baywright.render.mark.Text;
import org.baywright.render.paper.Face;
import org.baywright.render.paper.Pen;
import org.locationtech.jts.geom.Envelope;

/**
 * Where a detail is drawn: a bubble with its number over the number of its sheet.
 *
 * @param detail number of the detail, from 1
 * @param sheet number of the sheet it is on
 */
record Callout(int detail, String sheet) {
    /** Of the bubble, paper mm. */
    static final double RADIUS = 5.5;

    private static final double TEXT = 2.5;

    /** From the place to the middle of its bubble at least, and how much further each time that is taken. */
    private static final double NEAR = 17;

    private static final double FURTHER = 6;
    private static final double FURTHEST = 150;

    /** No further off than this for a place without lines. */
    private static final double OFF_LINES = 42;

    private static final int WAYS = 16;

    /** The bubble about a point of the paper. */
    List<Mark> marks(Vec2 centre) {
        return List.of(
                Arc.circle(centre, RADIUS, Pen.VISIBLE, Layer.LABEL, ""),
                Stroke.line(
                        centre.minus(new Vec2(RADIUS, 0)), centre.plus(new Vec2(RADIUS, 0)), Pen.VISIBLE, Layer.LABEL),
                words(String.valueOf(detail), centre.plus(new Vec2(0, 1)), Face.BOLD),
                words(sheet, centre.minus(new Vec2(0, 1 + TEXT)), Face.REGULAR));
    }

    /** Draws the bubble with a line to a place of the paper: the way wished for, or else the nearest that is free. */
    void point(PlacedView view, Vec2 at, Vec2 wished) {
        room(view, at, wished).ifPresent(off -> {
            Vec2 centre = at.plus(off);
            Vec2 way = off.unit();
            view.draw(marks(centre));
            view.keepClear(box(centre));
            view.draw(List.of(
                    Stroke.line(at.plus(way.times(1.5)), centre.minus(way.times(RADIUS)), Pen.DIMENSION, Layer.LABEL)));
        });
    }

    /**
     * From a place of a view to room for its bubble, off lines where there is some not far away; none on a sheet that is
     * full, which then goes without.
     */
    private static Optional<Vec2> room(PlacedView view, Vec2 at, Vec2 wished) {
        return room(view, at, wished, OFF_LINES, true).or(() -> room(view, at, wished, FURTHEST, false));
    }

    private static Optional<Vec2> room(PlacedView view, Vec2 at, Vec2 wished, double furthest, boolean offLines) {
        for (double off = NEAR; off < furthest; off += FURTHER) {
            for (int i = 0; i < WAYS; i++) {
                Vec2 way = turned(wished.unit(), (i % 2 == 0 ? i : -i - 1) / 2);
                Envelope box = box(at.plus(way.times(off)));
                if (view.isFree(box) && !(offLines && view.linesThrough(box) > 0)) {
                    return Optional.of(way.times(off));
                }
            }
        }
        return Optional.empty();
    }

    private static Vec2 turned(Vec2 way, int steps) {
        double angle = 2 * Math.PI * steps / WAYS;
        double cos = Math.cos(angle);
        double sin = Math.sin(angle);
        return new Vec2(way.x() * cos - way.y() * sin, way.x() * sin + way.y() * cos);
    }

    private static Envelope box(Vec2 centre) {
        return new Envelope(centre.x() - RADIUS, centre.x() + RADIUS, centre.y() - RADIUS, centre.y() + RADIUS);
    }

    private static Text words(String words, Vec2 at, Face face) {
        return new Text(words, at, TEXT, Text.Align.CENTRE, 0, face, Layer.LABEL, "");
    }
}
