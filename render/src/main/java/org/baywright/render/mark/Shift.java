package org.baywright.render.mark;

import java.util.Collection;
import java.util.List;
import org.baywright.model.geometry.Vec2;

/** Moves marks over the paper, so that a drawing can be made first and placed once its size is known. */
public final class Shift {
    private Shift() {}

    /** The same marks a step further. */
    public static List<Mark> by(Vec2 step, Collection<? extends Mark> marks) {
        return marks.stream().map(mark -> by(step, mark)).toList();
    }

    private static Mark by(Vec2 step, Mark mark) {
        if (mark instanceof Stroke s) {
            return new Stroke(points(step, s.points()), s.closed(), s.pen(), s.layer(), s.part());
        }
        if (mark instanceof Arc a) {
            return new Arc(a.centre().plus(step), a.radius(), a.startDeg(), a.sweepDeg(), a.pen(), a.layer(), a.part());
        }
        if (mark instanceof Fill f) {
            return new Fill(f.rings().stream().map(ring -> points(step, ring)).toList(), f.grey(), f.layer(), f.part());
        }
        Text t = (Text) mark;
        return new Text(
                t.content(), t.at().plus(step), t.height(), t.align(), t.turnDeg(), t.face(), t.layer(), t.part());
    }

    private static List<Vec2> points(Vec2 step, List<Vec2> points) {
        return points.stream().map(p -> p.plus(step)).toList();
    }
}
