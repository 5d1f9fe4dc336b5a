package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.baywright.model.definition.Anchor;
import org.baywright.model.definition.Side;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.parts.PlateStand;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.ColumnLine;
import org.baywright.model.setout.SetOut;
import org.baywright.render.dimension.Notes;
import org.baywright.render.dimension.Paragraph;
import org.locationtech.jts.geom.Envelope;

/** Where base plates and anchors go: the set-out plan from one datum, and a hole pattern for every plate. */
final class BaseSheet {
    private static final Margins MARGINS = new Margins(46, 30, 32, 24);

    /** Rows stand closer where that draws the plan larger. */
    private static final Margins TIGHT = new Margins(30, 20, 13, 20);

    /** Paper for one more row of dimensions. */
    private static final double ROW = 20;

    private static final double TIGHT_ROW = 10;

    private static final int PER_SHEET = 4;
    /** Cells before the first pattern: notes and section. */
    private static final int EXTRA = 2;

    private final Shed shed;
    private final SetOut setOut;
    private final Plan plan;
    private final PlanAxes axes;
    private final List<PlateStand> stands;
    private final PlateRows rows;
    private final List<Paragraph> notes;
    private final Margins margins;
    private final SlabLine concrete;
    private final List<Draft> drafts = new ArrayList<>();

    private BaseSheet(Shed shed) {
        this.shed = shed;
        this.setOut = shed.setOut();
        this.plan = new Plan(shed);
        this.axes = plan.axes();
        this.stands = PlateStand.of(shed);
        this.rows = new PlateRows(plan, setOut, stands);
        this.concrete = SlabLine.of(shed, axes);
        this.notes = BaseNotes.plan(shed, concrete.joints());
        this.margins = plan.margins(notes, rows.margins(MARGINS, ROW), rows.margins(TIGHT, TIGHT_ROW));
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
        NotedRoom room = plan.noted(notes, margins);
        for (int i = 0; i < room.strips().sheets(); i++) {
            SheetBuilder sheet = sheet("Base plate set-out");
            sheet.draw(room.notes());
            room.strips().on(i).forEach(strip -> strip(sheet, strip, room.strips()));
            drafts.add(sheet.build());
        }
    }

    private void strip(SheetBuilder sheet, Strip strip, Strips strips) {
        PlacedView view = sheet.view(
                strips.name("BASE PLATE SET-OUT", strip), strip.cell(), plan.bounds(strip), margins, strips.scale());
        concrete.strip(view, shed, strip);
        plan.strings(view, strip);
        plan.steel(view, strip);
        plan.posts(view, strip);
        rows.holes(view, strip);
        running(view, strip);
        rows.posts(view, strip);
        plan.widths(view, strip);
        plan.grid(view, strip);
        if (strip.firstFrame() == 1) {
            Datum.draw(view, axes.at(0, 0));
        }
        diagonals(view, strip);
        plan.matchLines(view, strip);
    }

    /** Running dimensions from the datum to every plate centre; both sides when their plates stand differently. */
    private void running(PlacedView view, Strip strip) {
        List<PlateStand> columns = rows.in(strip).filter(PlateStand::isOfFrame).toList();
        TreeSet<Double> left = along(columns, Side.LEFT);
        TreeSet<Double> right = along(columns, Side.RIGHT);
        rows.along(view, axes.alongside(), plan.right(), right);
        if (!left.equals(right)) {
            rows.along(view, axes.frameNames(), plan.left(), left);
        }
        double y = setOut.frameLine(axes.turned() ? strip.firstFrame() : strip.lastFrame());
        rows.across(
                view,
                axes.lineNames(),
                y,
                PlateRows.distinct(columns.stream().map(s -> s.middle().x())));
    }

    private static TreeSet<Double> along(List<PlateStand> columns, Side side) {
        return PlateRows.distinct(columns.stream()
                .filter(s -> s.uprightPlace().side() == side)
                .map(s -> s.middle().y()));
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
        List<PlateUse> uses = PlateUse.of(stands);
        Anchor anchor = shed.definition().anchor();
        int cells = uses.size() + EXTRA;
        for (int first = 0; first < cells; first += PER_SHEET) {
            SheetBuilder sheet = sheet("Base plate hole patterns");
            for (int i = first; i < Math.min(cells, first + PER_SHEET); i++) {
                Envelope cell = cell(i - first, Math.min(cells - first, PER_SHEET));
                if (i == 0) {
                    notes(sheet, cell);
                } else if (i == 1) {
                    new BaseSection(shed, PlateUse.underColumn(stands)).draw(sheet, cell);
                } else {
                    new PlateDetail(uses.get(i - EXTRA), anchor).draw(sheet, cell);
                }
            }
            drafts.add(sheet.build());
        }
    }

    /** Two rows of two; fewer take the whole sheet. */
    private static Envelope cell(int i, int of) {
        return Cells.column(Cells.row(SheetFrame.room(), i / 2, (of + 1) / 2), i % 2, Math.min(of, 2));
    }

    private void notes(SheetBuilder sheet, Envelope cell) {
        double width = cell.getWidth() / 2 - 6;
        List<Notes> columns = Notes.of(BaseNotes.anchors(shed), width).columns(cell.getHeight() - 6);
        for (int i = 0; i < columns.size(); i++) {
            sheet.draw(columns.get(i).draw(new Vec2(cell.getMinX() + 2 + i * (width + 6), cell.getMaxY() - 4)));
        }
    }
}
