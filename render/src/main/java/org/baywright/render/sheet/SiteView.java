package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.setout.SitePlan;
import org.baywright.render.dimension.Figure;
import org.baywright.render.dimension.Label;
import org.baywright.render.mark.Arc;
import org.baywright.render.mark.Fill;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Stroke;
import org.baywright.render.mark.Text;
import org.baywright.render.paper.Face;
import org.baywright.render.paper.Lettering;
import org.baywright.render.paper.Pen;
import org.baywright.render.paper.Scale;
import org.locationtech.jts.geom.Envelope;

/**
 * The land from above, turned on paper as the definition asks. In the view x is to the right and y up the sheet:
 *
 * <pre>
 *   x = e cos n + s sin n,  y = s cos n - e sin n      e, s: east and north; n: where north points, clockwise from up
 * </pre>
 */
final class SiteView {
    private static final Margins MARGINS = new Margins(26, 26, 16, 16);

    /** A site is drawn no larger. @source 1:200, farms 1:500: council requirements; small lots larger, common practice */
    private static final int LARGEST = 50;

    /** Round the figure of a distance on its line, paper mm. */
    private static final double ROUND_FIGURE = 4;

    /** Land drawn smaller than this shows its shed as a speck. */
    private static final int SMALLEST = 500;

    private static final Margins CLOSE = new Margins(16, 16, 8, 8);
    private static final double BUILDING = 0.7;
    private static final double NEIGHBOUR = 0.88;
    private static final double NORTH_RADIUS = 8;

    private final SitePlan plan;
    private final String name;
    private final double north;

    SiteView(SitePlan plan, String name) {
        this.plan = plan;
        this.name = name;
        this.north = Math.toRadians(plan.site().northDeg());
    }

    private Vec2 turned(Vec2 place) {
        double sin = Math.sin(north);
        double cos = Math.cos(north);
        return new Vec2(place.x() * cos + place.y() * sin, place.y() * cos - place.x() * sin);
    }

    void draw(SheetBuilder sheet, Envelope cell) {
        Envelope bounds = bounds();
        PlacedView view = sheet.view("SITE PLAN", cell, bounds, MARGINS, scale(cell));
        north(view, new Vec2(cell.getMinX() + NORTH_RADIUS + 4, cell.getMaxY() - NORTH_RADIUS - 6));
        plan.site().neighbours().forEach(n -> area(view, n, NEIGHBOUR, Pen.VISIBLE));
        area(view, plan.outline(), BUILDING, Pen.OUTLINE);
        view.draw(List.of(new Stroke(onPaper(view, plan.edge()), true, Pen.HIDDEN, Layer.GROUND, "")));
        view.draw(List.of(new Stroke(onPaper(view, plan.site().boundary()), true, Pen.STRING, Layer.GROUND, "")));
        plan.setbacks().forEach(s -> setback(view, s));
        plan.gaps().forEach(g -> setback(view, g));
        plan.legs().forEach(l -> leg(view, l));
        labels(view);
    }

    private Envelope bounds() {
        List<Vec2> all = new ArrayList<>(plan.site().boundary());
        all.addAll(plan.edge());
        plan.site().neighbours().forEach(all::addAll);
        return box(all);
    }

    private Envelope box(List<Vec2> places) {
        Envelope box = new Envelope();
        places.stream().map(this::turned).forEach(v -> box.expandToInclude(v.x(), v.y()));
        return box;
    }

    private Scale scale(Envelope cell) {
        Scale fitting = PlacedView.fitting(cell, bounds(), MARGINS);
        return fitting.n() < LARGEST ? new Scale(LARGEST) : fitting;
    }

    /** Whether the shed itself is hard to make out. */
    boolean isSmall(Envelope cell) {
        return scale(cell).n() > SMALLEST;
    }

    /** The shed by itself, for land that is drawn small. */
    void close(SheetBuilder sheet, Envelope cell) {
        PlacedView view = sheet.view("THE BUILDING", cell, box(plan.outline()), CLOSE);
        area(view, plan.outline(), BUILDING, Pen.OUTLINE);
        datum(view);
        List<Vec2> ring = plan.outline();
        for (int i = 0; i < ring.size(); i++) {
            Vec2 from = turned(ring.get(i));
            Vec2 to = turned(ring.get((i + 1) % ring.size()));
            Vec2 side = to.minus(from);
            view.annotate().label(from.plus(to).times(0.5), Figure.length(side.length()));
        }
    }

    private List<Vec2> onPaper(PlacedView view, List<Vec2> ring) {
        return ring.stream().map(this::turned).map(view.port()::toPaper).toList();
    }

    private void area(PlacedView view, List<Vec2> ring, double grey, Pen pen) {
        List<Vec2> paper = onPaper(view, ring);
        view.draw(List.of(
                new Fill(List.of(paper), grey, Layer.GROUND, ""), new Stroke(paper, true, pen, Layer.GROUND, "")));
    }

    private void setback(PlacedView view, SitePlan.Distance way) {
        String figure = Figure.length(way.length());
        if (way.length() < 1) {
            view.annotate().note(turned(way.to()), "on the boundary: 0");
        } else if (view.port().scale().toPaper(way.length())
                < Lettering.width(figure, 2.5, Face.REGULAR) + ROUND_FIGURE) {
            view.line(turned(way.from()), turned(way.to()), Pen.DIMENSION, Layer.DIMENSION);
            view.annotate().note(turned(way.from().plus(way.to()).times(0.5)), figure);
        } else {
            view.annotate().diagonal("", turned(way.from()), turned(way.to()));
        }
    }

    private void leg(PlacedView view, SitePlan.Leg leg) {
        Vec2 middle = turned(leg.from().plus(leg.to()).times(0.5));
        view.annotate()
                .label(
                        middle,
                        leg.number() + ":  " + SiteSheet.bearing(leg.bearingDeg()),
                        SiteSheet.metres(leg.length()) + " m");
    }

    private void labels(PlacedView view) {
        Vec2 middle = plan.outline().stream()
                .reduce(new Vec2(0, 0), Vec2::plus)
                .times(1.0 / plan.outline().size());
        Label shed = Label.of(view.port().toPaper(turned(middle)), Label.Pointer.DOT, name);
        view.annotate().place(new Label(shed.lines(), shed.target(), shed.pointer(), List.of(), 2.5, Face.BOLD, ""));
        datum(view);
        for (int i = 0; i < plan.site().neighbours().size(); i++) {
            List<Vec2> ring = plan.site().neighbours().get(i);
            Vec2 at = ring.stream().reduce(new Vec2(0, 0), Vec2::plus).times(1.0 / ring.size());
            view.annotate().mark(turned(at), "E" + (i + 1) + " existing");
        }
    }

    private void datum(PlacedView view) {
        String bearing = SiteSheet.bearing(plan.site().turnDeg());
        view.annotate().note(turned(plan.site().corner()), "line A, frame 1", "length runs " + bearing);
    }

    /** A ring with its needle towards north. */
    private void north(PlacedView view, Vec2 centre) {
        Vec2 needle = new Vec2(Math.sin(north), Math.cos(north));
        Vec2 tip = centre.plus(needle.times(NORTH_RADIUS));
        Vec2 tail = centre.minus(needle.times(NORTH_RADIUS));
        Vec2 wing = needle.left().times(NORTH_RADIUS * 0.3);
        Vec2 letter = centre.plus(needle.times(NORTH_RADIUS + 3.2)).minus(new Vec2(0, 1.75));
        view.draw(List.of(
                Arc.circle(centre, NORTH_RADIUS, Pen.DIMENSION, Layer.LABEL, ""),
                new Fill(List.of(List.of(tip, tail.plus(wing), centre.minus(needle.times(4)))), 0, Layer.LABEL, ""),
                new Stroke(
                        List.of(tip, tail.minus(wing), centre.minus(needle.times(4))),
                        true,
                        Pen.DIMENSION,
                        Layer.LABEL,
                        ""),
                new Text("N", letter, 3.5, Text.Align.CENTRE, 0, Face.BOLD, Layer.LABEL, "")));
    }
}
