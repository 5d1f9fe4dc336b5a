package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Solid;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.parts.Attached;
import org.baywright.model.parts.Part;
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
import org.locationtech.jts.geom.Envelope;

/**
 * A member with what is welded to it, in its own axes: marked end on the left, its depth up the sheet in the view of its
 * near side; the view of its upper edge has the near side at its foot, that of its lower edge at its top.
 *
 * @param member the member
 * @param items the member first, then its plates
 * @param stretch how its length is laid on paper
 */
record PieceView(Part member, List<Item> items, Stretch stretch) {
    /** The near side, in the plane of the cuts. */
    static final Projection SIDE = Projection.of(new Vec3(1, 0, 0), new Vec3(0, 1, 0));

    /** The upper edge. */
    static final Projection UPPER = Projection.of(new Vec3(1, 0, 0), new Vec3(0, 0, -1));

    /** The lower edge. */
    static final Projection LOWER = Projection.of(new Vec3(1, 0, 0), new Vec3(0, 0, 1));

    private static final Placement OWN = Placement.of(Vec3.ZERO, new Vec3(1, 0, 0), new Vec3(0, 1, 0));

    /** A view is no higher than this, mm of paper. */
    private static final double HIGHEST = 34;

    /** From this scale on a piece may be drawn shortened rather than smaller. */
    private static final int SHORTENED_FROM = 10;

    /** Half of the gap that a break leaves in the lines, mm of paper. */
    private static final double BREAK = 0.8;

    /** How far the lines of a break pass the piece. */
    private static final double PAST = 2;

    /** A member with plates laid out over so much paper at the largest scale that fits. */
    static PieceView of(Part member, List<Attached> plates, List<Double> stations, double room) {
        List<Item> items = new ArrayList<>();
        items.add(new Item(member.mark(), member.solid(), OWN));
        plates.forEach(p -> items.add(new Item(p.plate().mark(), p.plate().solid(), p.at())));
        List<double[]> keep = new ArrayList<>(ends(member.solid()));
        plates.forEach(p -> keep.add(new double[] {p.nearStation(), p.farStation()}));
        stations.forEach(s -> keep.add(new double[] {s, s}));
        double high = Math.max(
                Silhouette.bounds(items, SIDE).getHeight(),
                Silhouette.bounds(items, UPPER).getHeight());
        double length = Silhouette.bounds(items, SIDE).getWidth();
        for (Scale scale : Scale.PREFERRED) {
            boolean whole = scale.toPaper(length) <= room;
            if (scale.toPaper(high) <= HIGHEST && (whole || scale.n() >= SHORTENED_FROM)) {
                var fitting = Stretch.fit(keep, scale, room);
                if (fitting.isPresent()) {
                    return new PieceView(member, items, fitting.get());
                }
            }
        }
        throw new IllegalStateException("no scale for " + member.mark());
    }

    private static List<double[]> ends(Solid solid) {
        double[] start = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
        double[] end = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
        for (Vec2 corner : solid.profile().outline()) {
            widen(start, solid.startStation(corner));
            widen(end, solid.endStation(corner));
        }
        return List.of(start, end);
    }

    private static void widen(double[] range, double at) {
        range[0] = Math.min(range[0], at);
        range[1] = Math.max(range[1], at);
    }

    /** Where along the member its tip at the marked end lies: what all is measured from. */
    double datum() {
        return ends(member.solid()).get(0)[0];
    }

    /** The piece's extent up the view. */
    Envelope bounds(Projection view) {
        return Silhouette.bounds(items, view);
    }

    /** Its height on paper. */
    double height(Projection view) {
        return stretch.scale().toPaper(bounds(view).getHeight());
    }

    /** Where a height of the view lies on paper, given the paper's height of the view's top. */
    double up(Projection view, double y, double top) {
        return top - stretch.scale().toPaper(bounds(view).getMaxY() - y);
    }

    /** Draws a view with its left end and its top at a place on paper. */
    List<Mark> draw(Projection view, Vec2 topLeft) {
        List<Mark> marks = new ArrayList<>();
        double most = bounds(view).getMaxY();
        for (ViewLine line : HiddenLines.visible(items, view)) {
            boolean own = line.part().equals(member.mark());
            if (!own || !isFlank(line, view)) {
                Vec2 from = onPaper(line.from(), most, topLeft);
                Vec2 to = onPaper(line.to(), most, topLeft);
                parted(from, to, topLeft.x())
                        .forEach(points -> marks.add(new Stroke(
                                points,
                                false,
                                own ? Pen.OUTLINE : Pen.VISIBLE,
                                own ? Layer.STEEL : Layer.PLATE,
                                line.part())));
            }
        }
        Envelope own = Silhouette.bounds(items.subList(0, 1), view);
        for (double at : stretch.breaks()) {
            double high = up(view, own.getMaxY(), topLeft.y()) + PAST;
            double low = up(view, own.getMinY(), topLeft.y()) - PAST;
            marks.add(zigzag(topLeft.x() + at - BREAK, low, high));
            marks.add(zigzag(topLeft.x() + at + BREAK, low, high));
        }
        return marks;
    }

    /** A rod is many-sided in the model; only the two lines of its outline are wanted. */
    private boolean isFlank(ViewLine line, Projection view) {
        Envelope own = Silhouette.bounds(items.subList(0, 1), view);
        double y = line.from().y();
        return member.isRod()
                && Math.abs(y - line.to().y()) < 1e-6
                && y < own.getMaxY() - 1e-6
                && y > own.getMinY() + 1e-6;
    }

    private Vec2 onPaper(Vec2 at, double most, Vec2 topLeft) {
        return topLeft.plus(new Vec2(stretch.at(at.x()), -stretch.scale().toPaper(most - at.y())));
    }

    /** A line along the piece is left out where the piece is broken. */
    private List<List<Vec2>> parted(Vec2 from, Vec2 to, double left) {
        List<List<Vec2>> lines = new ArrayList<>();
        Vec2 at = from.x() <= to.x() ? from : to;
        Vec2 end = from.x() <= to.x() ? to : from;
        for (double middle : stretch.breaks()) {
            double gap = left + middle;
            if (at.x() < gap - BREAK && end.x() > gap + BREAK) {
                lines.add(List.of(at, between(at, end, gap - BREAK)));
                at = between(at, end, gap + BREAK);
            }
        }
        lines.add(List.of(at, end));
        return lines;
    }

    private static Vec2 between(Vec2 a, Vec2 b, double x) {
        return a.plus(b.minus(a).times((x - a.x()) / (b.x() - a.x())));
    }

    /** @source ISO 128-34, a thin line with zigzags where a part is broken off (from memory) */
    private static Mark zigzag(double x, double low, double high) {
        double middle = (low + high) / 2;
        return new Stroke(
                List.of(
                        new Vec2(x, low),
                        new Vec2(x, middle - 1.2),
                        new Vec2(x - 1, middle - 0.4),
                        new Vec2(x + 1, middle + 0.4),
                        new Vec2(x, middle + 1.2),
                        new Vec2(x, high)),
                false,
                Pen.DIMENSION,
                Layer.STEEL,
                "");
    }
}
