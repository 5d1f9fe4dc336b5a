package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.parts.Hole;
import org.baywright.model.parts.PlateStand;
import org.baywright.model.parts.Shed;
import org.baywright.render.dimension.Annotations;
import org.baywright.render.dimension.Figure;
import org.baywright.render.dimension.Label;
import org.baywright.render.dimension.Paragraph;
import org.baywright.render.dimension.Side;
import org.baywright.render.dimension.Spot;
import org.baywright.render.mark.Layer;
import org.baywright.render.paper.Pen;
import org.locationtech.jts.geom.Envelope;

/** How each type of plate is laid to its string lines: turn, faces on lines, and every hole line from them. */
final class PlateSetting {
    private static final Margins MARGINS = new Margins(34, 20, 20, 24);
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
                section(shed, stands, sheet, cell(types.size() - first));
            }
            drafts.add(sheet.build());
        }
        return drafts;
    }

    private static Envelope cell(int place) {
        return Cells.column(Cells.row(SheetFrame.room(), place / 2, 2), place % 2, 2);
    }

    /** A cut through one base, with its levels, after the last type. */
    private static void section(Shed shed, List<PlateStand> stands, SheetBuilder sheet, Envelope cell) {
        PlateUse use = PlateUse.underColumn(stands);
        new BaseSection(shed, use).draw(sheet, cell);
    }

    private void draw(SheetBuilder sheet, Envelope cell) {
        String where = !type.ofFrame() ? " IN A WALL" : type.end() ? " ON AN END LINE" : " ON A LINE BETWEEN";
        Vec2 size = new Vec2(type.width(), type.depth());
        PlateFace face = PlateFace.of(sheet, type.plate().mark() + where, cell, MARGINS, type.plate(), size);
        face.outline(type.width(), type.depth());
        face.upright(type.rings(), type.upright().mark());
        lines(face.view());
        type.plate().holes().forEach(face::hole);
        dimensions(face.view().annotate());
        numbers(face.view());
        PlateFace.words(sheet, words(), cell, MARGINS.above() / 2);
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
                + " that string line; minus lies outside it."));
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
                ? "On the left: hole lines from the end string line, along the column's outside face; minus lies outside"
                        + " it. At the corner across, the same in a mirror."
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
