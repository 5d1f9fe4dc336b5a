package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.nesting.End;
import org.baywright.model.nesting.Laid;
import org.baywright.model.nesting.LaidBar;
import org.baywright.model.nesting.Turn;
import org.baywright.render.dimension.Figure;
import org.baywright.render.mark.Fill;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Stroke;
import org.baywright.render.mark.Text;
import org.baywright.render.paper.Face;
import org.baywright.render.paper.Lettering;
import org.baywright.render.paper.Pen;

/**
 * Bars cut alike, drawn to scale along the bar: each piece with its slanted ends, its mark and its length, the angle at
 * each slanted cut, and the off-cut in grey. The depth of the bar is not to scale, so that narrow sections can be read;
 * what slants take along the bar is.
 *
 * @param bar what is drawn
 * @param perMm paper millimetres to a millimetre of bar
 */
record BarStrip(LaidBar bar, double perMm) {
    /** Height on paper with its figures, without the words below. */
    static final double HEIGHT = 10.6;

    private static final double DEEP = 5.2;
    private static final double TEXT = 2.5;
    private static final double OFFCUT = 0.85;
    private static final double SLANTED = 1e-6;
    private static final double LEAST_FOR_ANGLES = 20;

    /** From the top of the strip to the bar: one line of lengths. */
    private static final double ABOVE = 4.4;

    /** Draws with the upper left corner of the strip at a point. */
    List<Mark> draw(Vec2 corner) {
        List<Mark> drawn = new ArrayList<>();
        double top = corner.y() - ABOVE;
        for (int i = 0; i < bar.pieces().size(); i++) {
            piece(drawn, corner.x(), top, i);
        }
        offcut(drawn, corner.x(), top);
        double end = corner.x() + bar.stock().lengthMm() * perMm;
        drawn.add(ring(corner.x(), corner.x(), end, end, top, Pen.OUTLINE));
        return drawn;
    }

    private static Stroke ring(
            double lowLeft, double highLeft, double lowRight, double highRight, double top, Pen pen) {
        return new Stroke(corners(lowLeft, highLeft, lowRight, highRight, top), true, pen, Layer.STEEL, "");
    }

    private static List<Vec2> corners(double lowLeft, double highLeft, double lowRight, double highRight, double top) {
        double low = top - DEEP;
        return List.of(
                new Vec2(lowLeft, low), new Vec2(lowRight, low), new Vec2(highRight, top), new Vec2(highLeft, top));
    }

    private void piece(List<Mark> drawn, double x, double top, int i) {
        Laid laid = bar.pieces().get(i);
        List<Vec2> outline = laid.outline();
        drawn.add(ring(
                x + outline.get(0).x() * perMm,
                x + outline.get(3).x() * perMm,
                x + outline.get(1).x() * perMm,
                x + outline.get(2).x() * perMm,
                top,
                Pen.VISIBLE));
        double middle = x + (laid.atMm() + laid.toMm()) / 2 * perMm;
        double shortest = Math.min(
                outline.get(1).x() - outline.get(0).x(),
                outline.get(2).x() - outline.get(3).x());
        double room = shortest * perMm - 1.2;
        double beside = 0.6;
        if (room > LEAST_FOR_ANGLES) {
            boolean shared = i > 0 && bar.pieces().get(i - 1).right().shares(laid.left());
            double left = shared ? 0 : angle(drawn, x, top, laid.left(), laid.atMm(), 1);
            beside += Math.max(left, angle(drawn, x, top, laid.right(), laid.toMm(), -1));
        }
        double between = laid.blank().middleMm() * perMm - 2 * beside;
        words(drawn, Figure.length(laid.blank().tipMm()), middle, top + 1.1, between);
        words(drawn, laid.blank().mark(), middle, top - DEEP / 2 - TEXT / 2, room);
    }

    /** The angle over a slanted end, on the piece's own side of it; how much of the line of lengths it takes. */
    private double angle(List<Mark> drawn, double x, double top, End end, double at, int inward) {
        if (Math.abs(end.slope()) < SLANTED) {
            return 0;
        }
        String words = Figure.angle(end.angleDeg());
        double setback = end.setbackMm() * perMm;
        double from = x + at * perMm + inward * (setback + 0.6);
        Text.Align align = inward > 0 ? Text.Align.LEFT : Text.Align.RIGHT;
        drawn.add(Text.level(words, new Vec2(from, top + 1.1), TEXT, align, Layer.LABEL));
        return setback + 0.6 + Lettering.width(words, TEXT, Face.REGULAR);
    }

    /** Figures that do not fit are left to the words below the strip. */
    private static void words(List<Mark> drawn, String words, double middle, double base, double room) {
        if (!words.isBlank() && Lettering.width(words, TEXT, Face.REGULAR) <= room) {
            drawn.add(Text.level(words, new Vec2(middle, base), TEXT, Text.Align.CENTRE, Layer.LABEL));
        }
    }

    private void offcut(List<Mark> drawn, double x, double top) {
        double to = bar.stock().lengthMm();
        Laid last = bar.pieces().get(bar.pieces().size() - 1);
        double kerf = last.right().kerfMm(bar.saw().kerfMm());
        double lean = last.right().slope() * last.blank().depthMm() / 2;
        double low = last.toMm() + kerf - lean;
        double high = last.toMm() + kerf + lean;
        if ((to - Math.max(low, high)) * perMm > 0.3) {
            List<Vec2> rest = corners(x + low * perMm, x + high * perMm, x + to * perMm, x + to * perMm, top);
            drawn.add(new Fill(List.of(rest), OFFCUT, Layer.STEEL, ""));
            double room = (to - Math.max(low, high)) * perMm - 1.2;
            double middle = x + (Math.max(low, high) + to) / 2 * perMm;
            words(drawn, Figure.length(bar.offcutMm()), middle, top - DEEP / 2 - TEXT / 2, room);
        }
    }

    /**
     * What is cut, from the left: {@code C1 3966.4 | 10° | C1 3966.4 end for end | off-cut 51}; equal pieces in a row are
     * counted.
     */
    String words() {
        List<String> steps = new ArrayList<>();
        int n = 0;
        for (int i = 0; i < bar.pieces().size(); i++) {
            n++;
            boolean goesOn = i + 1 < bar.pieces().size() && name(i).equals(name(i + 1)) && cut(i).isEmpty();
            if (!goesOn) {
                steps.add((n > 1 ? n + " × " : "") + name(i));
                n = 0;
                if (!cut(i).isEmpty()) {
                    steps.add(cut(i));
                }
            }
        }
        steps.add(String.format(Locale.ROOT, "off-cut %s", Figure.length(bar.offcutMm())));
        return String.join(" | ", steps);
    }

    private String name(int i) {
        Laid laid = bar.pieces().get(i);
        String mark = laid.blank().mark().isEmpty() ? "" : laid.blank().mark() + " ";
        String turn = laid.turn() == Turn.AS_DRAWN ? "" : " " + laid.turn().label();
        return mark + Figure.length(laid.blank().tipMm()) + turn;
    }

    /** The slanted cut or cuts behind a piece; empty when it is one square cut. */
    private String cut(int i) {
        End right = bar.pieces().get(i).right();
        if (i + 1 == bar.pieces().size()) {
            return Math.abs(right.slope()) < SLANTED ? "" : Figure.angle(right.angleDeg());
        }
        End left = bar.pieces().get(i + 1).left();
        if (right.shares(left)) {
            return Math.abs(right.slope()) < SLANTED ? "" : Figure.angle(right.angleDeg());
        }
        return angle(right) + " and " + angle(left);
    }

    private static String angle(End end) {
        return Math.abs(end.slope()) < SLANTED ? "square" : Figure.angle(end.angleDeg());
    }
}
