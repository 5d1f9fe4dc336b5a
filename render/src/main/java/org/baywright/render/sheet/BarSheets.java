package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.baywright.model.definition.Anchor;
import org.baywright.model.definition.SlabBars;
import org.baywright.model.geometry.Profile;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.parts.BarCheck;
import org.baywright.model.parts.Foundation;
import org.baywright.model.parts.PlateStand;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.BarGrid;
import org.baywright.model.setout.BarGrid.Meeting;
import org.baywright.model.setout.OneWayShift;
import org.baywright.model.setout.SlabEdge;
import org.baywright.render.dimension.Column;
import org.baywright.render.dimension.Figure;
import org.baywright.render.dimension.Label;
import org.baywright.render.dimension.Notes;
import org.baywright.render.dimension.Paragraph;
import org.baywright.render.dimension.Row;
import org.baywright.render.dimension.Spot;
import org.baywright.render.dimension.Table;
import org.baywright.render.mark.Fill;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Stroke;
import org.baywright.render.paper.Pen;
import org.baywright.render.view.Item;
import org.baywright.render.view.Silhouette;
import org.locationtech.jts.geom.Envelope;

/** Anchor holes against the bars in the slab: where, each way of meeting them large, and the smallest shifts. */
final class BarSheets {
    private static final Margins PLAN = new Margins(22, 16, 16, 22);
    private static final Margins CLOSE_UP = new Margins(6, 6, 4, 4);
    private static final int COLUMNS = 4;
    private static final int ROWS = 2;

    /** Ways of meeting the bars beyond these are in the table only. */
    private static final int MOST_DRAWN = 24;

    /** Floor shown round a plate. */
    private static final double ROUND = 60;

    private final Shed shed;
    private final BarCheck check;
    private final List<StruckPlates> struck;
    private final Plan plan;

    private BarSheets(Shed shed, BarCheck check) {
        this.shed = shed;
        this.check = check;
        SlabEdge edge =
                Foundation.of(shed.definition(), shed.setOut(), check.stands()).edge();
        Anchor anchor = shed.definition().anchor();
        this.struck = StruckPlates.of(check, (stand, move) -> BarCheck.keepsEdge(edge, anchor, stand, move));
        this.plan = new Plan(shed);
    }

    /** The sheets; none when the bars are not known. */
    static List<Draft> of(Shed shed) {
        return BarCheck.of(shed)
                .map(check -> new BarSheets(shed, check).drafts())
                .orElse(List.of());
    }

    private List<Draft> drafts() {
        List<Draft> drafts = new ArrayList<>();
        NotedRoom room = NotedRoom.of(notes(), r -> plan.strips(r, PLAN));
        for (int i = 0; i < room.strips().sheets(); i++) {
            SheetBuilder sheet = sheet(drafts);
            sheet.draw(room.notes());
            room.strips().on(i).forEach(strip -> strip(sheet, strip, room.strips()));
            drafts.add(sheet.build());
        }
        closeUps(drafts);
        if (!struck.isEmpty()) {
            SheetFlow flow = new SheetFlow();
            flow.table(
                    "Holes that hit or come close to bars, mm; moves: + away from line 1, + from line A to the right",
                    table());
            drafts.addAll(flow.drafts("L4.", drafts.size() + 1, "Holes and bars"));
        }
        return drafts;
    }

    private static SheetBuilder sheet(List<Draft> before) {
        return new SheetBuilder("L4." + (before.size() + 1), "Holes and bars");
    }

    private List<Paragraph> notes() {
        BarGrid grid = check.grid();
        SlabBars bars = grid.bars();
        List<Paragraph> words = new ArrayList<>();
        words.add(Paragraph.bullet("Bars " + Figure.length(bars.diameter()) + " both ways through the whole slab, "
                + Figure.length(bars.cover()) + " below its top. Across the building every "
                + Figure.length(bars.along().spacing()) + ", one at "
                + Figure.length(bars.along().offset())
                + " from line 1; along it every " + Figure.length(bars.across().spacing()) + ", one at "
                + Figure.length(bars.across().offset()) + " from line A."));
        words.add(Paragraph.bullet(
                grid.reached()
                        ? "Holes ⌀" + Figure.length(grid.drill()) + ", " + Figure.length(grid.depth()) + " deep: "
                                + check.count(Meeting.HIT) + " hit a bar, " + check.count(Meeting.CLOSE)
                                + " come closer than " + Figure.length(bars.close()) + ", "
                                + check.count(Meeting.CLEAR) + " are clear."
                        : "Holes are " + Figure.length(grid.depth())
                                + " deep and end above the bars: none is checked in plan."));
        words.add(
                Paragraph.bullet(
                        HoleSign.LEGEND
                                + " On the plan a plate shows its worst hole; the first of those that lie alike is named, the table names all."));
        words.add(Paragraph.bullet("Smallest shift of all the bars: " + barShift()));
        words.add(Paragraph.bullet("Bars lie where they were tied. Locate them over every hole before drilling. If the"
                + " bit meets a bar, stop: cut no bar, bend no rod, ask the engineer. Moving a plate moves its column:"
                + " the engineer's say."));
        return words;
    }

    private String barShift() {
        List<String> words = StruckPlates.words(check.barShift());
        return check.barShift().isEmpty()
                ? "none: whatever it is, some hole meets a bar. "
                        + check.oneWayShift().map(BarSheets::oneWay).orElse("") + "See each plate."
                : "along " + words.get(0) + ", across " + words.get(1) + ": " + words.get(2)
                        + ". Above zero: away from line 1, and from line A to the right.";
    }

    private static String oneWay(OneWayShift shift) {
        return (shift.along()
                        ? "Bars across the building alone moved along it "
                        : "Bars along the building alone moved across it ")
                + StruckPlates.signed(shift.shift())
                + (shift.clear() ? " are clear of all holes" : " just miss all holes")
                + "; the others then still hit " + shift.stillHit() + ". ";
    }

    private void strip(SheetBuilder sheet, Strip strip, Strips strips) {
        PlacedView view = sheet.view(
                strips.name("HOLES AND BARS", strip), strip.cell(), plan.bounds(strip), PLAN, strips.scale());
        plan.strings(view, strip);
        double from = shed.setOut().frameLine(strip.firstFrame()) - Plan.BEYOND;
        double to = shed.setOut().frameLine(strip.lastFrame()) + Plan.BEYOND;
        check.stands().stream()
                .filter(s -> s.middle().y() >= from && s.middle().y() <= to)
                .forEach(s -> view.draw(HoleSign.marks(worst(s), paper(view, floor(s)))));
        struck.stream()
                .map(StruckPlates::first)
                .filter(s -> s.middle().y() >= from && s.middle().y() <= to)
                .forEach(s -> view.annotate().place(Label.of(paper(view, floor(s)), Label.Pointer.ARROW, s.grid())));
        plan.grid(view, strip);
        plan.matchLines(view, strip);
    }

    private Vec2 paper(PlacedView view, Vec2 floor) {
        return view.port().toPaper(plan.axes().at(floor.x(), floor.y()));
    }

    private static Vec2 floor(PlateStand stand) {
        Vec3 at = stand.middle();
        return new Vec2(at.x(), at.y());
    }

    private Meeting worst(PlateStand stand) {
        return stand.holes().stream()
                .map(check.grid()::meeting)
                .max(Comparator.naturalOrder())
                .orElse(Meeting.CLEAR);
    }

    private void closeUps(List<Draft> drafts) {
        int drawn = Math.min(struck.size(), MOST_DRAWN);
        for (int first = 0; first < drawn; first += COLUMNS * ROWS) {
            SheetBuilder sheet = sheet(drafts);
            for (int i = first; i < Math.min(drawn, first + COLUMNS * ROWS); i++) {
                int place = i - first;
                Envelope row = Cells.row(SheetFrame.room(), place / COLUMNS, ROWS);
                closeUp(sheet, struck.get(i), Cells.column(row, place % COLUMNS, COLUMNS));
            }
            drafts.add(sheet.build());
        }
    }

    private void closeUp(SheetBuilder sheet, StruckPlates plates, Envelope cell) {
        PlateStand stand = plates.first();
        Vec2 middle = plan.axes().at(stand.middle().x(), stand.middle().y());
        double half = stand.plate().stockLength() / 2 + ROUND;
        Envelope window = new Envelope(middle.x() - half, middle.x() + half, middle.y() - half, middle.y() + half);
        Notes words = Notes.of(words(plates), cell.getWidth() - 6);
        Margins margins =
                new Margins(CLOSE_UP.left(), CLOSE_UP.right(), CLOSE_UP.below(), CLOSE_UP.above() + words.height());
        PlacedView view = sheet.view(stand.plate().mark() + " AT " + stand.name(), cell, window, margins);
        sheet.draw(words.draw(new Vec2(cell.getMinX() + 2, cell.getMaxY() - 1)));
        bars(view, window);
        for (List<Vec2> ring : Silhouette.outline(
                new Item(
                        stand.plate().mark(),
                        stand.plate().solid(),
                        stand.platePlace().placement()),
                plan.axes().projection())) {
            List<Vec2> onPaper = ring.stream().map(view.port()::toPaper).toList();
            view.draw(List.of(new Stroke(
                    onPaper, true, Pen.OUTLINE, Layer.PLATE, stand.plate().mark())));
        }
        for (int i = 0; i < stand.holes().size(); i++) {
            Vec2 at = paper(view, stand.holes().get(i));
            view.draw(HoleSign.marks(check.grid().meeting(stand.holes().get(i)), at));
            view.annotate()
                    .place(Label.of(at.plus(new Vec2(1.7, 1.7)), Label.Pointer.BESIDE, String.valueOf(i + 1))
                            .preferring(Spot.ABOVE_RIGHT));
        }
    }

    private static List<Paragraph> words(StruckPlates plates) {
        int n = plates.stands().size();
        List<String> shift = plates.shift();
        String move = shift.get(0).equals("–")
                ? "No shift of the plate misses every bar."
                : "Plate to move along " + shift.get(0) + ", across " + shift.get(1) + ": " + shift.get(2)
                        + ". Its column moves with it: ask the engineer first.";
        return List.of(Paragraph.of(plates.counts() + (n > 1 ? "; " + (n - 1) + " more alike" : "") + ". " + move));
    }

    /** The bars as grey strips through a window of the view. */
    private void bars(PlacedView view, Envelope window) {
        boolean turned = plan.axes().turned();
        SlabBars bars = check.grid().bars();
        // Bars that lie across the building stand at places along it, which run across the sheet when it is turned.
        strips(view, window, bars.along(), turned, turned ? window.getMinX() : window.getMinY(), 1);
        strips(view, window, bars.across(), !turned, turned ? window.getMinY() : window.getMinX(), turned ? -1 : 1);
    }

    /**
     * Strips at the places of a row.
     *
     * @param upright whether they run up the sheet
     * @param low the window's lower end the other way
     * @param sign of the row's axis on the sheet
     */
    private void strips(PlacedView view, Envelope window, SlabBars.Row row, boolean upright, double low, int sign) {
        double radius = check.grid().bars().diameter() / 2;
        double high = low + (upright ? window.getWidth() : window.getHeight());
        double first =
                Math.ceil((low + radius - sign * row.offset()) / row.spacing()) * row.spacing() + sign * row.offset();
        for (double at = first; at + radius <= high; at += row.spacing()) {
            List<Vec2> strip = upright
                    ? Profile.box(at - radius, window.getMinY(), at + radius, window.getMaxY())
                    : Profile.box(window.getMinX(), at - radius, window.getMaxX(), at + radius);
            List<Vec2> onPaper = strip.stream().map(view.port()::toPaper).toList();
            view.draw(List.of(
                    new Fill(List.of(onPaper), 0.8, Layer.CONCRETE, ""),
                    new Stroke(onPaper, true, Pen.DIMENSION, Layer.CONCRETE, "")));
        }
    }

    private Table table() {
        List<Row> rows = new ArrayList<>();
        for (StruckPlates plates : struck) {
            List<String> shift = plates.shift();
            rows.add(Row.of(
                    plates.places(),
                    plates.first().plate().mark(),
                    plates.holes(Meeting.HIT),
                    plates.holes(Meeting.CLOSE),
                    Figure.length(plates.gap()),
                    shift.get(0),
                    shift.get(1),
                    shift.get(2)));
        }
        rows.add(Row.total("All bars instead of plates", "", "", "", "", shift(0), shift(1), shift(2)));
        return new Table(
                        List.of(
                                Column.words("Places"),
                                Column.words("Plate"),
                                Column.words("Holes that hit"),
                                Column.words("Holes close"),
                                Column.numbers("Least gap"),
                                Column.numbers("Move along"),
                                Column.numbers("Move across"),
                                Column.words("Then")),
                        rows,
                        SheetFrame.room().getWidth())
                .filling();
    }

    private String shift(int i) {
        return StruckPlates.words(check.barShift()).get(i);
    }
}
