package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.baywright.model.cladding.Building;
import org.baywright.model.definition.LeanTo;
import org.baywright.model.definition.RoofShape;
import org.baywright.model.definition.Side;
import org.baywright.model.definition.Slab;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.parts.Assemblies;
import org.baywright.model.parts.Assembly;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.PlateStand;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.ColumnLine;
import org.baywright.model.setout.OpeningPlace;
import org.baywright.model.setout.RoofLine;
import org.baywright.model.setout.SetOut;
import org.baywright.model.takeoff.Summary;
import org.baywright.render.dimension.Figure;
import org.baywright.render.dimension.Label;
import org.baywright.render.dimension.Paragraph;
import org.baywright.render.dimension.Spot;
import org.baywright.render.mark.Layer;
import org.baywright.render.paper.Face;
import org.baywright.render.paper.Pen;
import org.baywright.render.view.ViewLine;

/** The floor plan: grid, string lines, columns, bays and widths, areas and the fall of the roof. */
final class PlanSheet {
    private static final Margins MARGINS = new Margins(24, 30, 30, 24);

    /** Rows and bubbles stand closer where that draws the plan larger. */
    private static final Margins TIGHT = new Margins(22, 24, 22, 20);

    private static final double NAME = 3.5;

    /** More columns than this on one sheet and each mark is named once only. */
    private static final int FEW = 24;

    /** Where in a bay a fall is shown, and from its other end an area, so that both have room in one bay. */
    private static final double ASIDE = 0.75;

    /** Along a lifting beam, where it is named: off the ridge and off the names of floors. */
    private static final double BEAM_NAMED_AT = 0.3;

    private final Shed shed;
    private final SetOut setOut;
    private final Assemblies assemblies;
    private final PlanWalls walls;
    private final Plan plan;
    private final PlanAxes axes;
    private final Margins margins;
    private final Set<String> named = new HashSet<>();

    private PlanSheet(Building building) {
        this.shed = building.shed();
        this.setOut = shed.setOut();
        this.assemblies = Assemblies.of(shed);
        this.plan = new Plan(shed);
        this.axes = plan.axes();
        this.margins = plan.margins(notes(), MARGINS, TIGHT);
        this.walls = new PlanWalls(building, SlabLine.edgeOf(shed, axes));
    }

    static List<Draft> of(Building building) {
        return new PlanSheet(building).drafts();
    }

    private List<Draft> drafts() {
        NotedRoom room = plan.noted(notes(), margins);
        List<Draft> drafts = new ArrayList<>();
        for (int i = 0; i < room.strips().sheets(); i++) {
            SheetBuilder sheet = new SheetBuilder(room.strips().sheets() > 1 ? "S2." + (i + 1) : "S2", "Floor plan");
            sheet.draw(room.notes());
            named.clear();
            room.strips().on(i).forEach(strip -> strip(sheet, strip, room.strips()));
            drafts.add(sheet.build());
        }
        return drafts;
    }

    private void strip(SheetBuilder sheet, Strip strip, Strips strips) {
        String name = strips.name("FLOOR PLAN", strip);
        PlacedView view = sheet.view(name, strip.cell(), plan.bounds(strip), margins, strips.scale());
        plan.strings(view, strip);
        plan.steel(view, strip);
        plan.posts(view, strip);
        walls.draw(view, axes, first(strip), last(strip));
        List<OpeningPlace> without = walls.dimension(view, axes, first(strip), last(strip));
        ridge(view, strip);
        liftingBeam(view, strip);
        bays(view, strip);
        plan.widths(view, strip);
        plan.grid(view, strip);
        areas(view, strip, strips.parted() ? ", in all" : "");
        falls(view, strip);
        walls.name(view, axes, first(strip), last(strip), without);
        columns(view, strip);
        plan.matchLines(view, strip);
    }

    private void bays(PlacedView view, Strip strip) {
        List<Vec2> points = Plan.frames(strip)
                .mapToObj(f -> axes.at(plan.right(), setOut.frameLine(f)))
                .toList();
        view.annotate().chainWithOverall(axes.alongside(), points);
    }

    private boolean gable() {
        return shed.definition().shape().roofShape() == RoofShape.GABLE;
    }

    private double first(Strip strip) {
        return setOut.frameLine(strip.firstFrame());
    }

    private double last(Strip strip) {
        return setOut.frameLine(strip.lastFrame());
    }

    private void ridge(PlacedView view, Strip strip) {
        if (gable()) {
            double x = setOut.span() / 2;
            view.line(axes.at(x, first(strip)), axes.at(x, last(strip)), Pen.GRID, Layer.GRID);
        }
    }

    /** The middle of a lifting beam overhead, and its name. */
    private void liftingBeam(PlacedView view, Strip strip) {
        for (MemberAxis beam : MemberAxis.of(shed, Set.of(PartKind.LIFTING_BEAM))) {
            double from = Math.max(beam.from().y(), first(strip));
            double to = Math.min(beam.to().y(), last(strip));
            if (from <= to) {
                Vec2 start = axes.at(beam.from().x(), from);
                Vec2 end = axes.at(beam.to().x(), to);
                view.draw(List.of(new ViewLine(start, end, beam.part().mark())), Pen.HIDDEN, Layer.STEEL);
                Vec2 named = start.plus(end.minus(start).times(BEAM_NAMED_AT));
                view.annotate().note(named, beam.part().mark() + " lifting beam over");
            }
        }
    }

    /** Arrows down the slopes, in the second bay of the strip or the only one, and the name of the ridge. */
    private void falls(PlacedView view, Strip strip) {
        boolean one = strip.lastFrame() - strip.firstFrame() == 1;
        double y = inBay(strip.firstFrame() + (one ? 0 : 1), one ? ASIDE : 0.5);
        double x = setOut.span() / 2;
        if (gable()) {
            label(view, axes.at(x, y), 2.5, Face.REGULAR, "Ridge");
            fall(view, setOut.main(Side.LEFT).roof(), x * 0.75, x * 0.45, y);
            fall(view, setOut.main(Side.RIGHT).roof(), x * 1.25, x * 1.55, y);
        } else {
            fall(view, setOut.main(Side.LEFT).roof(), x * 1.2, x * 0.8, y);
        }
        for (ColumnLine line : plan.lines(strip)) {
            if (line.leanTo()) {
                double main = setOut.main(line.side()).x();
                int frame = Math.max(line.firstFrame(), strip.firstFrame());
                double at = inBay(frame, ASIDE);
                fall(view, line.roof(), main + (line.x() - main) * 0.35, main + (line.x() - main) * 0.65, at);
            }
        }
    }

    /** A place along the building, so much of a bay past a frame. */
    private double inBay(int frame, double share) {
        double from = setOut.frameLine(frame);
        return from + share * (setOut.frameLine(frame + 1) - from);
    }

    private void fall(PlacedView view, RoofLine roof, double from, double to, double y) {
        if (roof.rise() == 0) {
            return;
        }
        Vec2 tail = axes.at(from, y);
        Vec2 tip = axes.at(to, y);
        Vec2 way = tip.minus(tail).unit().times(view.port().scale().n());
        view.line(tail, tip, Pen.DIMENSION, Layer.LABEL);
        view.line(tip, tip.minus(way.times(2.5)).plus(way.left().times(0.7)), Pen.DIMENSION, Layer.LABEL);
        view.line(tip, tip.minus(way.times(2.5)).minus(way.left().times(0.7)), Pen.DIMENSION, Layer.LABEL);
        label(view, axes.at((from + to) / 2, y), 2.5, Face.REGULAR, "Fall " + Figure.angle(roof.pitchDeg()));
    }

    private static void label(PlacedView view, Vec2 at, double height, Face face, String... words) {
        Label label = Label.of(view.port().toPaper(at), Label.Pointer.BESIDE, words);
        view.annotate()
                .place(new Label(
                        label.lines(),
                        label.target(),
                        label.pointer(),
                        List.of(Spot.RIGHT, Spot.ABOVE_RIGHT, Spot.BELOW_RIGHT, Spot.LEFT),
                        height,
                        face,
                        ""));
    }

    private void areas(PlacedView view, Strip strip, String inAll) {
        int middle = (strip.firstFrame() + strip.lastFrame()) / 2;
        // The falls stand in the second bay.
        double y = inBay(middle > strip.firstFrame() + 1 ? middle : strip.firstFrame(), 1 - ASIDE);
        double main = Summary.of(shed).get("mainFloorAreaM2");
        label(view, axes.at(setOut.span() * 0.3, y), NAME, Face.BOLD, "Main floor" + inAll, area(main));
        for (LeanTo leanTo : shed.definition().leanTos()) {
            int from = Math.max(leanTo.firstFrame(), strip.firstFrame());
            int to = Math.min(leanTo.lastFrame(), strip.lastFrame());
            if (from < to) {
                ColumnLine side = setOut.main(leanTo.side());
                double x = side.x() - side.inward() * leanTo.width() / 2;
                Vec2 at = axes.at(x, inBay((from + to) / 2, 1 - ASIDE));
                label(
                        view,
                        at,
                        NAME,
                        Face.BOLD,
                        "Lean-to " + leanTo.side().name().toLowerCase(Locale.ROOT) + inAll,
                        area(area(leanTo)));
            }
        }
    }

    private double area(LeanTo leanTo) {
        return leanTo.width() * (setOut.frameLine(leanTo.lastFrame()) - setOut.frameLine(leanTo.firstFrame())) / 1e6;
    }

    private static String area(double m2) {
        return String.format(Locale.ROOT, "%.1f m²", m2);
    }

    /** Every column by its mark when there are few, else each mark once. */
    private void columns(PlacedView view, Strip strip) {
        List<PlateStand> columns = plan.columns(strip);
        for (PlateStand stand : columns) {
            Part column = stand.upright();
            boolean first = named.add(column.mark());
            if (!first && columns.size() > FEW) {
                continue;
            }
            boolean typical = columns.size() > FEW && column.quantity() > 1;
            Vec2 at = axes.at(stand.middle().x(), stand.middle().y());
            Label label = Label.of(
                    view.port().toPaper(at), Label.Pointer.BESIDE, typical ? column.mark() + " typical" : piece(stand));
            view.annotate()
                    .place(new Label(
                            label.lines(),
                            label.target(),
                            label.pointer(),
                            List.of(Spot.BELOW_RIGHT, Spot.ABOVE_RIGHT, Spot.BELOW_LEFT, Spot.ABOVE_LEFT),
                            label.height(),
                            Face.REGULAR,
                            column.mark()));
        }
    }

    /** The mark of a column with its plates. */
    private String piece(PlateStand stand) {
        return assemblies.of(stand.upright()).stream()
                .filter(assembly -> assembly.places().contains(stand.uprightPlace()))
                .map(Assembly::mark)
                .findFirst()
                .orElseThrow();
    }

    private List<Paragraph> notes() {
        List<Paragraph> notes = new ArrayList<>();
        Summary summary = Summary.of(shed);
        notes.add(Paragraph.heading("Set-out"));
        notes.add(Paragraph.bullet("Span " + Figure.length(setOut.span()) + " out to out of columns; in the frame"
                + " with least room " + Figure.length(summary.get("centreToCentreMm")) + " centre to centre and "
                + Figure.length(summary.get("clearBetweenColumnsMm")) + " clear between columns."));
        notes.add(Paragraph.bullet("Length " + Figure.length(setOut.length()) + " out to out of end columns. Interior"
                + " frames stand on their lines, end frames inside the end lines."));
        notes.add(Paragraph.bullet("Long dashes: string lines on the outside faces of columns."));
        notes.add(Paragraph.bullet("Columns are cut above their base plates; base plates in thin outline."));
        if (shed.definition().envelope().isFull()) {
            Slab slab = shed.definition().ground().slab();
            String concrete = slab.isPads()
                    ? "Thin squares: pads, " + Figure.length(slab.padSide()) + " each way; earth between."
                    : "Thin line round the floor: edge of the slab, " + Figure.length(slab.beyond())
                            + " past the string lines.";
            notes.add(Paragraph.bullet("Thick lines: wall sheets. " + concrete));
        }
        notes.add(Paragraph.heading("Columns"));
        for (PartKind kind : List.of(PartKind.COLUMN, PartKind.LEAN_TO_COLUMN)) {
            for (Part part : shed.parts(kind)) {
                notes.add(Paragraph.bullet(
                        part.mark() + ": " + part.material().designation() + ", " + part.quantity() + " off"));
            }
        }
        return notes;
    }
}
