package org.baywright.render.output;

import java.util.ArrayList;
import java.util.List;
import org.baywright.model.geometry.Vec2;
import org.baywright.render.mark.Arc;
import org.baywright.render.mark.Fill;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Stroke;
import org.baywright.render.mark.Text;
import org.baywright.render.paper.Face;
import org.baywright.render.paper.Lettering;
import org.baywright.render.paper.Paper;
import org.baywright.render.paper.Pen;
import org.baywright.render.sheet.Sheet;
import org.baywright.render.sheet.SheetSet;

/** Sheets with every kind of mark. */
final class SampleSheets {
    static final String CAUTION = "Not for construction until certified";

    private SampleSheets() {}

    static SheetSet set() {
        return new SheetSet(
                "Tallow Flat shed", "A. Drafter", "Sample <&> of every mark", List.of(everything(), schedule()));
    }

    static Sheet everything() {
        List<Mark> marks = new ArrayList<>();
        marks.add(rectangle(20, 10, 410, 287, Pen.CUT, ""));
        pens(marks);
        roundThings(marks);
        fills(marks);
        turnedText(marks);
        letters(marks);
        return new Sheet(Paper.A3, "A-01", "Every mark", marks);
    }

    private static Sheet schedule() {
        return new Sheet(
                Paper.A4,
                "A-02",
                "Schedule",
                List.of(
                        rectangle(20, 10, 287, 200, Pen.CUT, ""),
                        new Text("C1", new Vec2(30, 40), 5, Text.Align.LEFT, 0, Face.BOLD, Layer.TABLE, "C1")));
    }

    private static void pens(List<Mark> marks) {
        double y = 270;
        for (Pen pen : Pen.values()) {
            marks.add(Stroke.line(new Vec2(30, y), new Vec2(120, y), pen, Layer.STEEL));
            marks.add(Text.level(
                    pen.name() + " " + pen.width(), new Vec2(125, y - 1.25), 2.5, Text.Align.LEFT, Layer.LABEL));
            y -= 8;
        }
    }

    private static void roundThings(List<Mark> marks) {
        Vec2 centre = new Vec2(230, 240);
        marks.add(Arc.circle(centre, 20, Pen.OUTLINE, Layer.ANCHOR, "AN1"));
        marks.add(new Arc(centre, 25, 350, 100, Pen.VISIBLE, Layer.DIMENSION, ""));
        marks.add(new Arc(centre, 30, 90, 270, Pen.HIDDEN, Layer.DIMENSION, ""));
        marks.add(new Arc(centre, 8, 45, 10, Pen.CUT, Layer.DIMENSION, ""));
    }

    private static void fills(List<Mark> marks) {
        List<Vec2> outer = square(300, 210, 60);
        List<Vec2> inner = square(315, 225, 30);
        marks.add(new Fill(List.of(outer, inner), 0.8, Layer.CONCRETE, "BP1"));
        marks.add(new Fill(List.of(square(322, 232, 16)), 0, Layer.PLATE, "BP1"));
        marks.add(new Stroke(outer, true, Pen.OUTLINE, Layer.PLATE, "BP1"));
    }

    private static void turnedText(List<Mark> marks) {
        Vec2 hub = new Vec2(120, 110);
        for (int turn = 0; turn < 360; turn += 30) {
            double angle = Math.toRadians(turn);
            Vec2 at = hub.plus(new Vec2(Math.cos(angle), Math.sin(angle)).times(12));
            Text text =
                    new Text("Turned " + turn + "° yg", at, 3.5, Text.Align.LEFT, turn, Face.REGULAR, Layer.LABEL, "");
            marks.add(text);
            marks.add(new Stroke(org.baywright.render.mark.Bounds.corners(text), true, Pen.DIMENSION, Layer.LABEL, ""));
        }
    }

    private static void letters(List<Mark> marks) {
        Vec2 right = new Vec2(400, 60);
        Vec2 centre = new Vec2(300, 80);
        marks.add(new Text("Right & <bold>", right, 7, Text.Align.RIGHT, 0, Face.BOLD, Layer.LABEL, "R1"));
        marks.add(Text.level(CAUTION, centre, 2.5, Text.Align.CENTRE, Layer.LABEL));
        marks.add(Text.level(
                "Ø22 ±5 10° m² × – ½ é ā missing: \uD83D\uDE9C", new Vec2(220, 40), 5, Text.Align.LEFT, Layer.LABEL));
        double width = Lettering.width("Office flat 123", 5, Face.REGULAR);
        marks.add(Text.level("Office flat 123", new Vec2(220, 25), 5, Text.Align.LEFT, Layer.LABEL));
        marks.add(Stroke.line(new Vec2(220, 24), new Vec2(220 + width, 24), Pen.DIMENSION, Layer.LABEL));
        marks.add(Stroke.line(new Vec2(215, 30), new Vec2(222, 30), Pen.DIMENSION, Layer.LABEL));
    }

    private static Stroke rectangle(double left, double low, double right, double top, Pen pen, String part) {
        List<Vec2> corners =
                List.of(new Vec2(left, low), new Vec2(right, low), new Vec2(right, top), new Vec2(left, top));
        return new Stroke(corners, true, pen, Layer.FRAME, part);
    }

    private static List<Vec2> square(double left, double low, double side) {
        return List.of(
                new Vec2(left, low),
                new Vec2(left + side, low),
                new Vec2(left + side, low + side),
                new Vec2(left, low + side));
    }
}
