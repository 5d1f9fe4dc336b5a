package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.baywright.model.cladding.Building;
import org.baywright.model.cladding.GutterRun;
import org.baywright.model.definition.RoofWater;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Profile;
import org.baywright.model.geometry.Tolerance;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.parts.Hole;
import org.baywright.model.parts.Part;
import org.baywright.model.setout.RoofLine;
import org.baywright.model.setout.RoofRows;
import org.baywright.model.setout.RoofSlope;
import org.baywright.render.view.Projection;
import org.locationtech.jts.geom.Envelope;

/**
 * The sizes that govern a detail, drawn inside its border beside what they measure.
 *
 * @param view the detail on its sheet
 * @param projection the direction it is looked at in
 * @param window what its border shows, view mm
 */
record DetailFigures(PlacedView view, Projection projection, Envelope window) {
    /** From a border to points whose row of figures is to stand inside it, paper mm. */
    private static final double INSIDE = 13;

    private static final double AT_BORDER = 1;

    /** A further station nearer to a plate's own than this has no figure of its own, paper mm. */
    private static final double APART = 1.5;

    private double paper(double mm) {
        return mm * view.port().scale().n();
    }

    /** Prints a chain through what of its points is inside the border, when that is two at least, on a side with room. */
    void chain(List<Vec2> points, Vec2 towards) {
        List<Vec2> inside = new ArrayList<>();
        for (Vec2 point : points) {
            boolean apart = inside.stream().allMatch(p -> p.distance(point) > 1);
            if (apart && window.contains(point.x(), point.y())) {
                inside.add(point);
            }
        }
        if (inside.size() > 1) {
            int before = view.annotate().dimensions().size();
            view.annotate().aligned(inside, towards, view.box());
            if (view.annotate().dimensions().size() == before) {
                view.annotate().aligned(inside, towards.times(-1), view.box());
            }
        }
    }

    /** The breadth of an upright, near the lower border. */
    void upright(double a, double b) {
        double y = window.getMinY() + paper(INSIDE);
        chain(List.of(new Vec2(Math.min(a, b), y), new Vec2(Math.max(a, b), y)), new Vec2(0, -1));
    }

    /** The depth of a rafter square to its slope, beside the left or right border. */
    void rafter(RoofLine roof, double depth, boolean atRight) {
        double in = atRight ? -1 : 1;
        double x = (atRight ? window.getMaxX() : window.getMinX()) + in * paper(AT_BORDER);
        Vec2 out = projection.flat(roof.outward());
        // The lower end of a square line lies aside of its upper end: neither may pass the border.
        double aside = Math.max(0, -in * -out.x() * depth);
        double top = x + in * aside;
        Vec2 upper = new Vec2(top, roof.heightAt(top));
        chain(List.of(upper, upper.minus(out.times(depth))), new Vec2(in, 0));
    }

    /** A plate's edges and holes along whichever of its sides lie in the view, and further stations along them. */
    void plate(Part part, Placement at, Vec2 towards, Vec3... further) {
        Profile profile = part.solid().profile();
        side(part, at, at.depth(), profile.outline(), Vec2::x, towards, further);
        side(part, at, at.width(), profile.outline(), Vec2::y, towards, further);
    }

    private void side(
            Part part,
            Placement at,
            Vec3 axis,
            List<Vec2> ring,
            ToDoubleFunction<Vec2> along,
            Vec2 towards,
            Vec3... further) {
        Vec2 flat = projection.flat(axis);
        if (flat.length() < 1 - Tolerance.COINCIDENT) {
            return;
        }
        Vec2 off = flat.left().dot(towards) >= 0 ? flat.left() : flat.left().times(-1);
        Vec2 origin = projection.flat(at.origin());
        double edge = ring.stream()
                .flatMap(p -> Stream.of(0.0, part.solid().axisLength())
                        .map(s -> projection.flat(at.toWorld(s, p.x(), p.y()))))
                .mapToDouble(p -> p.minus(origin).dot(off))
                .max()
                .orElseThrow();
        double[] own = DoubleStream.concat(
                        ring.stream().mapToDouble(along::applyAsDouble),
                        part.holes().stream().map(Hole::at).mapToDouble(along::applyAsDouble))
                .toArray();
        DoubleStream more = Stream.of(further)
                .mapToDouble(f -> projection.flat(f).minus(origin).dot(flat))
                .filter(t -> DoubleStream.of(own).allMatch(o -> Math.abs(o - t) >= paper(APART)));
        chain(
                DoubleStream.concat(DoubleStream.of(own), more)
                        .sorted()
                        .mapToObj(t -> origin.plus(flat.times(t)).plus(off.times(edge)))
                        .toList(),
                off);
    }

    /** Gutter, end of the sheets, and column face at an eave; its depth outside. */
    void gutter(Building building, GutterRun run, RoofRows rows) {
        RoofWater.Gutter gutter =
                building.shed().definition().envelope().roofWater().gutter();
        int out = -run.slope().line().inward();
        Vec2 back = projection.flat(run.from());
        Vec2 front = back.plus(new Vec2(out * gutter.width(), 0));
        Vec2 end = projection.flat(rows.place(rows.sheetLow(), 0, rows.sheetPlane()));
        double y = back.y();
        chain(
                Stream.of(front.x(), end.x(), back.x(), run.slope().line().x())
                        .map(x -> new Vec2(x, y))
                        .toList(),
                new Vec2(0, 1));
        chain(List.of(front, front.minus(new Vec2(0, gutter.depth()))), new Vec2(out, 0));
    }

    /** Left open between the sheets of two slopes at the ridge. */
    void ridge(List<RoofRows> slopes) {
        chain(
                slopes.stream()
                        .filter(r -> r.slope().top() == RoofSlope.Top.RIDGE)
                        .map(r -> projection.flat(r.place(r.sheetHigh(), 0, r.sheetPlane())))
                        .toList(),
                new Vec2(0, 1));
    }

    /** The rows of purlins from the end of the sheets. */
    void rows(RoofRows rows, double sheetEnd) {
        List<Vec2> points = Stream.concat(Stream.of(sheetEnd), rows.at().stream())
                .sorted()
                .map(up -> projection.flat(rows.place(up, 0, rows.sheetPlane())))
                .toList();
        chain(points, projection.flat(rows.slope().roof().outward()));
    }
}
