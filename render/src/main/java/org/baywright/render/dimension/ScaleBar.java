package org.baywright.render.dimension;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.baywright.model.geometry.Vec2;
import org.baywright.render.mark.Fill;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Stroke;
import org.baywright.render.mark.Text;
import org.baywright.render.paper.Pen;
import org.baywright.render.paper.Scale;

/**
 * A bar to read lengths from when a sheet was copied larger or smaller: divisions of 1, 2 or 5 in two tones, metres.
 *
 * @param scale of the view it belongs to
 * @param longest it may be on paper, mm
 */
public record ScaleBar(Scale scale, double longest) {
    private static final double THICK = 1.6;
    private static final int DIVISIONS = 5;
    private static final double TICK = 0.8;

    /** Checks that there is room for a bar. */
    public ScaleBar {
        if (!(longest >= 20)) {
            throw new IllegalArgumentException("a scale bar needs 20 mm of paper at least");
        }
    }

    /** One division in the building, mm: the largest of 1, 2, 5 times a power of ten that fits five times. */
    public double divisionMm() {
        double most = longest * scale.n() / DIVISIONS;
        double decade = Math.pow(10, Math.floor(Math.log10(most) + 1e-9));
        for (int step : new int[] {5, 2}) {
            if (step * decade <= most * (1 + 1e-9)) {
                return step * decade;
            }
        }
        return decade;
    }

    /** Length of the bar on paper, mm. */
    public double length() {
        return scale.toPaper(divisionMm() * DIVISIONS);
    }

    /** Height of bar and figures on paper, mm. */
    public static double height() {
        return THICK + TICK + 0.8 + Drafting.line();
    }

    /** Draws with the zero at the lower left corner. */
    public List<Mark> draw(Vec2 lowerLeft) {
        double step = scale.toPaper(divisionMm());
        boolean roomy = widestFigure() + Drafting.ASIDE <= step;
        List<Mark> marks = new ArrayList<>();
        for (int i = 0; i < DIVISIONS; i++) {
            List<Vec2> box = box(lowerLeft.plus(new Vec2(i * step, 0)), step);
            marks.add(new Fill(List.of(box), i % 2 == 0 ? 0 : 1, Layer.FRAME, ""));
            marks.add(new Stroke(box, true, Pen.DIMENSION, Layer.FRAME, ""));
        }
        for (int i = 0; i <= DIVISIONS; i++) {
            Vec2 foot = lowerLeft.plus(new Vec2(i * step, THICK));
            marks.add(Ink.thin(foot, foot.plus(new Vec2(0, TICK)), Layer.FRAME));
            if (i == 0 || i == DIVISIONS || roomy) {
                Vec2 at = foot.plus(new Vec2(0, TICK + 0.8));
                marks.add(Text.level(figure(i), at, Drafting.TEXT, Text.Align.CENTRE, Layer.FRAME));
            }
        }
        return marks;
    }

    private String figure(int division) {
        return Figure.metres(division * divisionMm()) + (division == DIVISIONS ? " m" : "");
    }

    private double widestFigure() {
        return IntStream.rangeClosed(0, DIVISIONS)
                .mapToDouble(i -> Drafting.width(figure(i)))
                .max()
                .orElseThrow();
    }

    private static List<Vec2> box(Vec2 corner, double width) {
        return List.of(
                corner,
                corner.plus(new Vec2(width, 0)),
                corner.plus(new Vec2(width, THICK)),
                corner.plus(new Vec2(0, THICK)));
    }
}
