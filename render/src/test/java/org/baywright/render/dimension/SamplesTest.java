package org.baywright.render.dimension;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.baywright.model.geometry.Vec2;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Stroke;
import org.baywright.render.output.PdfWriter;
import org.baywright.render.paper.Paper;
import org.baywright.render.paper.Pen;
import org.baywright.render.paper.Scale;
import org.baywright.render.sheet.Sheet;
import org.baywright.render.sheet.SheetSet;
import org.baywright.render.view.ViewPort;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;

/** Whole sheets of annotation as an author would write them; the pictures go to {@code target/samples}. */
class SamplesTest {
    private static final Envelope FRAME = new Envelope(20, 410, 10, 287);

    private static final List<Sheet> SHEETS = new ArrayList<>();

    @AfterAll
    static void write() throws IOException {
        Path file = Path.of("target", "samples", "annotation.pdf");
        Files.createDirectories(file.getParent());
        try (OutputStream out = Files.newOutputStream(file)) {
            PdfWriter.write(new SheetSet("Annotation", "", "", SHEETS), out);
        }
    }

    private final LabelField field = new LabelField(FRAME);
    private final List<Mark> drawn = new ArrayList<>();

    private Annotations view(Scale scale, Vec2 zero, Envelope model, List<Mark> steel) {
        ViewPort view = new ViewPort(scale, new Vec2(0, 0), zero);
        drawn.addAll(steel);
        field.drawn(steel);
        Vec2 low = view.toPaper(new Vec2(model.getMinX(), model.getMinY()));
        Vec2 high = view.toPaper(new Vec2(model.getMaxX(), model.getMaxY()));
        return new Annotations(field, view, new Envelope(low.x(), high.x(), low.y(), high.y()));
    }

    private static List<String> printed(Annotations a) {
        return a.dimensions().stream().map(Dimension::text).toList();
    }

    private static Mark line(ViewPort view, boolean closed, double... xy) {
        List<Vec2> points = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            points.add(view.toPaper(new Vec2(xy[i], xy[i + 1])));
        }
        return new Stroke(points, closed, Pen.OUTLINE, Layer.STEEL, "");
    }

    private void finish(String name, List<Mark> annotation) {
        List<Mark> all = new ArrayList<>(drawn);
        all.add(new Stroke(TurnedBox.of(FRAME).corners(), true, Pen.CUT, Layer.FRAME, ""));
        all.addAll(annotation);
        SHEETS.add(new Sheet(Paper.A3, "A-0" + (SHEETS.size() + 1), name, all));
        Overlaps.assertNone(annotation, FRAME);
    }

    @Test
    void section() {
        Scale scale = new Scale(50);
        Vec2 zero = new Vec2(140, 90);
        ViewPort v = new ViewPort(scale, new Vec2(0, 0), zero);
        List<Mark> steel = List.of(
                line(v, true, 0, 0, 100, 0, 100, 3966, 0, 3949),
                line(v, true, 9900, 0, 10000, 0, 10000, 3949, 9900, 3966),
                line(v, true, 0, 4000, 5000, 4882, 10000, 4000, 10000, 4200, 5000, 5082, 0, 4200),
                line(v, true, -3900, 0, -4000, 0, -4000, 3400, -3900, 3410),
                line(v, true, -4000, 3450, -10, 3800, -10, 3950, -4000, 3600));
        Annotations a = view(scale, zero, new Envelope(-4000, 10000, 0, 5082), steel);
        a.chainBelow(List.of(-4000.0, -3900.0, 0.0, 100.0, 9900.0, 10000.0), 0)
                .chainBelow(List.of(-4000.0, 0.0, 10000.0), 0)
                .overallBelow(-4000, 10000, 0)
                .chainLeft(List.of(0.0, 3400.0, 3600.0), -4000)
                .levels(
                        Side.RIGHT,
                        List.of(
                                new Level("FFL", 0),
                                new Level("CLEAR UNDER RAFTER", 3966),
                                new Level("EAVE (TOP OF RAFTER STEEL)", 4200),
                                new Level("APEX (TOP OF RAFTER STEEL)", 5081.6),
                                new Level("LEAN-TO EAVE (TOP OF RAFTER STEEL)", 3600)))
                .pitch(new Vec2(0, 4200), new Vec2(5000, 5082))
                .pitch(new Vec2(10000, 4200), new Vec2(5000, 5082))
                .pitch(new Vec2(-4000, 3600), new Vec2(0, 3950))
                .grid(
                        Side.BELOW,
                        List.of(new GridLine("A", -4000), new GridLine("B", 0), new GridLine("C", 10000)),
                        5300)
                .mark(new Vec2(50, 2000), "C1 SHS 100×100×5")
                .mark(new Vec2(9950, 2000), "C1 SHS 100×100×5")
                .mark(new Vec2(2500, 4550), "R1 RHS 200×100×5")
                .mark(new Vec2(-2000, 3700), "LR1 RHS 150×100×4", "cut at 5°")
                .mark(new Vec2(5000, 4980), "Apex plates PL 12, 4 M16 8.8/S")
                .note(new Vec2(0, 4100), "Cap plate PL 12")
                .angle(new Vec2(2500, 4441), new Vec2(4500, 4441), new Vec2(4500, 4793.6), 25);
        List<Mark> marks = new ArrayList<>(a.marks());
        marks.addAll(new ScaleBar(scale, 80).draw(new Vec2(40, 18)));
        finish("section", marks);
        assertTrue(printed(a).containsAll(List.of("100", "9800", "14000", "3400", "200")));
    }

    @Test
    void plan() {
        Scale scale = new Scale(200);
        Vec2 zero = new Vec2(90, 95);
        ViewPort v = new ViewPort(scale, new Vec2(0, 0), zero);
        List<Mark> steel = new ArrayList<>();
        List<Double> ys = new ArrayList<>();
        for (int i = 0; i <= 5; i++) {
            double y = i * 6000;
            ys.add(y);
            steel.add(line(v, true, 0, y, 100, y, 100, y + 100, 0, y + 100));
            steel.add(line(v, true, 11900, y, 12000, y, 12000, y + 100, 11900, y + 100));
        }
        Annotations a = view(scale, zero, new Envelope(0, 12000, 0, 30100), steel);
        a.chainLeft(ys, 0)
                .overallLeft(0, 30000, 0)
                .chainBelow(List.of(0.0, 100.0, 11900.0, 12000.0), 0)
                .overallBelow(0, 12000, 0)
                .running(
                        Side.RIGHT,
                        new Vec2(12000, 0),
                        ys.stream().map(y -> new Vec2(12000, y)).toList())
                .running(
                        Side.ABOVE,
                        new Vec2(0, 30000),
                        List.of(
                                new Vec2(35, 30000),
                                new Vec2(205, 30000),
                                new Vec2(11795, 30000),
                                new Vec2(11965, 30000),
                                new Vec2(12000, 30000)))
                .numberedGrid(Side.LEFT, ys, 12500)
                .diagonal("Diagonal", new Vec2(0, 0), new Vec2(12000, 30000))
                .diagonal("Diagonal", new Vec2(12000, 0), new Vec2(0, 30000));
        Vec2 zero2 = new Vec2(270, 150);
        Scale five = new Scale(5);
        ViewPort w = new ViewPort(five, new Vec2(0, 0), zero2);
        Annotations b = view(
                five,
                zero2,
                new Envelope(0, 240, 0, 240),
                List.of(
                        line(w, true, 0, 0, 240, 0, 240, 240, 0, 240),
                        line(w, true, 70, 70, 170, 70, 170, 170, 70, 170)));
        b.chainBelow(List.of(0.0, 35.0, 205.0, 240.0), 0)
                .overallBelow(0, 240, 0)
                .chainRight(List.of(0.0, 35.0, 205.0, 240.0), 240)
                .overallRight(0, 240, 240)
                .aligned(new Vec2(70, 70), new Vec2(170, 170), new Vec2(-1, 1))
                .holes(new Vec2(205, 205), 4, 22, "for M16 anchors");
        List<Mark> marks = new ArrayList<>(a.marks());
        marks.addAll(b.marks());
        marks.addAll(new ScaleBar(five, 60).draw(new Vec2(270, 30)));
        finish("plan", marks);
    }

    @Test
    void longElevation() {
        Scale scale = new Scale(1000);
        Vec2 zero = new Vec2(60, 200);
        ViewPort v = new ViewPort(scale, new Vec2(0, 0), zero);
        List<Double> equal =
                IntStream.rangeClosed(0, 60).mapToObj(i -> i * 5000.0).toList();
        List<Double> uneven = IntStream.rangeClosed(0, 60)
                .mapToObj(i -> i * 5000.0 + (i % 3) * 400)
                .toList();
        Annotations a = view(
                scale,
                zero,
                new Envelope(0, 300800, 0, 5000),
                List.of(line(v, true, 0, 0, 300800, 0, 300800, 5000, 0, 5000)));
        a.chainAbove(equal, 5000).overallAbove(0, 300000, 5000).numberedGrid(Side.ABOVE, equal, 0);
        a.chainBelow(uneven, 0)
                .overallBelow(0, uneven.get(60), 0)
                .running(
                        Side.BELOW,
                        new Vec2(0, 0),
                        uneven.stream().map(x -> new Vec2(x, 0)).toList());
        finish("long", a.marks());
        assertTrue(printed(a).containsAll(List.of("60 × 5000 = 300000")));
    }

    @Test
    void schedule() {
        List<Row> rows = new ArrayList<>();
        rows.add(Row.heading("Hollow sections, AS/NZS 1163 C350L0"));
        for (int i = 1; i <= 27; i++) {
            rows.add(Row.of(
                    "C" + i,
                    "Column, with cap and base plate welded on, holes for girt cleats",
                    "SHS 100×100×5",
                    "" + i,
                    Figure.length(3966.4 + i),
                    "57.1"));
        }
        rows.add(Row.total("", "Total", "", "820", "", "46822.0"));
        Table table = new Table(
                List.of(
                        Column.words("Mark"),
                        Column.words("Part"),
                        Column.words("Section"),
                        Column.numbers("Qty"),
                        Column.numbers("Length mm"),
                        Column.numbers("Mass kg")),
                rows,
                120);
        List<Mark> marks = new ArrayList<>();
        double x = 24;
        for (TablePart part : table.pages(215)) {
            marks.addAll(part.draw(new Vec2(x, 280)));
            x += part.width() + 8;
        }
        List<Paragraph> notes = new ArrayList<>(List.of(Paragraph.heading("Notes")));
        notes.addAll(Paragraph.numbered(List.of(
                "Not for construction until certified by a licensed engineer; local codes and consent documents prevail.",
                "Lengths are tip to tip: the long point of both cuts, before any allowance for the saw.")));
        notes.add(Paragraph.bullet("Verify on site before cutting."));
        marks.addAll(Notes.of(notes, 120).draw(new Vec2(24, 55)));
        finish("schedule", marks);
    }

    @Test
    void crowd() {
        ViewPort paper = new ViewPort(new Scale(1), new Vec2(0, 0), new Vec2(0, 0));
        Annotations a = new Annotations(field, paper, new Envelope(100, 300, 100, 200));
        for (int i = 0; i < 60; i++) {
            a.mark(new Vec2(120 + (i % 10) * 18, 110 + (i / 10) * 15), "C" + i + " SHS 100×100×5");
        }
        finish("crowd", a.marks());
    }
}
