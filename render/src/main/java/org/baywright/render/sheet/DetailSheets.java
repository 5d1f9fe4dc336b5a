package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.baywright.model.cladding.Building;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.parts.Part;
import org.baywright.render.dimension.Annotations;
import org.baywright.render.dimension.Notes;
import org.baywright.render.dimension.Paragraph;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Mark;
import org.baywright.render.paper.Pen;
import org.baywright.render.paper.Scale;
import org.baywright.render.view.ViewLine;
import org.baywright.render.view.Window;
import org.locationtech.jts.geom.Envelope;

/** Eaves, ridge and cleats close up, from the model's own parts. */
final class DetailSheets {
    private static final Margins MARGINS = new Margins(4, 6, 3, 4);

    /** Room for the bubble before the title. */
    private static final double BUBBLE = 2 * Callout.RADIUS + 3;

    private static final List<Scale> SCALES = List.of(new Scale(5), new Scale(10), new Scale(20));

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
        DetailScene scene = new DetailScene(building.shed(), detail, window);
        List<ViewLine> lines = scene.whole();
        view.draw(Window.cut(lines, window), Pen.VISIBLE, Layer.STEEL);
        List<ViewLine> cuts = scene.cuts();
        view.draw(Window.cut(cuts, window), Pen.OUTLINE, Layer.STEEL);
        DetailFigures figures = new DetailFigures(view, detail.view(), window);
        if (detail.clad()) {
            new RoofDetail(building, detail, figures).draw();
        } else if (detail.isOfLifting()) {
            new LiftingDetail(scene, figures).draw();
        } else {
            new CleatDetail(building.shed(), detail, figures).draw();
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
