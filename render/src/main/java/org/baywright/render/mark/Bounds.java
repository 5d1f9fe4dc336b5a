package org.baywright.render.mark;

import java.util.Collection;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.baywright.model.geometry.Vec2;
import org.baywright.render.paper.Lettering;
import org.baywright.render.paper.Pen;
import org.locationtech.jts.geom.Envelope;

/** How much paper marks take up, the width of the pen included. */
public final class Bounds {
    private Bounds() {}

    /** The upright box round a mark, paper mm. */
    public static Envelope of(Mark mark) {
        if (mark instanceof Stroke stroke) {
            return widened(round(stroke.points().stream()), stroke.pen());
        }
        if (mark instanceof Arc arc) {
            return widened(round(turningPoints(arc)), arc.pen());
        }
        if (mark instanceof Fill fill) {
            return round(fill.rings().stream().flatMap(List::stream));
        }
        return round(corners((Text) mark).stream());
    }

    /** The upright box round several marks; null-envelope (JTS) when there are none. */
    public static Envelope of(Collection<? extends Mark> marks) {
        Envelope all = new Envelope();
        marks.forEach(mark -> all.expandToInclude(of(mark)));
        return all;
    }

    /**
     * The corners of a text's own box, which turns with it: from the left below the baseline, anticlockwise as one
     * reads. The box has the height of a line of this lettering whatever the letters are.
     */
    public static List<Vec2> corners(Text text) {
        Vec2 along = direction(text.turnDeg());
        Vec2 start = start(text);
        Vec2 end = start.plus(along.times(Lettering.width(text.content(), text.height(), text.face())));
        Vec2 up = along.left().times(Lettering.ascent(text.height(), text.face()));
        Vec2 down = along.left().times(-Lettering.descent(text.height(), text.face()));
        return List.of(start.plus(down), end.plus(down), end.plus(up), start.plus(up));
    }

    /** Where the first letter stands on the baseline, whatever the alignment. */
    public static Vec2 start(Text text) {
        double width = Lettering.width(text.content(), text.height(), text.face());
        double back = switch (text.align()) {
            case LEFT -> 0;
            case CENTRE -> width / 2;
            case RIGHT -> width;
        };
        return text.at().minus(direction(text.turnDeg()).times(back));
    }

    /** Both ends of an arc and the points in between where it turns back in x or y. */
    private static Stream<Vec2> turningPoints(Arc arc) {
        double end = arc.startDeg() + arc.sweepDeg();
        double firstQuarter = Math.ceil(arc.startDeg() / 90) * 90;
        DoubleStream quarters = DoubleStream.iterate(firstQuarter, a -> a < end, a -> a + 90);
        return DoubleStream.concat(quarters, DoubleStream.of(arc.startDeg(), end))
                .mapToObj(arc::at);
    }

    private static Vec2 direction(double deg) {
        return new Vec2(Math.cos(Math.toRadians(deg)), Math.sin(Math.toRadians(deg)));
    }

    private static Envelope round(Stream<Vec2> points) {
        Envelope box = new Envelope();
        points.forEach(p -> box.expandToInclude(p.x(), p.y()));
        return box;
    }

    private static Envelope widened(Envelope box, Pen pen) {
        box.expandBy(pen.width() / 2);
        return box;
    }
}
