package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.baywright.model.definition.Anchor;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.parts.Hole;
import org.baywright.model.parts.Part;
import org.baywright.render.dimension.Annotations;
import org.baywright.render.dimension.Figure;
import org.baywright.render.dimension.Notes;
import org.baywright.render.dimension.Paragraph;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Stroke;
import org.baywright.render.mark.Text;
import org.baywright.render.paper.Face;
import org.baywright.render.paper.Lettering;
import org.baywright.render.paper.Paper;
import org.baywright.render.paper.Pen;
import org.baywright.render.paper.Scale;
import org.baywright.render.view.ViewLine;
import org.baywright.render.view.ViewPort;
import org.baywright.render.view.Window;
import org.locationtech.jts.geom.Envelope;

/**
 * A base plate at full size, to lay on the floor and drill through: on one sheet of A4 or A3 if it fits, else on several
 * of A3 that overlap and are laid on each other by their register marks.
 *
 * <pre>
 *   | +-------------+      100 mm upright on the left, 100 mm level at the foot,
 *   | |  o  :    o  |      beside the words
 *   | |     :       |
 *   | +-------------+
 *   |-------|  words
 * </pre>
 *
 * @param plate seen from above
 * @param outline what stands on it
 * @param anchor what is drilled for
 */
record Template(Part plate, PlateOutline outline, Anchor anchor) {
    /** Length of the check scales, mm. */
    static final double CHECK = 100;

    /** What one sheet repeats of its neighbour, mm. */
    static final double OVERLAP = 20;

    /** Printers leave this much of the paper white. Common practice, no source. */
    private static final double MARGIN = 10;

    private static final double FOOT = 26;
    private static final double BESIDE = 14;

    /** Round the plate, for the ends of its lines. */
    private static final double ROUND = 5;

    private static final double TEXT = 2.5;
    private static final int CIRCLE = 72;
    private static final String STRING_WORDS = "outside face, string line";

    private record Line(ViewLine line, Pen pen) {}

    /** The sheets of this template, its number before those of single sheets. */
    List<Sheet> sheets(String number) {
        Envelope all = plateBox();
        all.expandBy(ROUND);
        for (Paper paper : List.of(Paper.A4, Paper.A3)) {
            Envelope room = room(paper);
            if (all.getWidth() <= room.getWidth() && all.getHeight() <= room.getHeight()) {
                return List.of(sheet(paper, number, "", all, new boolean[4]));
            }
        }
        return tiles(number, all);
    }

    private List<Sheet> tiles(String number, Envelope all) {
        Envelope room = room(Paper.A3);
        int across = count(all.getWidth(), room.getWidth());
        int up = count(all.getHeight(), room.getHeight());
        List<Sheet> sheets = new ArrayList<>();
        for (int row = 0; row < up; row++) {
            for (int column = 0; column < across; column++) {
                double x = all.getMinX() + column * (room.getWidth() - OVERLAP);
                double y = all.getMaxY() - row * (room.getHeight() - OVERLAP);
                Envelope window = new Envelope(x, x + room.getWidth(), y - room.getHeight(), y);
                String name = String.valueOf((char) ('A' + row)) + (column + 1);
                boolean[] joins = {column > 0, column < across - 1, row > 0, row < up - 1};
                sheets.add(sheet(Paper.A3, number + "." + name, ", sheet " + name, window, joins));
            }
        }
        return sheets;
    }

    private static int count(double length, double room) {
        return (int) Math.max(1, Math.ceil((length - OVERLAP) / (room - OVERLAP) - 1e-9));
    }

    private static Envelope room(Paper paper) {
        return new Envelope(MARGIN + BESIDE, paper.width() - MARGIN, MARGIN + FOOT, paper.height() - MARGIN);
    }

    private Envelope plateBox() {
        Envelope box = new Envelope();
        plate.solid().profile().outline().forEach(p -> box.expandToInclude(p.x(), p.y()));
        return box;
    }

    private Sheet sheet(Paper paper, String number, String tile, Envelope window, boolean[] joins) {
        Envelope room = room(paper);
        ViewPort port = ViewPort.centred(window, room, new Scale(1));
        List<Mark> marks = new ArrayList<>();
        for (Line line : lines()) {
            marks.addAll(ViewPort.strokes(Window.cut(List.of(line.line), window), port, line.pen, Layer.PLATE));
        }
        marks.addAll(joints(port, window, joins));
        marks.addAll(check(room));
        marks.addAll(stringWords(port, window));
        Notes notes = Notes.of(words(tile), paper.width() - 2 * MARGIN - CHECK - 20);
        marks.addAll(notes.draw(new Vec2(MARGIN + CHECK + 20, MARGIN + FOOT - 1)));
        return new Sheet(paper, number, plate.mark() + " under " + outline.marks() + tile, marks);
    }

    private List<Line> lines() {
        List<Line> lines = new ArrayList<>();
        ring(lines, plate.solid().profile().outline(), Pen.OUTLINE);
        ring(lines, outline.ring(), Pen.HIDDEN);
        Envelope box = plateBox();
        double past = ROUND - 1;
        add(lines, new Vec2(box.getMinX() - past, 0), new Vec2(box.getMaxX() + past, 0), Pen.GRID);
        add(lines, new Vec2(0, box.getMinY() - past), new Vec2(0, box.getMaxY() + past), Pen.GRID);
        double face = outline.box().getMinX();
        add(lines, new Vec2(face, box.getMinY() - past), new Vec2(face, box.getMaxY() + past), Pen.STRING);
        for (Hole hole : plate.holes()) {
            circle(lines, hole.at(), hole.diameter() / 2, Pen.VISIBLE);
            circle(lines, hole.at(), anchor.holeDiameter() / 2, Pen.DIMENSION);
            double arm = hole.diameter() / 2 + 4;
            add(lines, hole.at().plus(new Vec2(-arm, 0)), hole.at().plus(new Vec2(arm, 0)), Pen.DIMENSION);
            add(lines, hole.at().plus(new Vec2(0, -arm)), hole.at().plus(new Vec2(0, arm)), Pen.DIMENSION);
        }
        return lines;
    }

    private void add(List<Line> lines, Vec2 from, Vec2 to, Pen pen) {
        lines.add(new Line(new ViewLine(from, to, plate.mark()), pen));
    }

    private void ring(List<Line> lines, List<Vec2> ring, Pen pen) {
        for (int i = 0; i < ring.size(); i++) {
            add(lines, ring.get(i), ring.get((i + 1) % ring.size()), pen);
        }
    }

    /** Many-sided, so that the edge of a sheet can part it; it leaves the circle by less than 0.02 mm. */
    private void circle(List<Line> lines, Vec2 centre, double radius, Pen pen) {
        List<Vec2> ring = new ArrayList<>();
        for (int i = 0; i < CIRCLE; i++) {
            double a = 2 * Math.PI * i / CIRCLE;
            ring.add(centre.plus(new Vec2(Math.cos(a), Math.sin(a)).times(radius)));
        }
        ring(lines, ring, pen);
    }

    /** Register crosses in the middle of what overlaps; they fall on the same places of both sheets. */
    private static List<Mark> joints(ViewPort port, Envelope w, boolean[] joins) {
        List<Mark> marks = new ArrayList<>();
        double half = OVERLAP / 2;
        double[] xs = {w.getMinX() + half, w.getMaxX() - half};
        double[] ys = {w.getMaxY() - half, w.getMinY() + half};
        for (int i = 0; i < 2; i++) {
            if (joins[i]) {
                cross(marks, port, new Vec2(xs[i], ys[0]));
                cross(marks, port, new Vec2(xs[i], ys[1]));
            }
            if (joins[2 + i]) {
                cross(marks, port, new Vec2(xs[0], ys[i]));
                cross(marks, port, new Vec2(xs[1], ys[i]));
            }
        }
        return marks;
    }

    private static void cross(List<Mark> marks, ViewPort port, Vec2 at) {
        Vec2 middle = port.toPaper(at);
        marks.add(Stroke.line(middle.minus(new Vec2(6, 0)), middle.plus(new Vec2(6, 0)), Pen.VISIBLE, Layer.FRAME));
        marks.add(Stroke.line(middle.minus(new Vec2(0, 6)), middle.plus(new Vec2(0, 6)), Pen.VISIBLE, Layer.FRAME));
    }

    /** A hundred millimetres each way, a tick every ten. */
    private static List<Mark> check(Envelope room) {
        List<Mark> marks = new ArrayList<>();
        Vec2 level = new Vec2(MARGIN + 4, MARGIN + 14);
        Vec2 upright = new Vec2(MARGIN + 4, room.getMinY() + 6);
        marks.add(Stroke.line(level, level.plus(new Vec2(CHECK, 0)), Pen.VISIBLE, Layer.FRAME));
        marks.add(Stroke.line(upright, upright.plus(new Vec2(0, CHECK)), Pen.VISIBLE, Layer.FRAME));
        for (int i = 0; i <= 10; i++) {
            double tick = i % 5 == 0 ? 4 : 2;
            Vec2 a = level.plus(new Vec2(i * CHECK / 10, 0));
            Vec2 b = upright.plus(new Vec2(0, i * CHECK / 10));
            marks.add(Stroke.line(a, a.plus(new Vec2(0, tick)), Pen.DIMENSION, Layer.FRAME));
            marks.add(Stroke.line(b, b.plus(new Vec2(tick, 0)), Pen.DIMENSION, Layer.FRAME));
        }
        marks.add(
                Text.level("100 mm across", level.plus(new Vec2(CHECK / 2, -4)), TEXT, Text.Align.CENTRE, Layer.FRAME));
        marks.add(new Text(
                "100 mm up",
                upright.plus(new Vec2(8, CHECK / 2)),
                TEXT,
                Text.Align.CENTRE,
                90,
                Face.REGULAR,
                Layer.FRAME,
                ""));
        return marks;
    }

    /** Along the string line, above the middle line that crosses it, where the sheet shows enough of it. */
    private List<Mark> stringWords(ViewPort port, Envelope window) {
        Vec2 at = new Vec2(outline.box().getMinX() - 1.5, 4);
        Envelope needed =
                new Envelope(at.x() - 5, at.x(), 0, at.y() + Lettering.width(STRING_WORDS, TEXT, Face.REGULAR));
        if (!window.contains(needed)) {
            return List.of();
        }
        return List.of(new Text(
                STRING_WORDS, port.toPaper(at), TEXT, Text.Align.LEFT, 90, Face.REGULAR, Layer.LABEL, plate.mark()));
    }

    private List<Paragraph> words(String tile) {
        List<Paragraph> words = new ArrayList<>();
        words.add(Paragraph.heading(plate.mark() + " under " + outline.marks() + ", " + sections() + tile
                + ". PRINT AT 100 %, NO FITTING. MEASURE BEFORE YOU DRILL."));
        words.add(Paragraph.of(
                "Both check scales must measure 100 mm on your print. Seen from above, outside on the left:"
                        + " turn half round for the other side. " + holes()
                        + (tile.isEmpty() ? "" : " Sheets overlap 20 mm: lay register cross on cross.")));
        words.add(Paragraph.of(
                "Draft, not for construction until certified. Extract dust; find bars and services first."));
        return words;
    }

    private String sections() {
        return outline.members().stream()
                .map(member -> member.material().description())
                .distinct()
                .collect(Collectors.joining(" and "));
    }

    private String holes() {
        String words =
                Annotations.holeWords(plate.holes().size(), plate.holes().get(0).diameter());
        double diagonal = plate.holes().stream()
                .flatMap(a -> plate.holes().stream().map(b -> a.at().distance(b.at())))
                .max(Comparator.naturalOrder())
                .orElseThrow();
        return words + " at " + plate.holeGauges() + ", furthest apart " + Figure.length(diagonal)
                + "; thin circle: bit ⌀" + Figure.length(anchor.holeDiameter()) + ".";
    }
}
