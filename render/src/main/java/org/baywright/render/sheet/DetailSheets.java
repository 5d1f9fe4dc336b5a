package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.baywright.model.cladding.Building;
import org.baywright.model.geometry.Tolerance;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.RoofRows;
import org.baywright.render.dimension.Annotations;
import org.baywright.render.dimension.Notes;
import org.baywright.render.dimension.Paragraph;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Mark;
import org.baywright.render.paper.Pen;
import org.baywright.render.paper.Scale;
import org.baywright.render.view.HiddenLines;
import org.baywright.render.view.Item;
import org.baywright.render.view.Projection;
import org.baywright.render.view.Silhouette;
import org.baywright.render.view.ViewLine;
import org.baywright.render.view.Window;
import org.locationtech.jts.geom.Envelope;

/** Eaves, ridge and cleats close up, from the model's own parts. */
final class DetailSheets {
    private static final Margins MARGINS = new Margins(4, 6, 3, 4);
    private static final int COLUMNS = 2;
    private static final int ROWS = 2;

    /** Room for the bubble before the title. */
    private static final double BUBBLE = 2 * Callout.RADIUS + 3;

    /** Parts further than this before or behind the middle are left out. */
    private static final double DEEP = 260;

    private static final List<Scale> SCALES = List.of(new Scale(5), new Scale(10), new Scale(20));

    private final Building building;

    private DetailSheets(Building building) {
        this.building = building;
    }

    /** Sections on one sheet, cleats on another; none for a bare frame. */
    static List<Draft> of(Building building) {
        DetailSheets sheets = new DetailSheets(building);
        Map<String, List<Detail>> bySheet = Details.of(building).stream()
                .collect(Collectors.groupingBy(d -> d.callout().sheet(), TreeMap::new, Collectors.toList()));
        return bySheet.entrySet().stream()
                .map(e -> sheets.sheet(e.getKey(), e.getValue()))
                .toList();
    }

    private Draft sheet(String number, List<Detail> details) {
        boolean sections = details.get(0).clad();
        SheetBuilder sheet = new SheetBuilder(number, sections ? "Details of eaves and ridge" : "Details of cleats");
        for (int i = 0; i < details.size(); i++) {
            draw(sheet, details.get(i), cell(i));
        }
        if (details.size() < COLUMNS * ROWS) {
            sheet.draw(notes(cell(COLUMNS * ROWS - 1)));
        }
        return sheet.build();
    }

    private static Envelope cell(int i) {
        return Cells.column(Cells.row(SheetFrame.room(), i / COLUMNS, ROWS), i % COLUMNS, COLUMNS);
    }

    private static List<Mark> notes(Envelope cell) {
        List<Paragraph> paragraphs = new ArrayList<>(List.of(Paragraph.heading("Notes")));
        Cautions.DETAILS.forEach(words -> paragraphs.add(Paragraph.bullet(words)));
        return Notes.of(paragraphs, cell.getWidth() - 10).draw(new Vec2(cell.getMinX() + 6, cell.getMaxY() - 4));
    }

    private void draw(SheetBuilder sheet, Detail detail, Envelope cell) {
        Vec2 bubble = new Vec2(cell.getMinX() + Callout.RADIUS + 1, cell.getMinY() + Callout.RADIUS);
        sheet.draw(detail.callout().marks(bubble));
        Envelope rest = new Envelope(cell.getMinX() + BUBBLE, cell.getMaxX(), cell.getMinY(), cell.getMaxY());
        Margins margins = new Margins(MARGINS.left() - BUBBLE, MARGINS.right(), MARGINS.below(), MARGINS.above());
        Envelope paper = margins.within(rest);
        double height = paper.getHeight() - PlacedView.FOOT;
        Scale scale = scale(detail.reach(), Math.min(paper.getWidth(), height));
        Vec2 centre = detail.view().flat(detail.at());
        Envelope window = new Envelope(
                centre.x() - paper.getWidth() * scale.n() / 2,
                centre.x() + paper.getWidth() * scale.n() / 2,
                centre.y() - height * scale.n() / 2,
                centre.y() + height * scale.n() / 2);
        PlacedView view = sheet.view(detail.title(), rest, window, margins, scale);
        view.border();
        keepInside(sheet, cell, view.box());
        List<ViewLine> lines =
                RoundBars.outlined(building.shed(), HiddenLines.visible(items(detail, window), detail.view()));
        view.draw(Window.cut(lines, window), Pen.VISIBLE, Layer.STEEL);
        DetailFigures figures = new DetailFigures(view, detail.view(), window);
        if (detail.clad()) {
            roofFigures(figures, detail);
            clad(view, detail, window);
        } else {
            cleatFigures(figures, detail);
        }
        names(view, detail, lines, window);
    }

    /** Words of a detail stay inside its border. */
    private static void keepInside(SheetBuilder sheet, Envelope cell, Envelope box) {
        sheet.keepClear(new Envelope(cell.getMinX(), box.getMinX(), box.getMinY(), cell.getMaxY()));
        sheet.keepClear(new Envelope(box.getMaxX(), cell.getMaxX(), box.getMinY(), cell.getMaxY()));
        sheet.keepClear(new Envelope(cell.getMinX(), cell.getMaxX(), box.getMaxY(), cell.getMaxY()));
        sheet.keepClear(new Envelope(cell.getMinX(), cell.getMaxX(), cell.getMinY(), box.getMinY()));
    }

    private static Scale scale(double reach, double room) {
        return SCALES.stream()
                .filter(s -> s.toPaper(2 * reach) <= room)
                .findFirst()
                .orElse(new Scale(20));
    }

    private List<Item> items(Detail detail, Envelope window) {
        Shed shed = building.shed();
        Projection aside = Projection.of(detail.view().towards(), detail.view().up());
        double middle = detail.at().dot(detail.view().towards());
        Envelope deep = new Envelope(middle - DEEP, middle + DEEP, -1e9, 1e9);
        return Steelwork.items(shed, (part, place) -> detail.drawn().contains(part.kind())).stream()
                .filter(i -> Silhouette.bounds(List.of(i), detail.view()).intersects(window))
                .filter(i -> Silhouette.bounds(List.of(i), aside).intersects(deep))
                .toList();
    }

    private void clad(PlacedView view, Detail detail, Envelope window) {
        List<String> named = new ArrayList<>();
        for (CladdingSection.Cut cut : new CladdingSection(building, detail.at().y()).cuts()) {
            List<ViewLine> seen = Window.cut(cut.lines(), window);
            view.draw(seen, cut.pen(), Layer.STEEL);
            if (!seen.isEmpty() && !named.contains(cut.name())) {
                named.add(cut.name());
                ViewLine longest = seen.stream()
                        .reduce((a, b) -> a.length() >= b.length() ? a : b)
                        .orElseThrow();
                view.annotate().note(longest.from().plus(longest.to()).times(0.5), cut.name());
            }
        }
    }

    /** What the plane through the detail's middle meets: sheet ends, rows of purlins, gutters. */
    private void roofFigures(DetailFigures figures, Detail detail) {
        double y = detail.at().y();
        List<RoofRows> slopes =
                RoofRows.of(building.shed().definition(), building.shed().setOut());
        figures.ridge(slopes);
        for (RoofRows rows : slopes) {
            if (rows.from() <= y && y <= rows.to()) {
                boolean low = Math.abs(detail.at().x() - rows.slope().eave())
                        < rows.slope().run() / 2;
                figures.rows(rows, low ? rows.sheetLow() : rows.sheetHigh());
                building.cladding().gutters().stream()
                        .filter(g -> g.slope().line().equals(rows.slope().line()))
                        .filter(g -> g.from().y() <= y && y <= g.to().y())
                        .forEach(g -> figures.gutter(building, g, rows));
            }
        }
    }

    /** The cleat's edges and holes. */
    private void cleatFigures(DetailFigures figures, Detail detail) {
        building.shed()
                .parts(detail.named().get(0))
                .forEach(part -> part.places().stream()
                        .filter(p -> p.placement().origin().distance(detail.at()) < Tolerance.COINCIDENT)
                        .forEach(p -> figures.plate(part, p.placement(), new Vec2(1, 0))));
    }

    /** Each mark once, at the middle of what is seen of it. */
    private void names(PlacedView view, Detail detail, List<ViewLine> lines, Envelope window) {
        detail.named().stream()
                .flatMap(kind -> building.shed().parts(kind).stream())
                .forEach(part -> middle(part, lines, window).ifPresent(at -> name(view, part, at)));
    }

    private static void name(PlacedView view, Part part, Vec2 at) {
        String[] words =
                part.holes().isEmpty() ? FrameView.words(part) : new String[] {FrameView.words(part)[0], holes(part)};
        view.annotate().note(at, words);
    }

    private static String holes(Part part) {
        String words = Annotations.holeWords(part.holes().size(), part.holes().get(0));
        return part.holes().size() == 1 ? words : words + " at " + part.holeGauges();
    }

    private static Optional<Vec2> middle(Part part, List<ViewLine> lines, Envelope window) {
        List<ViewLine> own =
                lines.stream().filter(l -> l.part().equals(part.mark())).toList();
        return Window.cut(own, window).stream()
                .reduce((a, b) -> a.length() >= b.length() ? a : b)
                .map(l -> l.from().plus(l.to()).times(0.5));
    }
}
