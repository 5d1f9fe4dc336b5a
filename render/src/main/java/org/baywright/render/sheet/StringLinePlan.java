package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.baywright.model.definition.Side;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.parts.PlateStand;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.ColumnLine;
import org.baywright.model.setout.SetOut;
import org.baywright.render.dimension.Paragraph;

/**
 * The plan for string lines: lines, diagonals, and running dimensions from the datum to middles of plates and to hole
 * lines.
 */
final class StringLinePlan {
    /** Paper for bubbles, and for a row of dimensions beyond them. */
    private static final double BUBBLES = 20;

    private static final double ROW = 24;

    /** Rows in it may stand closer, their figures on leaders. */
    private static final double TIGHT_ROW = 15.5;

    /** Paper for the chains of widths. */
    private static final double WIDTHS = 20;

    /** From here on figures have six digits, and stand upright beyond their row. */
    private static final double LONG = 100_000;

    private static final double LONGER = 4.5;

    /** With more bays than this in a strip, only the first of each length shows its diagonal. */
    private static final int FEW_BAYS = 8;

    private final Shed shed;
    private final SetOut setOut;
    private final List<PlateStand> stands;
    private final Plan plan;
    private final PlanAxes axes;
    private final PlateRows rows;
    private final SlabLine concrete;
    private final boolean holeLines;
    private final Margins margins;

    private StringLinePlan(Shed shed, List<PlateStand> stands) {
        this.shed = shed;
        this.setOut = shed.setOut();
        this.stands = stands;
        this.plan = new Plan(shed);
        this.axes = plan.axes();
        this.rows = new PlateRows(plan, setOut, stands);
        this.concrete = SlabLine.of(shed, axes);
        Margins full = margins(ROW, 2);
        Margins less = margins(ROW, 1);
        // Figures of hole lines crowd a plan without paper to spare; each plate's own drawing has them too.
        this.holeLines = plan.margins(notes(true), full, less) == full;
        this.margins = holeLines ? full : plan.margins(notes(false), less, margins(TIGHT_ROW, 1));
    }

    /** Room on each side for so many rows of columns, and beyond them of posts. */
    private Margins margins(double shortRow, int count) {
        double row = shortRow + (setOut.length() < LONG ? 0 : LONGER);
        double left = BUBBLES + row * (leftToo(columns().toList()) ? count : 0);
        double right = row * count;
        double names = BUBBLES + count * shortRow;
        Margins columns =
                axes.turned() ? new Margins(names, WIDTHS, right, left) : new Margins(left, right, WIDTHS, names);
        return rows.margins(columns, shortRow);
    }

    private Stream<PlateStand> columns() {
        return stands.stream().filter(PlateStand::isOfFrame);
    }

    /** Whether the left-hand side needs rows of its own: its plates stand differently along the building. */
    private static boolean leftToo(List<PlateStand> columns) {
        return !middles(columns, Side.LEFT).equals(middles(columns, Side.RIGHT))
                || !holeLines(columns, Side.LEFT).equals(holeLines(columns, Side.RIGHT));
    }

    static List<Draft> of(Shed shed, List<PlateStand> stands) {
        return new StringLinePlan(shed, stands).drafts();
    }

    private List<Draft> drafts() {
        NotedRoom room = plan.noted(notes(holeLines), margins);
        List<Draft> drafts = new ArrayList<>();
        for (int i = 0; i < room.strips().sheets(); i++) {
            SheetBuilder sheet = new SheetBuilder("L2." + (i + 1), "Set-out plan");
            sheet.draw(room.notes());
            room.strips().on(i).forEach(strip -> strip(sheet, strip, room.strips()));
            drafts.add(sheet.build());
        }
        return drafts;
    }

    private List<Paragraph> notes(boolean withHoleLines) {
        String holes = withHoleLines
                ? ", one their hole lines"
                : " (their hole lines: each plate's own drawing, from these lines)";
        return List.of(
                Paragraph.bullet("Every running dimension starts at the datum, A/1: one tape, never bay by bay. One row"
                        + " gives the middles of the plates under columns" + holes + ", one the middles of"
                        + " the plates under mullions and jambs of that wall. Minus: outside line A or before line 1."),
                Paragraph.bullet(
                        "Long dashes are string lines at the outside faces of columns. Thin diagonals are those"
                                + " of floors and bays; each has a twin as long the other way, and bays alike in"
                                + " length are alike."),
                Paragraph.bullet(BaseNotes.concreteLines(shed, concrete.joints())
                        + " Each plate's own drawing follows; every hole is in" + " setout.csv."));
    }

    private void strip(SheetBuilder sheet, Strip strip, Strips strips) {
        PlacedView view = sheet.view(
                strips.name("SET-OUT PLAN", strip), strip.cell(), plan.bounds(strip), margins, strips.scale());
        concrete.strip(view, shed, strip);
        plan.strings(view, strip);
        plan.steel(view, strip);
        plan.posts(view, strip);
        rows.holes(view, strip);
        columns(view, strip);
        rows.posts(view, strip);
        plan.widths(view, strip);
        plan.grid(view, strip);
        if (strip.firstFrame() == 1) {
            Datum.draw(view, axes.at(0, 0));
        }
        diagonals(view, strip);
        plan.matchLines(view, strip);
    }

    /** Along on the right-hand side, on the left too when its plates stand differently; and across. */
    private void columns(PlacedView view, Strip strip) {
        List<PlateStand> columns = rows.in(strip).filter(PlateStand::isOfFrame).toList();
        along(view, axes.alongside(), plan.right(), columns, Side.RIGHT);
        if (leftToo(columns)) {
            along(view, axes.frameNames(), plan.left(), columns, Side.LEFT);
        }
        double y = setOut.frameLine(axes.turned() ? strip.firstFrame() : strip.lastFrame());
        rows.across(
                view,
                axes.lineNames(),
                y,
                PlateRows.distinct(columns.stream().map(s -> s.middle().x())));
        if (holeLines) {
            rows.across(
                    view,
                    axes.lineNames(),
                    y,
                    PlateRows.distinct(
                            columns.stream().flatMap(s -> s.holes().stream().map(Vec2::x))));
        }
    }

    private static TreeSet<Double> middles(List<PlateStand> columns, Side side) {
        return PlateRows.distinct(of(columns, side).map(s -> s.middle().y()));
    }

    private static TreeSet<Double> holeLines(List<PlateStand> columns, Side side) {
        return PlateRows.distinct(
                of(columns, side).flatMap(s -> s.holes().stream().map(Vec2::y)));
    }

    private static Stream<PlateStand> of(List<PlateStand> columns, Side side) {
        return columns.stream().filter(s -> s.uprightPlace().side() == side);
    }

    private void along(
            PlacedView view, org.baywright.render.dimension.Side on, double x, List<PlateStand> columns, Side side) {
        rows.along(view, on, x, middles(columns, side));
        if (holeLines) {
            rows.along(view, on, x, holeLines(columns, side));
        }
    }

    private void diagonals(PlacedView view, Strip strip) {
        int first = strip.firstFrame();
        int last = strip.lastFrame();
        both(view, 0, setOut.span(), first, last);
        TreeSet<Double> shown = new TreeSet<>();
        for (int bay = first; bay < last && last - first > 1; bay++) {
            double length = setOut.frameLine(bay + 1) - setOut.frameLine(bay);
            if (shown.add(length) || last - first <= FEW_BAYS) {
                boolean down = (bay - first) % 2 == 0;
                Vec2 from = axes.at(down ? 0 : setOut.span(), setOut.frameLine(bay));
                Vec2 to = axes.at(down ? setOut.span() : 0, setOut.frameLine(bay + 1));
                view.annotate().diagonal("", from, to);
            }
        }
        for (ColumnLine line : plan.lines(strip)) {
            if (line.leanTo()) {
                both(
                        view,
                        setOut.main(line.side()).x(),
                        line.x(),
                        Math.max(line.firstFrame(), first),
                        Math.min(line.lastFrame(), last));
            }
        }
    }

    private void both(PlacedView view, double x0, double x1, int from, int to) {
        double y0 = setOut.frameLine(from);
        double y1 = setOut.frameLine(to);
        view.annotate().diagonal("", axes.at(x0, y0), axes.at(x1, y1));
        view.annotate().diagonal("", axes.at(x1, y0), axes.at(x0, y1));
    }
}
