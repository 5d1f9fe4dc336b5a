package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.setout.BarGrid.Meeting;
import org.baywright.render.mark.Arc;
import org.baywright.render.mark.Fill;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Stroke;
import org.baywright.render.paper.Pen;

/** How a hole lies to the bars, so that it reads in black and white: open circle, half black, or crossed out. */
final class HoleSign {
    /** Said wherever the signs are used. */
    static final String LEGEND = "Open circle: clear of the bars. Half black: close. Crossed: it hits a bar.";

    private static final double RADIUS = 1.7;
    private static final int STEPS = 12;

    private HoleSign() {}

    static List<Mark> marks(Meeting meeting, Vec2 at) {
        Pen pen = meeting == Meeting.HIT ? Pen.CUT : Pen.VISIBLE;
        List<Mark> marks = new ArrayList<>();
        if (meeting == Meeting.CLOSE) {
            marks.add(new Fill(List.of(half(at)), 0, Layer.ANCHOR, ""));
        }
        if (meeting == Meeting.HIT) {
            double arm = 1.5 * RADIUS;
            marks.add(Stroke.line(at.plus(new Vec2(-arm, -arm)), at.plus(new Vec2(arm, arm)), pen, Layer.ANCHOR));
            marks.add(Stroke.line(at.plus(new Vec2(-arm, arm)), at.plus(new Vec2(arm, -arm)), pen, Layer.ANCHOR));
        }
        marks.add(Arc.circle(at, RADIUS, pen, Layer.ANCHOR, ""));
        return marks;
    }

    private static List<Vec2> half(Vec2 at) {
        List<Vec2> ring = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            double angle = Math.PI * i / STEPS - Math.PI / 2;
            ring.add(at.plus(new Vec2(Math.cos(angle), Math.sin(angle)).times(RADIUS)));
        }
        return ring;
    }
}
