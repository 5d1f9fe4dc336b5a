package org.baywright.render.output;

import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.List;
import org.baywright.model.geometry.Vec2;
import org.baywright.render.mark.Arc;
import org.baywright.render.mark.Bounds;
import org.baywright.render.mark.Fill;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Stroke;
import org.baywright.render.mark.Text;
import org.baywright.render.paper.Face;
import org.baywright.render.paper.Lettering;
import org.baywright.render.paper.Pen;

/**
 * The content stream of one page, in millimetres. Pen, tone and type size are stated only when they change, and lines
 * of one pen that follow each other go out as one path, which keeps large sheets small.
 *
 * <p>@source ISO 32000-1 annex A, operators: q Q cm w d J j m l c h S g f* BT ET Tf Tm Tj
 */
final class PdfContent {
    /** Points in one path; some viewers are slow on very long ones. */
    private static final int LONGEST_PATH = 2000;

    private static final double BLACK = 0;

    private final PdfFonts fonts;
    private final Numbers out = new Numbers();
    private int pathPoints;
    private Pen pen;
    private double grey = BLACK;
    private Face face;
    private double height;

    PdfContent(PdfFonts fonts) {
        this.fonts = fonts;
        out.exact(PdfWriter.POINTS_PER_MM)
                .put("0 0 ")
                .exact(PdfWriter.POINTS_PER_MM)
                .put("0 0 cm 1 j\n");
    }

    /** Adds a mark on top of those before it. */
    void draw(Mark mark) {
        if (mark instanceof Stroke stroke) {
            pen(stroke.pen());
            path(stroke.points(), stroke.closed());
        } else if (mark instanceof Arc arc) {
            pen(arc.pen());
            arc(arc);
        } else if (mark instanceof Fill fill) {
            fill(fill);
        } else {
            text((Text) mark);
        }
    }

    /** All that was drawn. */
    byte[] bytes() {
        endPath();
        return out.toString().getBytes(StandardCharsets.US_ASCII);
    }

    private void pen(Pen next) {
        if (pathPoints > LONGEST_PATH || next != pen) {
            endPath();
        }
        if (next == pen) {
            return;
        }
        if (next.grey() != (pen == null ? BLACK : pen.grey())) {
            out.number(next.grey()).put("G ");
        }
        if (pen == null || next.width() != pen.width()) {
            out.number(next.width()).put("w ");
        }
        if (pen == null || !next.dashes().equals(pen.dashes())) {
            dashes(next.dashes());
        }
        pen = next;
    }

    /** Full lines end round, so that corners made of two lines close; dashes end square, at their true length. */
    private void dashes(List<Double> dashes) {
        out.put("[");
        dashes.forEach(out::number);
        out.put("]0 d ").put(dashes.isEmpty() ? "1 J\n" : "0 J\n");
    }

    private void path(List<Vec2> points, boolean closed) {
        String operator = "m ";
        for (Vec2 point : points) {
            out.point(point).put(operator);
            operator = "l ";
        }
        if (closed) {
            out.put("h ");
        }
        pathPoints += points.size();
    }

    private void endPath() {
        if (pathPoints > 0) {
            out.put("S\n");
            pathPoints = 0;
        }
    }

    /**
     * Pieces of a quarter circle or less, each a cubic curve: its handles are tangent to the arc and 4/3 tan(a/4) radii
     * long for a piece of angle a, which leaves the circle by less than 0.03 % of the radius.
     *
     * <p>@source the usual approximation, from memory; checked in the tests
     */
    private void arc(Arc arc) {
        int pieces = (int) Math.ceil(arc.sweepDeg() / 90);
        double step = arc.sweepDeg() / pieces;
        double handle = 4.0 / 3 * Math.tan(Math.toRadians(step) / 4);
        out.point(arc.at(arc.startDeg())).put("m ");
        for (int i = 0; i < pieces; i++) {
            Vec2 from = arc.at(arc.startDeg() + i * step);
            Vec2 to = arc.at(arc.startDeg() + (i + 1) * step);
            out.point(from.plus(from.minus(arc.centre()).left().times(handle)));
            out.point(to.minus(to.minus(arc.centre()).left().times(handle)));
            out.point(to).put("c ");
        }
        if (arc.sweepDeg() == 360) {
            out.put("h ");
        }
        pathPoints += 1 + 3 * pieces;
    }

    private void fill(Fill fill) {
        endPath();
        grey(fill.grey());
        fill.rings().forEach(ring -> path(ring, true));
        out.put("f*\n");
        pathPoints = 0;
    }

    private void text(Text text) {
        String printable = Lettering.printable(text.content(), text.face());
        if (printable.isBlank()) {
            return;
        }
        endPath();
        grey(BLACK);
        out.put("BT ");
        typeface(text);
        double cos = Math.cos(Math.toRadians(text.turnDeg()));
        double sin = Math.sin(Math.toRadians(text.turnDeg()));
        out.exact(cos).exact(sin).exact(-sin).exact(cos).point(Bounds.start(text));
        byte[] glyphs = fonts.glyphs(printable, text.face());
        out.put("Tm <").put(HexFormat.of().formatHex(glyphs)).put("> Tj ET\n");
    }

    private void typeface(Text text) {
        if (text.face() != face || text.height() != height) {
            face = text.face();
            height = text.height();
            out.put("/").put(PdfFonts.name(face)).put(" ");
            out.exact(Lettering.fontSize(height, face)).put("Tf ");
        }
    }

    private void grey(double next) {
        if (next != grey) {
            grey = next;
            out.number(grey).put("g ");
        }
    }
}
