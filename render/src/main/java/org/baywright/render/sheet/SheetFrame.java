package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import org.baywright.model.geometry.Vec2;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Stroke;
import org.baywright.render.mark.Text;
import org.baywright.render.paper.Paper;
import org.baywright.render.paper.Pen;
import org.locationtech.jts.geom.Envelope;

/**
 * The frame of an A3 sheet with its zones, and the room it leaves for drawing.
 *
 * <p>@source ISO 5457 (from memory): margins 20 and 10, zones of 50 mm from the middle lines, letters upward from I and
 * O left out, numbers to the right
 */
final class SheetFrame {
    /** Height of the band that holds the title block and the notes beside it. */
    static final double BAND = 36;

    /** Room kept clear inside the frame. */
    private static final double CLEAR = 4;

    private static final double ZONE = 50;
    private static final double ZONE_TEXT = 2.5;
    private static final String LETTERS = "ABCDEFGHJKLMN";
    private static final Paper PAPER = Paper.A3;

    private SheetFrame() {}

    /** The space inside the frame lines. */
    static Envelope inside() {
        return new Envelope(
                Paper.LEFT_MARGIN, PAPER.width() - Paper.MARGIN, Paper.MARGIN, PAPER.height() - Paper.MARGIN);
    }

    /** The space above the band. */
    static Envelope aboveBand() {
        Envelope all = inside();
        return new Envelope(all.getMinX(), all.getMaxX(), all.getMinY() + BAND, all.getMaxY());
    }

    /** Where views and tables may go. */
    static Envelope room() {
        Envelope room = aboveBand();
        room.expandBy(-CLEAR);
        return room;
    }

    /** The frame lines and zones. */
    static List<Mark> marks() {
        Envelope in = inside();
        List<Mark> marks = new ArrayList<>();
        marks.add(box(in, Pen.CUT));
        double middleX = (in.getMinX() + in.getMaxX()) / 2;
        double middleY = (in.getMinY() + in.getMaxY()) / 2;
        zones(marks, in.getMinX(), in.getMaxX(), middleX, true);
        zones(marks, in.getMinY(), in.getMaxY(), middleY, false);
        return marks;
    }

    static Stroke box(Envelope e, Pen pen) {
        return new Stroke(
                List.of(
                        new Vec2(e.getMinX(), e.getMinY()),
                        new Vec2(e.getMaxX(), e.getMinY()),
                        new Vec2(e.getMaxX(), e.getMaxY()),
                        new Vec2(e.getMinX(), e.getMaxY())),
                true,
                pen,
                Layer.FRAME,
                "");
    }

    /** Ticks every zone from the middle line outward, and the zone's sign between two ticks. */
    private static void zones(List<Mark> marks, double low, double high, double middle, boolean level) {
        int each = (int) Math.ceil((high - low) / 2 / ZONE);
        for (int i = -each; i < each; i++) {
            double from = Math.max(low, middle + i * ZONE);
            double to = Math.min(high, middle + (i + 1) * ZONE);
            String sign = level ? String.valueOf(i + each + 1) : String.valueOf(LETTERS.charAt(each - 1 - i));
            for (boolean near : new boolean[] {true, false}) {
                if (i > -each) {
                    marks.add(tick(from, level, near, i == 0 ? Pen.CUT : Pen.DIMENSION));
                }
                marks.add(sign(sign, (from + to) / 2, level, near));
            }
        }
    }

    private static Mark tick(double at, boolean level, boolean near, Pen pen) {
        Envelope in = inside();
        double edge = level ? (near ? in.getMinY() : in.getMaxY()) : (near ? in.getMinX() : in.getMaxX());
        double out = edge + (near ? -5 : 5);
        return level
                ? Stroke.line(new Vec2(at, edge), new Vec2(at, out), pen, Layer.FRAME)
                : Stroke.line(new Vec2(edge, at), new Vec2(out, at), pen, Layer.FRAME);
    }

    private static Mark sign(String sign, double at, boolean level, boolean near) {
        Envelope in = inside();
        double edge = level ? (near ? in.getMinY() : in.getMaxY()) : (near ? in.getMinX() : in.getMaxX());
        double middle = edge + (near ? -3.4 : 3.4);
        Vec2 point = level ? new Vec2(at, middle - ZONE_TEXT / 2) : new Vec2(middle, at - ZONE_TEXT / 2);
        return Text.level(sign, point, ZONE_TEXT, Text.Align.CENTRE, Layer.FRAME);
    }
}
