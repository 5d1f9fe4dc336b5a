package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.baywright.model.cutting.Cut;
import org.baywright.model.cutting.Layout;
import org.baywright.model.geometry.Vec2;
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
 * One layout drawn to scale along the bar: each piece with its slanted ends, its mark and its length, and the off-cut
 * in grey. The depth of the bar is not to scale, so that narrow sections can be read; slants are.
 *
 * @param layout what is drawn
 * @param marks of the pieces of the first bar cut so, in the order of its cuts
 * @param perMm paper millimetres to a millimetre of bar
 */
record BarStrip(Layout layout, List<String> marks, double perMm) {
    /** Height on paper with its figures. */
    static final double HEIGHT = 13.5;

    private static final double DEEP = 5.2;
    private static final double TEXT = 2.5;
    private static final double OFFCUT = 0.85;

    /** From the top of the strip to the bar: one line of lengths. */
    private static final double ABOVE = 4.4;

    /** Draws with the upper left corner of the strip at a point. */
    List<Mark> draw(Vec2 corner) {
        List<Mark> drawn = new ArrayList<>();
        double top = corner.y() - ABOVE;
        double at = layout.saw().endTrimMm();
        int piece = 0;
        for (Cut cut : layout.cuts()) {
            double lean = cut.mitre().overlapMm();
            for (int i = 0; i < cut.count(); i++) {
                piece(drawn, corner.x(), top, at, cut, lean, marks.get(piece++));
                at += cut.lengthMm() + cut.mitre().kerfMm(layout.saw().kerfMm());
            }
            at += lean;
        }
        offcut(drawn, corner.x(), top, Math.min(at, layout.stock().lengthMm()));
        drawn.add(box(corner.x(), top, 0, layout.stock().lengthMm(), 0, Pen.OUTLINE));
        return drawn;
    }

    private Stroke box(double x, double top, double from, double to, double lean, Pen pen) {
        return new Stroke(ring(x, top, from, to, lean), true, pen, Layer.STEEL, "");
    }

    private List<Vec2> ring(double x, double top, double from, double to, double lean) {
        double low = top - DEEP;
        return List.of(
                new Vec2(x + from * perMm, low),
                new Vec2(x + to * perMm, low),
                new Vec2(x + (to + lean) * perMm, top),
                new Vec2(x + (from + lean) * perMm, top));
    }

    private void piece(List<Mark> drawn, double x, double top, double at, Cut cut, double lean, String mark) {
        drawn.add(box(x, top, at, at + cut.lengthMm(), lean, Pen.VISIBLE));
        double middle = x + (at + (cut.lengthMm() + lean) / 2) * perMm;
        double room = cut.lengthMm() * perMm - 1.2;
        words(drawn, Figure.length(cut.lengthMm()), middle, top + 1.1, room);
        words(drawn, mark, middle, top - DEEP / 2 - TEXT / 2, room);
    }

    /** Figures that do not fit are left to the list beside the strip. */
    private static void words(List<Mark> drawn, String words, double middle, double base, double room) {
        if (!words.isBlank() && Lettering.width(words, TEXT, Face.REGULAR) <= room) {
            drawn.add(Text.level(words, new Vec2(middle, base), TEXT, Text.Align.CENTRE, Layer.LABEL));
        }
    }

    private void offcut(List<Mark> drawn, double x, double top, double from) {
        double to = layout.stock().lengthMm();
        if ((to - from) * perMm > 0.3) {
            drawn.add(new Fill(List.of(ring(x, top, from, to, 0)), OFFCUT, Layer.STEEL, ""));
            double room = (to - from) * perMm - 1.2;
            words(
                    drawn,
                    Figure.length(layout.offcutMm()),
                    x + (from + to) / 2 * perMm,
                    top - DEEP / 2 - TEXT / 2,
                    room);
        }
    }

    /** What is cut, in words: {@code 2 × 3966.4 + 1 × 1800, off-cut 230}. */
    String words() {
        List<String> cuts = new ArrayList<>();
        for (Cut cut : layout.cuts()) {
            String angle = cut.mitre().angleDeg() > 0
                    ? " at " + Figure.angle(cut.mitre().angleDeg())
                    : "";
            cuts.add(cut.count() + " × " + Figure.length(cut.lengthMm()) + angle);
        }
        return String.join(" + ", cuts) + String.format(Locale.ROOT, ", off-cut %s", Figure.length(layout.offcutMm()));
    }
}
