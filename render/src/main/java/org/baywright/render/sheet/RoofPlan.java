package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.BiConsumer;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.SetOut;
import org.baywright.render.dimension.Label;
import org.baywright.render.dimension.Paragraph;
import org.baywright.render.dimension.Spot;
import org.baywright.render.mark.Layer;
import org.baywright.render.paper.Face;
import org.baywright.render.paper.Pen;
import org.baywright.render.view.ViewLine;
import org.baywright.render.view.Window;
import org.locationtech.jts.geom.Envelope;

/** What both plans of the roof share: their strips, string lines, bays, widths and grid, and room for notes. */
final class RoofPlan {
    /** Length of an arrow's head on paper, mm. */
    private static final double HEAD = 2.5;

    private static final double TEXT = 2.5;

    private static final Margins MARGINS = new Margins(24, 26, 23, 20);

    /** How far sheets and gutters may reach past the string lines, mm. */
    private static final double OVERHANG = 1500;

    private final SetOut setOut;
    private final Plan plan;

    RoofPlan(Shed shed) {
        this.setOut = shed.setOut();
        this.plan = new Plan(shed);
    }

    PlanAxes axes() {
        return plan.axes();
    }

    SetOut setOut() {
        return setOut;
    }

    /**
     * Part of a roof plan's sheets.
     *
     * @param title of the sheets
     * @param notes beside or under the plan
     * @param content draws what this plan shows into a strip, after its rows of dimensions and bubbles
     */
    record Subject(String title, List<Paragraph> notes, BiConsumer<PlacedView, Strip> content) {}

    /** Sheets on which a foot as high as given is left for other views; those are drawn into it on every sheet. */
    List<Draft> drafts(Subject subject, double foot, BiConsumer<SheetBuilder, Envelope> footViews) {
        NotedRoom room = NotedRoom.of(subject.notes(), r -> plan.strips(above(r, foot), MARGINS));
        List<Draft> drafts = new ArrayList<>();
        for (int i = 0; i < room.strips().sheets(); i++) {
            SheetBuilder sheet = new SheetBuilder("S6", subject.title());
            sheet.draw(room.notes());
            Envelope cells = new Envelope();
            for (Strip strip : room.strips().on(i)) {
                cells.expandToInclude(strip.cell());
                strip(sheet, strip, room.strips(), subject);
            }
            footViews.accept(
                    sheet, new Envelope(cells.getMinX(), cells.getMaxX(), cells.getMinY() - foot, cells.getMinY()));
            drafts.add(sheet.build());
        }
        return drafts;
    }

    /** Whether a foot can be left without drawing the plan smaller or on more sheets. */
    boolean hasFoot(Subject subject, double foot) {
        Strips whole =
                NotedRoom.of(subject.notes(), r -> plan.strips(r, MARGINS)).strips();
        Strips less = NotedRoom.of(subject.notes(), r -> plan.strips(above(r, foot), MARGINS))
                .strips();
        return !whole.betterThan(less);
    }

    private static Envelope above(Envelope room, double foot) {
        return new Envelope(room.getMinX(), room.getMaxX(), room.getMinY() + foot, room.getMaxY());
    }

    private void strip(SheetBuilder sheet, Strip strip, Strips strips, Subject subject) {
        String name = strips.name(subject.title().toUpperCase(Locale.ROOT), strip);
        PlacedView view = sheet.view(name, strip.cell(), plan.bounds(strip), MARGINS, strips.scale());
        plan.strings(view, strip);
        List<Vec2> points = Plan.frames(strip)
                .mapToObj(f -> axes().at(plan.right(), setOut.frameLine(f)))
                .toList();
        view.annotate().chainWithOverall(axes().alongside(), points);
        plan.widths(view, strip);
        plan.grid(view, strip);
        // Leaders keep off the bubbles that are there.
        subject.content().accept(view, strip);
        plan.matchLines(view, strip);
    }

    /** What of the roof a strip shows, in view mm: cut at match lines, whole at the ends of the building. */
    Envelope window(Strip strip) {
        double low = strip.firstFrame() == 1 ? OVERHANG : Plan.BEYOND;
        double high = strip.lastFrame() == setOut.frames() ? OVERHANG : Plan.BEYOND;
        Vec2 a = axes().at(plan.left() - OVERHANG, setOut.frameLine(strip.firstFrame()) - low);
        Vec2 b = axes().at(plan.right() + OVERHANG, setOut.frameLine(strip.lastFrame()) + high);
        return new Envelope(a.x(), b.x(), a.y(), b.y());
    }

    /** The bays of a strip as an area of the view, without what is past its first and last frame. */
    Envelope bays(Strip strip) {
        Vec2 a = axes().at(plan.left() - OVERHANG, setOut.frameLine(strip.firstFrame()));
        Vec2 b = axes().at(plan.right() + OVERHANG, setOut.frameLine(strip.lastFrame()));
        return new Envelope(a.x(), b.x(), a.y(), b.y());
    }

    /** Draws lines of the view as far as a strip shows them. */
    void draw(PlacedView view, Strip strip, List<ViewLine> lines, Pen pen) {
        view.draw(Window.cut(lines, window(strip)), pen, Layer.STEEL);
    }

    /** Where a position appears on plan. */
    Vec2 flat(Vec3 at) {
        return axes().projection().flat(at);
    }

    /** A line with an arrow at its tip. */
    static void arrow(PlacedView view, Vec2 tail, Vec2 tip) {
        Vec2 way = tip.minus(tail).unit().times(view.port().scale().n());
        view.line(tail, tip, Pen.VISIBLE, Layer.LABEL);
        view.line(tip, tip.minus(way.times(HEAD)).plus(way.left().times(0.8)), Pen.VISIBLE, Layer.LABEL);
        view.line(tip, tip.minus(way.times(HEAD)).minus(way.left().times(0.8)), Pen.VISIBLE, Layer.LABEL);
    }

    /** Words beside a point, in which a part may be named. */
    static void label(PlacedView view, Vec2 at, Face face, String part, String... words) {
        view.annotate()
                .place(new Label(
                        List.of(words),
                        view.port().toPaper(at),
                        Label.Pointer.BESIDE,
                        List.of(Spot.RIGHT, Spot.ABOVE_RIGHT, Spot.BELOW_RIGHT, Spot.LEFT),
                        TEXT,
                        face,
                        part));
    }
}
