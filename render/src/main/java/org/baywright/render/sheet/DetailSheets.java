package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.baywright.model.cladding.Building;
import org.baywright.model.definition.LiftingBeam;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Plane;
import org.baywright.model.geometry.Tolerance;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Place;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.RoofRows;
import org.baywright.render.dimension.Annotations;
import org.baywright.render.dimension.Figure;
import org.baywright.render.dimension.Notes;
import org.baywright.render.dimension.Paragraph;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Stroke;
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

    /** Room for the bubble before the title. */
    private static final double BUBBLE = 2 * Callout.RADIUS + 3;

    /** Parts further than this before or behind the middle are left out. */
    private static final double DEEP = 260;

    private static final List<Scale> SCALES = List.of(new Scale(5), new Scale(10), new Scale(20));

    private static final Set<PartKind> LIFTING =
            EnumSet.of(PartKind.LIFTING_BEAM, PartKind.LIFTING_BRACKET, PartKind.LIFTING_PLATE);

    private final Building building;

    private DetailSheets(Building building) {
        this.building = building;
    }

    /** Sections on one sheet, cleats on another; none for a bare frame. */
    static List<Draft> of(Building building) {
        DetailSheets sheets = new DetailSheets(building);
        Map<String, List<Detail>> bySheet = Details.of(building).stream()
                .collect(Collectors.groupingBy(d -> d.callout().sheet(), LinkedHashMap::new, Collectors.toList()));
        return bySheet.entrySet().stream()
                .map(e -> sheets.sheet(e.getKey(), e.getValue()))
                .toList();
    }

    private Draft sheet(String number, List<Detail> details) {
        Grid grid = Grid.of(details);
        SheetBuilder sheet = new SheetBuilder(number, title(details.get(0)));
        for (int i = 0; i < details.size(); i++) {
            draw(sheet, details.get(i), grid.cell(i));
        }
        if (details.size() < grid.size()) {
            sheet.draw(notes(details.get(0), grid.cell(grid.size() - 1)));
        }
        return sheet.build();
    }

    private static String title(Detail detail) {
        if (detail.isOfLifting()) {
            return "Details of lifting beam";
        }
        return detail.clad() ? "Details of eaves and ridge" : "Details of cleats";
    }

    /** How the cells of a sheet lie. */
    private record Grid(int columns, int rows) {
        /** A lifting beam hangs far below its rafter and so takes tall cells. */
        static Grid of(List<Detail> details) {
            if (details.get(0).isOfLifting()) {
                return new Grid(details.size() + 1, 1);
            }
            return new Grid(details.size() > 4 ? 3 : 2, 2);
        }

        int size() {
            return columns * rows;
        }

        Envelope cell(int i) {
            return Cells.column(Cells.row(SheetFrame.room(), i / columns, rows), i % columns, columns);
        }
    }

    private static List<Mark> notes(Detail first, Envelope cell) {
        List<Paragraph> paragraphs = new ArrayList<>(List.of(Paragraph.heading("Notes")));
        (first.isOfLifting() ? Cautions.LIFTING_BEAM : Cautions.DETAILS)
                .forEach(words -> paragraphs.add(Paragraph.bullet(words)));
        return Notes.of(paragraphs, cell.getWidth() - 10).draw(new Vec2(cell.getMinX() + 6, cell.getMaxY() - 4));
    }

    private void draw(SheetBuilder sheet, Detail detail, Envelope cell) {
        Vec2 bubble = new Vec2(cell.getMinX() + Callout.RADIUS + 1, cell.getMinY() + Callout.RADIUS);
        sheet.draw(detail.callout().marks(bubble));
        Envelope rest = new Envelope(cell.getMinX() + BUBBLE, cell.getMaxX(), cell.getMinY(), cell.getMaxY());
        Margins margins = new Margins(MARGINS.left() - BUBBLE, MARGINS.right(), MARGINS.below(), MARGINS.above());
        Envelope paper = margins.within(rest);
        double height = paper.getHeight() - PlacedView.FOOT;
        Scale scale = scale(detail.look().reach(), paper.getWidth(), height);
        Vec2 centre = detail.view().flat(detail.at());
        Envelope window = new Envelope(
                centre.x() - paper.getWidth() * scale.n() / 2,
                centre.x() + paper.getWidth() * scale.n() / 2,
                centre.y() - height * scale.n() / 2,
                centre.y() + height * scale.n() / 2);
        PlacedView view = sheet.view(detail.title(), rest, window, margins, scale);
        view.border();
        keepInside(sheet, cell, view.box());
        List<ViewLine> lines = RoundBars.outlined(
                building.shed(),
                HiddenLines.visible(items(detail, detail.parts().drawn(), window), detail.view()));
        view.draw(Window.cut(lines, window), Pen.VISIBLE, Layer.STEEL);
        List<ViewLine> cuts = cuts(detail, window);
        view.draw(Window.cut(cuts, window), Pen.OUTLINE, Layer.STEEL);
        DetailFigures figures = new DetailFigures(view, detail.view(), window);
        if (detail.clad()) {
            roofFigures(figures, detail);
            clad(view, detail, window);
        } else if (detail.isOfLifting()) {
            lifting(view, figures, detail);
        } else {
            cleatFigures(view, figures, detail);
        }
        List<ViewLine> all = new ArrayList<>(lines);
        all.addAll(cuts);
        names(view, detail, all, window);
    }

    /** Words of a detail stay inside its border. */
    private static void keepInside(SheetBuilder sheet, Envelope cell, Envelope box) {
        sheet.keepClear(new Envelope(cell.getMinX(), box.getMinX(), box.getMinY(), cell.getMaxY()));
        sheet.keepClear(new Envelope(box.getMaxX(), cell.getMaxX(), box.getMinY(), cell.getMaxY()));
        sheet.keepClear(new Envelope(cell.getMinX(), cell.getMaxX(), box.getMaxY(), cell.getMaxY()));
        sheet.keepClear(new Envelope(cell.getMinX(), cell.getMaxX(), cell.getMinY(), box.getMinY()));
    }

    private static Scale scale(Vec2 reach, double width, double height) {
        return SCALES.stream()
                .filter(s -> s.toPaper(2 * reach.x()) <= width && s.toPaper(2 * reach.y()) <= height)
                .findFirst()
                .orElse(new Scale(20));
    }

    /** The edges of what is shown only where the plane through the middle cuts it. */
    private List<ViewLine> cuts(Detail detail, Envelope window) {
        Vec3 towards = detail.view().towards();
        Plane plane = new Plane(towards, detail.at().dot(towards));
        List<ViewLine> edges = new ArrayList<>();
        for (Item item : items(detail, detail.parts().cut(), window)) {
            for (List<Vec2> ring : Silhouette.cut(item, plane, detail.view())) {
                for (int i = 0; i < ring.size(); i++) {
                    edges.add(new ViewLine(ring.get(i), ring.get((i + 1) % ring.size()), item.part()));
                }
            }
        }
        return edges;
    }

    private List<Item> items(Detail detail, Set<PartKind> kinds, Envelope window) {
        Shed shed = building.shed();
        Projection aside = Projection.of(detail.view().towards(), detail.view().up());
        double middle = detail.at().dot(detail.view().towards());
        Envelope deep = new Envelope(middle - DEEP, middle + DEEP, -1e9, 1e9);
        return Steelwork.items(shed, (part, place) -> kinds.contains(part.kind())).stream()
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

    /**
     * Heights from the hook to the top of the bracket, and where the hook is at its highest; seen along the frame of a
     * beam across the building the hook hangs further in, where the section shows it.
     */
    private void lifting(PlacedView view, DetailFigures figures, Detail detail) {
        LiftingBeam beam = building.shed().definition().envelope().liftingBeam().orElseThrow();
        double hook = beam.underside() - beam.hookDrop();
        boolean fromFront = Math.abs(detail.view().towards().y()) > 0.99;
        boolean hangsHere = beam.along() || !fromFront;
        TreeSet<Double> heights = new TreeSet<>(hangsHere ? List.of(hook, beam.underside()) : List.of());
        Envelope plate = new Envelope();
        List<String> plates = building.shed().parts(PartKind.LIFTING_PLATE).stream()
                .map(Part::mark)
                .toList();
        for (Item item : items(detail, LIFTING, figures.window())) {
            Envelope seen = Silhouette.bounds(List.of(item), detail.view());
            heights.add(Tolerance.fabricated(seen.getMinY()));
            heights.add(Tolerance.fabricated(seen.getMaxY()));
            if (plates.contains(item.part())) {
                plate.expandToInclude(seen);
            }
        }
        figures.chain(heights.stream().map(z -> new Vec2(plate.getMaxX(), z)).toList(), new Vec2(1, 0));
        if (!hangsHere) {
            return;
        }
        Vec2 middle = detail.view().flat(detail.at());
        double x = fromFront
                ? detail.view()
                        .flat(new Vec3(beam.offset(), detail.at().y(), 0))
                        .x()
                : middle.x();
        Vec2 low = new Vec2(x, hook);
        view.line(new Vec2(x, beam.underside()), low, Pen.DIMENSION, Layer.STEEL);
        view.annotate().note(low, "Hook at its highest +" + Figure.length(hook));
    }

    /** The cleat's edges and holes, and its holes where they face the eye. */
    private void cleatFigures(PlacedView view, DetailFigures figures, Detail detail) {
        for (Part part : building.shed().parts(detail.parts().named().get(0))) {
            for (Place place : part.places()) {
                if (place.placement().origin().distance(detail.at()) < Tolerance.COINCIDENT) {
                    holes(view, detail.view(), part, place.placement());
                    figures.plate(part, place.placement(), new Vec2(1, 0));
                }
            }
        }
    }

    private static void holes(PlacedView view, Projection look, Part part, Placement plate) {
        if (Math.abs(plate.along().dot(look.towards())) > 1 - Tolerance.COINCIDENT) {
            part.holes().forEach(hole -> {
                List<Vec2> ring = hole.outline().stream()
                        .map(p -> view.port().toPaper(look.flat(plate.toWorld(0, p.x(), p.y()))))
                        .toList();
                view.draw(List.of(new Stroke(ring, true, Pen.VISIBLE, Layer.STEEL, part.mark())));
            });
        }
    }

    /** Each mark once, at the middle of what is seen of it. */
    private void names(PlacedView view, Detail detail, List<ViewLine> lines, Envelope window) {
        detail.parts().named().stream()
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
