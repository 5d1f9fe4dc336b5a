package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.baywright.model.definition.Anchor;
import org.baywright.model.definition.Slab;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.parts.Foundation;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PlateStand;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.SlabEdge;
import org.baywright.model.takeoff.Concrete;
import org.baywright.render.dimension.Column;
import org.baywright.render.dimension.Figure;
import org.baywright.render.dimension.Notes;
import org.baywright.render.dimension.Paragraph;
import org.baywright.render.dimension.Row;
import org.baywright.render.dimension.Table;
import org.baywright.render.dimension.TablePart;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Text;
import org.baywright.render.paper.Face;
import org.locationtech.jts.geom.Envelope;

/** The order of work, and beside it diagonals, levels and the slab in tables. */
final class SetOutWork {
    private static final String TITLE = "Order of work and checks";
    private static final double STEPS = 0.44;
    private static final double GAP = 8;
    private static final double HEADING = 3.5;
    private static final double HEAD = 6.5;

    /** Differences of diagonals that the table explains, mm. */
    private static final List<Integer> DIFFERENCES = List.of(2, 5, 10, 15);

    private final Shed shed;
    private final List<PlateStand> stands;

    private SetOutWork(Shed shed, List<PlateStand> stands) {
        this.shed = shed;
        this.stands = stands;
    }

    /** One sheet, and more when its tables are long. */
    static List<Draft> of(Shed shed, List<PlateStand> stands) {
        return new SetOutWork(shed, stands).drafts();
    }

    /** A table under its title, with what must be said to read it. */
    private record Block(String title, Table table, String note) {
        Notes notes(double width) {
            return Notes.of(List.of(Paragraph.of(note)), width);
        }
    }

    private List<Draft> drafts() {
        Envelope room = SheetFrame.room();
        Envelope left = Cells.across(room, 0, STEPS);
        Envelope right = Cells.across(room, STEPS, 1);
        SheetBuilder sheet = new SheetBuilder("L1.1", TITLE);
        Notes steps = Notes.of(steps(), left.getWidth() - GAP);
        sheet.draw(steps.draw(new Vec2(left.getMinX(), left.getMaxY())));
        List<Block> waiting = new ArrayList<>();
        double foot = blocks(sheet, right, waiting);
        double low = Math.min(foot, left.getMaxY() - steps.height());
        Envelope below = new Envelope(room.getMinX(), room.getMaxX(), room.getMinY(), low);
        StringLineSketch sketch = new StringLineSketch(shed, new StringLineSteps(shed).hurdlesOut());
        boolean drawn = sketch.draw(sheet, below);
        List<Draft> drafts = new ArrayList<>(List.of(sheet.build()));
        if (!drawn) {
            SheetBuilder own = new SheetBuilder("L1.2", "String lines");
            if (sketch.draw(own, room)) {
                drafts.add(own.build());
            }
        }
        if (!waiting.isEmpty()) {
            SheetFlow flow = new SheetFlow();
            for (Block block : waiting) {
                flow.table(block.title, block.table);
                flow.notes(block.notes(right.getWidth()));
            }
            drafts.addAll(flow.drafts("L1.", drafts.size() + 1, TITLE));
        }
        return drafts;
    }

    /** As many as the column holds, the others kept waiting; says where they end. */
    private double blocks(SheetBuilder sheet, Envelope column, List<Block> waiting) {
        double width = column.getWidth();
        double top = column.getMaxY();
        for (Block block : List.of(diagonals(width), levels(width), slab(width))) {
            TablePart part = block.table.pages(1e6).get(0);
            Notes notes = block.notes(width);
            double height = HEAD + part.height() + 2 + notes.height();
            if (top - height < column.getMinY()) {
                waiting.add(block);
            } else {
                heading(sheet, block.title, new Vec2(column.getMinX(), top - HEADING));
                sheet.draw(part.draw(new Vec2(column.getMinX(), top - HEAD)));
                sheet.draw(notes.draw(new Vec2(column.getMinX(), top - HEAD - part.height() - 2)));
                top -= height + GAP;
            }
        }
        return top;
    }

    private static void heading(SheetBuilder sheet, String words, Vec2 at) {
        sheet.draw(List.of(new Text(words, at, HEADING, Text.Align.LEFT, 0, Face.BOLD, Layer.TABLE, "")));
    }

    private List<Paragraph> steps() {
        List<Paragraph> paragraphs = new ArrayList<>();
        paragraphs.add(Paragraph.heading("Order of work with string lines"));
        paragraphs.addAll(Paragraph.numbered(new StringLineSteps(shed).words()));
        paragraphs.add(Paragraph.of("Every anchor hole and plate is in setout.csv: along and across from the datum A/1,"
                + " millimetres."));
        return paragraphs;
    }

    private Block diagonals(double width) {
        List<Column> columns = new ArrayList<>(List.of(
                Column.words("Rectangle"),
                Column.numbers("Along"),
                Column.numbers("Across"),
                Column.numbers("Diagonal"),
                Column.numbers("Agree to")));
        DIFFERENCES.forEach(d -> columns.add(Column.numbers("if " + d)));
        List<Row> rows = new ArrayList<>();
        for (Rectangle rectangle : Rectangle.all(shed.setOut())) {
            List<String> cells = new ArrayList<>(List.of(
                    rectangle.name(),
                    Figure.length(rectangle.along()),
                    Figure.length(rectangle.across()),
                    Figure.length(rectangle.diagonal()),
                    Figure.length(rectangle.allowed())));
            DIFFERENCES.forEach(d -> cells.add(Figure.length(rectangle.outOfSquare(d))));
            rows.add(Row.of(cells.toArray(String[]::new)));
        }
        return new Block(
                "Diagonals and squareness, mm",
                new Table(columns, rows, width).filling(),
                "Both diagonals of a rectangle are alike. Last columns: when they differ by 2, 5, 10 or 15, so far is the"
                        + " line across out of square over its length. Agreement: common practice, no source.");
    }

    /** A plate with its thickness, and all that stand on plates alike. */
    private Block levels(double width) {
        double grout = shed.definition().plates().groutGap();
        List<Row> rows = new ArrayList<>();
        rows.add(Row.of("Finished floor, FFL", "", Figure.level(0), "", ""));
        byPlate()
                .forEach((plate, on) -> rows.add(Row.of(
                        plate.mark() + " under " + uprights(on),
                        Figure.level(on.get(0).underside()),
                        Figure.level(on.get(0).top()),
                        grout > 0 ? plate.holes().size() + " × " + Figure.length(grout) : "none",
                        grout > 0 ? litres(plate, grout) : "none")));
        Table table = new Table(
                        List.of(
                                Column.words("Plate"),
                                Column.numbers("Underside"),
                                Column.numbers("Top"),
                                Column.numbers("Packers"),
                                Column.numbers("Grout, L")),
                        rows,
                        width)
                .filling();
        return new Block(
                "Levels, packers and grout",
                table,
                "Packers: steel, 2 to 10 thick, one stack at each anchor. Then grout the whole bed, non-shrink. Grout is"
                        + " net for one plate.");
    }

    private Map<Part, List<PlateStand>> byPlate() {
        return stands.stream()
                .sorted(Comparator.comparing((PlateStand s) -> s.plate().mark().length())
                        .thenComparing(s -> s.plate().mark()))
                .collect(Collectors.groupingBy(PlateStand::plate, LinkedHashMap::new, Collectors.toList()));
    }

    private static String uprights(List<PlateStand> on) {
        return on.stream().map(s -> s.upright().mark()).distinct().sorted().collect(Collectors.joining(", "));
    }

    private static String litres(Part plate, double grout) {
        double area = plate.solid().profile().depth() * plate.solid().profile().width();
        return String.format(Locale.ROOT, "%.1f", area * grout / 1e6);
    }

    private Block slab(double width) {
        Slab slab = shed.definition().ground().slab();
        Concrete concrete = Concrete.of(shed);
        Anchor anchor = shed.definition().anchor();
        SlabEdge edge = Foundation.of(shed.definition(), shed.setOut(), stands).edge();
        double nearest = stands.stream()
                .flatMap(s -> s.holes().stream())
                .mapToDouble(edge::distance)
                .min()
                .orElse(0);
        List<Row> rows = new ArrayList<>(slab.isPads() ? pads(slab) : slab(slab, concrete));
        rows.add(Row.of(
                slab.isPads() ? "Nearest anchor hole to a pad's edge" : "Nearest anchor hole to slab edge",
                Figure.length(nearest)));
        rows.add(Row.of(
                "Product's least edge; full edge, 1.5 × embedment",
                Figure.length(anchor.minimumEdge()) + "; " + Figure.length(1.5 * anchor.embedment())));
        rows.add(Row.of(
                "Concrete: area; in the forms; to order",
                m3("%.1f m²; ", concrete.areaM2())
                        + m3("%.2f m³; ", concrete.netM3())
                        + m3("%.1f m³", concrete.orderM3())));
        if (!slab.isPads()) {
            rows.add(Row.of("Mesh sheets 6.0 × 2.4 m, laps 225", String.valueOf(concrete.meshSheets())));
            rows.add(Row.of("Bars on a grid", bars(slab)));
        }
        return new Block(
                slab.isPads() ? "Pads" : "Slab",
                new Table(List.of(Column.words("What"), Column.words("Figure, mm")), rows, width).filling(),
                "Starting values: the engineer sets concrete, mesh, bars and anchors. Anchor figures are examples of one"
                        + " product: enter yours.");
    }

    private static List<Row> pads(Slab slab) {
        return List.of(Row.of(
                "Pad under every base plate, earth between",
                Figure.length(slab.padSide()) + " square, to " + Figure.length(slab.padDepth()) + " deep"));
    }

    private static List<Row> slab(Slab slab, Concrete concrete) {
        String none = "none";
        return List.of(
                Row.of("Thickness", Figure.length(slab.thickness())),
                Row.of(
                        "Beam along the edge",
                        concrete.edgeM2() > 0
                                ? Figure.length(slab.edgeWidth()) + " wide, to " + Figure.length(slab.edgeDepth())
                                        + " deep"
                                : none),
                Row.of(
                        "Thickening under every base plate",
                        slab.padSide() > 0
                                ? Figure.length(slab.padSide()) + " square, to " + Figure.length(slab.padDepth())
                                        + " deep"
                                : none),
                Row.of("Columns' outside faces to slab edge", Figure.length(slab.beyond())),
                Row.of(
                        "Sawn joints",
                        concrete.jointsM() > 0
                                ? m3("%.0f m, ", concrete.jointsM()) + Figure.length(slab.jointDepth())
                                        + " deep, 4 to 12 hours after finishing"
                                : none));
    }

    private static String bars(Slab slab) {
        return slab.bars()
                .map(b -> Figure.length(b.diameter()) + " at "
                        + Figure.length(b.along().spacing()) + " along, "
                        + Figure.length(b.across().spacing()) + " across; cover " + Figure.length(b.cover()))
                .orElse("not given: locate before drilling");
    }

    private static String m3(String format, double value) {
        return String.format(Locale.ROOT, format, value);
    }
}
