package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.baywright.model.definition.Anchor;
import org.baywright.model.definition.Side;
import org.baywright.model.geometry.Tolerance;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.parts.Hole;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.ColumnLine;
import org.baywright.model.setout.SetOut;
import org.baywright.render.dimension.Notes;
import org.baywright.render.mark.Arc;
import org.baywright.render.mark.Layer;
import org.baywright.render.paper.Pen;
import org.locationtech.jts.geom.Envelope;

/** Where base plates and anchors go: the set-out plan from one datum, and a hole pattern for every plate. */
final class BaseSheet {
    private static final Margins MARGINS = new Margins(46, 30, 32, 24);
    private static final int PER_SHEET = 4;
    /** Cells before the first pattern: notes and section. */
    private static final int EXTRA = 2;

    private final Shed shed;
    private final SetOut setOut;
    private final Plan plan;
    private final PlanAxes axes;
    private final SlabLine concrete;
    private final List<Draft> drafts = new ArrayList<>();

    private BaseSheet(Shed shed) {
        this.shed = shed;
        this.setOut = shed.setOut();
        this.plan = new Plan(shed);
        this.axes = plan.axes();
        this.concrete = new SlabLine(shed, axes);
    }

    static List<Draft> of(Shed shed) {
        BaseSheet sheets = new BaseSheet(shed);
        sheets.plans();
        sheets.details();
        return sheets.drafts;
    }

    private SheetBuilder sheet(String title) {
        return new SheetBuilder("S5." + (drafts.size() + 1), title);
    }

    private void plans() {
        NotedRoom room = NotedRoom.of(BaseNotes.plan(shed), r -> plan.strips(r, MARGINS));
        for (int i = 0; i < room.strips().sheets(); i++) {
            SheetBuilder sheet = sheet("Base plate set-out");
            sheet.draw(room.notes());
            room.strips().on(i).forEach(strip -> strip(sheet, strip, room.strips()));
            drafts.add(sheet.build());
        }
    }

    private void strip(SheetBuilder sheet, Strip strip, Strips strips) {
        PlacedView view = sheet.view(
                strips.name("BASE PLATE SET-OUT", strip), strip.cell(), plan.bounds(strip), MARGINS, strips.scale());
        concrete.strip(view, shed, strip);
        plan.strings(view, strip);
        plan.steel(view, strip);
        plan.posts(view, strip);
        anchors(view, strip);
        running(view, strip);
        plan.widths(view, strip);
        plan.grid(view, strip);
        if (strip.firstFrame() == 1) {
            Datum.draw(view, axes.at(0, 0));
        }
        diagonals(view, strip);
        plan.matchLines(view, strip);
    }

    private void anchors(PlacedView view, Strip strip) {
        for (Footing footing : plan.footings(strip)) {
            for (Hole hole : footing.plate().holes()) {
                Vec3 at = footing.platePlace()
                        .placement()
                        .toWorld(0, hole.at().x(), hole.at().y());
                view.draw(List.of(Arc.circle(
                        view.port().toPaper(axes.at(at.x(), at.y())),
                        view.port().toPaper(hole.diameter() / 2),
                        Pen.DIMENSION,
                        Layer.ANCHOR,
                        footing.plate().mark())));
            }
        }
    }

    /** Running dimensions from the datum to every plate centre; both sides when their plates stand differently. */
    private void running(PlacedView view, Strip strip) {
        List<Footing> footings = plan.footings(strip);
        TreeSet<Double> left = along(footings, Side.LEFT);
        TreeSet<Double> right = along(footings, Side.RIGHT);
        double outerRight = plan.right();
        along(view, axes.alongside(), outerRight, right);
        if (!left.equals(right)) {
            along(view, axes.frameNames(), plan.left(), left);
        }
        double y = setOut.frameLine(axes.turned() ? strip.firstFrame() : strip.lastFrame());
        TreeSet<Double> across = new TreeSet<>();
        footings.forEach(f -> across.add(Tolerance.fabricated(f.middle().x())));
        List<Vec2> points = across.stream().map(x -> axes.at(x, y)).toList();
        view.annotate().running(axes.lineNames(), axes.at(0, y), points, axes.at(1, 0));
    }

    private static TreeSet<Double> along(List<Footing> footings, Side side) {
        TreeSet<Double> stations = new TreeSet<>();
        footings.stream()
                .filter(f -> f.side() == side)
                .forEach(f -> stations.add(Tolerance.fabricated(f.middle().y())));
        return stations;
    }

    private void along(PlacedView view, org.baywright.render.dimension.Side side, double x, TreeSet<Double> ys) {
        List<Vec2> points = ys.stream().map(y -> axes.at(x, y)).toList();
        view.annotate().running(side, axes.at(x, 0), points, axes.at(0, 1));
    }

    /** Both diagonals between string lines, of the main floor and of each lean-to. */
    private void diagonals(PlacedView view, Strip strip) {
        rectangle(view, 0, setOut.span(), strip.firstFrame(), strip.lastFrame());
        for (ColumnLine line : plan.lines(strip)) {
            if (line.leanTo()) {
                int from = Math.max(line.firstFrame(), strip.firstFrame());
                int to = Math.min(line.lastFrame(), strip.lastFrame());
                rectangle(view, setOut.main(line.side()).x(), line.x(), from, to);
            }
        }
    }

    private void rectangle(PlacedView view, double x0, double x1, int from, int to) {
        double y0 = setOut.frameLine(from);
        double y1 = setOut.frameLine(to);
        view.annotate().diagonal("", axes.at(x0, y0), axes.at(x1, y1));
        view.annotate().diagonal("", axes.at(x1, y0), axes.at(x0, y1));
    }

    /** The hole patterns, four to a sheet; the notes on anchors and a section take the place of two. */
    private void details() {
        List<PlateUse> uses = PlateUse.of(Footing.of(shed));
        Anchor anchor = shed.definition().anchor();
        int cells = uses.size() + EXTRA;
        for (int first = 0; first < cells; first += PER_SHEET) {
            SheetBuilder sheet = sheet("Base plate hole patterns");
            for (int i = first; i < Math.min(cells, first + PER_SHEET); i++) {
                Envelope cell = cell(i - first);
                if (i == 0) {
                    notes(sheet, cell);
                } else if (i == 1) {
                    double grout = shed.definition().plates().groutGap();
                    new BaseSection(uses.get(0), anchor, grout).draw(sheet, cell);
                } else {
                    new PlateDetail(uses.get(i - EXTRA), anchor).draw(sheet, cell);
                }
            }
            drafts.add(sheet.build());
        }
    }

    private static Envelope cell(int i) {
        return Cells.column(Cells.row(SheetFrame.room(), i / 2, 2), i % 2, 2);
    }

    private void notes(SheetBuilder sheet, Envelope cell) {
        double width = cell.getWidth() / 2 - 6;
        List<Notes> columns = Notes.of(BaseNotes.anchors(shed), width).columns(cell.getHeight() - 6);
        for (int i = 0; i < columns.size(); i++) {
            sheet.draw(columns.get(i).draw(new Vec2(cell.getMinX() + 2 + i * (width + 6), cell.getMaxY() - 4)));
        }
    }
}
