package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.baywright.model.geometry.Profile;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.parts.Hole;
import org.baywright.model.parts.PlateStand;
import org.baywright.model.parts.Shed;
import org.baywright.render.dimension.Annotations;
import org.baywright.render.dimension.Figure;
import org.baywright.render.dimension.Label;
import org.baywright.render.dimension.Notes;
import org.baywright.render.dimension.Paragraph;
import org.baywright.render.dimension.Side;
import org.baywright.render.dimension.Spot;
import org.baywright.render.mark.Arc;
import org.baywright.render.mark.Fill;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Stroke;
import org.baywright.render.paper.Pen;
import org.baywright.render.paper.Scale;
import org.locationtech.jts.geom.Envelope;

/** How each type of plate is laid to its string lines: turn, faces on lines, and every hole line from them. */
final class PlateSetting {
    private static final Margins MARGINS = new Margins(34, 20, 20, 24);
    private static final List<Scale> SCALES = List.of(new Scale(5), new Scale(10), new Scale(20));
    private static final double DRAWN = 0.64;
    private static final int PER_SHEET = 4;

    /** A longer list of places than this leaves its cell. */
    private static final int LONGEST_LIST = 120;

    private final PlateType type;

    private PlateSetting(PlateType type) {
        this.type = type;
    }

    /** Four to a sheet. */
    static List<Draft> of(Shed shed, List<PlateStand> stands) {
        List<PlateType> types = PlateType.of(stands, shed.setOut());
        List<Draft> drafts = new ArrayList<>();
        for (int first = 0; first <= types.size(); first += PER_SHEET) {
            SheetBuilder sheet = new SheetBuilder("L3." + (drafts.size() + 1), "Plates on their lines");
            for (int i = first; i < Math.min(types.size(), first + PER_SHEET); i++) {
                new PlateSetting(types.get(i)).draw(sheet, cell(i - first));
            }
            if (types.size() < first + PER_SHEET) {
                section(shed, sheet, cell(types.size() - first));
            }
            drafts.add(sheet.build());
        }
        return drafts;
    }

    private static Envelope cell(int place) {
        return Cells.column(Cells.row(SheetFrame.room(), place / 2, 2), place % 2, 2);
    }

    /** A cut through one base, with its levels, after the last type. */
    private static void section(Shed shed, SheetBuilder sheet, Envelope cell) {
        PlateUse use = PlateUse.of(Footing.of(shed)).get(0);
        double grout = shed.definition().plates().groutGap();
        new BaseSection(use, shed.definition().anchor(), grout).draw(sheet, cell);
    }

    private void draw(SheetBuilder sheet, Envelope cell) {
        Envelope bounds = new Envelope(-type.width() / 2, type.width() / 2, -type.depth() / 2, type.depth() / 2);
        Margins margins = new Margins(
                MARGINS.left(), MARGINS.right() + (1 - DRAWN) * cell.getWidth(), MARGINS.below(), MARGINS.above());
        String where = !type.ofFrame() ? " IN A WALL" : type.end() ? " ON AN END LINE" : " ON A LINE BETWEEN";
        PlacedView view = sheet.view(type.plate().mark() + where, cell, bounds, margins, scale(bounds, cell, margins));
        steel(view);
        lines(view);
        type.plate().holes().forEach(hole -> hole(view, hole));
        dimensions(view.annotate());
        numbers(view);
        Envelope words = Cells.across(cell, DRAWN, 1);
        sheet.draw(Notes.of(words(), words.getWidth() - 4)
                .draw(new Vec2(words.getMinX() + 1, words.getMaxY() - MARGINS.above() / 2)));
    }

    private static Scale scale(Envelope bounds, Envelope room, Margins margins) {
        Scale fitting = PlacedView.fitting(room, bounds, margins);
        return SCALES.stream().filter(s -> s.n() >= fitting.n()).findFirst().orElse(fitting);
    }

    private void steel(PlacedView view) {
        List<Vec2> plate = onPaper(view, Profile.corners(type.width(), type.depth()));
        view.draw(List.of(
                new Stroke(plate, true, Pen.OUTLINE, Layer.PLATE, type.plate().mark())));
        List<List<Vec2>> rings =
                type.rings().stream().map(ring -> onPaper(view, ring)).toList();
        String upright = type.upright().mark();
        view.draw(List.of(new Fill(rings, 0.35, Layer.STEEL, upright)));
        view.draw(rings.stream()
                .map(ring -> new Stroke(ring, true, Pen.VISIBLE, Layer.STEEL, upright))
                .toList());
    }

    private static List<Vec2> onPaper(PlacedView view, List<Vec2> ring) {
        return ring.stream().map(view.port()::toPaper).toList();
    }

    /** The string line of the row, and the line of the frame. */
    private void lines(PlacedView view) {
        double past = 5.0 * view.port().scale().n();
        double x = type.width() / 2 + past;
        double y = type.depth() / 2 + past;
        view.line(new Vec2(type.row(), -y), new Vec2(type.row(), y), Pen.STRING, Layer.GRID);
        Pen pen = type.end() ? Pen.STRING : Pen.GRID;
        view.line(new Vec2(-x, type.frame()), new Vec2(x, type.frame()), pen, Layer.GRID);
        Vec2 row = view.port().toPaper(new Vec2(type.row(), -y));
        view.annotate().place(Label.of(row, Label.Pointer.ARROW, "String line").preferring(Spot.BELOW_LEFT));
    }

    private void hole(PlacedView view, Hole hole) {
        double radius = hole.diameter() / 2;
        Vec2 centre = view.port().toPaper(hole.at());
        view.draw(List.of(Arc.circle(
                centre,
                view.port().toPaper(radius),
                Pen.VISIBLE,
                Layer.ANCHOR,
                type.plate().mark())));
        double arm = radius + 1.2 * view.port().scale().n();
        view.line(hole.at().plus(new Vec2(-arm, 0)), hole.at().plus(new Vec2(arm, 0)), Pen.DIMENSION, Layer.ANCHOR);
        view.line(hole.at().plus(new Vec2(0, -arm)), hole.at().plus(new Vec2(0, arm)), Pen.DIMENSION, Layer.ANCHOR);
    }

    /** Running from the two lines to every hole line, and the plate round its holes. */
    private void dimensions(Annotations annotate) {
        double w = type.width() / 2;
        double d = type.depth() / 2;
        List<Double> xs = holes(Vec2::x);
        List<Double> ys = holes(Vec2::y);
        annotate.running(
                Side.ABOVE,
                new Vec2(type.row(), d),
                xs.stream().map(x -> new Vec2(x, d)).toList());
        annotate.running(
                Side.LEFT,
                new Vec2(-w, type.frame()),
                ys.stream().map(y -> new Vec2(-w, y)).toList());
        List<Vec2> below = new ArrayList<>(List.of(new Vec2(-w, -d), new Vec2(w, -d)));
        xs.forEach(x -> below.add(new Vec2(x, -d)));
        List<Vec2> right = new ArrayList<>(List.of(new Vec2(w, -d), new Vec2(w, d)));
        ys.forEach(y -> right.add(new Vec2(w, y)));
        annotate.chainWithOverall(Side.BELOW, below).chainWithOverall(Side.RIGHT, right);
    }

    private List<Double> holes(ToDoubleFunction<Vec2> axis) {
        TreeSet<Double> all = new TreeSet<>();
        type.plate().holes().forEach(h -> all.add(axis.applyAsDouble(h.at())));
        return List.copyOf(all);
    }

    /** The numbers of the holes, as setout.csv counts them. */
    private void numbers(PlacedView view) {
        List<Hole> holes = type.plate().holes();
        for (int i = 0; i < holes.size(); i++) {
            double rim = holes.get(i).diameter() / 2 * Math.sqrt(0.5);
            Vec2 at = view.port().toPaper(holes.get(i).at().plus(new Vec2(rim, rim)));
            view.annotate()
                    .place(Label.of(at, Label.Pointer.BESIDE, String.valueOf(i + 1))
                            .preferring(Spot.ABOVE_RIGHT));
        }
    }

    private List<Paragraph> words() {
        List<Paragraph> words = new ArrayList<>();
        words.add(Paragraph.heading(type.plate().mark() + " under "
                + type.upright().mark() + ", " + type.upright().material().designation()));
        words.add(Paragraph.bullet(type.stands().size() + " of these: " + places() + "."));
        words.add(Paragraph.bullet("Seen from above, the outside of the building on the left. Turned " + turns()
                + " degrees anticlockwise where it stands (setout.csv)."));
        words.add(Paragraph.bullet("Outside face of the upright on the string line of its row. Above: hole lines from"
                + " that string line."));
        words.add(Paragraph.bullet(second()));
        words.add(Paragraph.bullet(type.plate().holes().size() + " holes ⌀"
                + Figure.length(type.plate().holes().get(0).diameter()) + " in the plate, numbered as in setout.csv."));
        return words;
    }

    private String second() {
        if (!type.ofFrame()) {
            return "On the left: hole lines from its own middle, which the plan places along the wall.";
        }
        return type.end()
                ? "On the left: hole lines from the end string line, along the column's outside face. At the corner"
                        + " across, the same in a mirror."
                : "On the left: hole lines from the line of the frame, through the middle.";
    }

    private String turns() {
        return type.stands().stream()
                .map(PlateStand::turnDeg)
                .distinct()
                .sorted()
                .map(Figure::length)
                .collect(Collectors.joining(", "));
    }

    private String places() {
        String all = type.stands().stream().map(PlateStand::name).collect(Collectors.joining(", "));
        return all.length() <= LONGEST_LIST ? all : "see setout.csv";
    }
}
