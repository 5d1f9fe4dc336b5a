package org.baywright.render.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.baywright.model.geometry.Solid;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.locationtech.jts.geom.Envelope;

/**
 * A straight edge of a solid in view axes: x right, y up, z towards the eye. It runs to the right, or straight up, so
 * that edges on one line all run the same way.
 */
record Edge(Vec3 from, Vec3 to, String part) {
    /** What is shorter, thinner or closer than this in a view is not told apart. Building mm. */
    static final double FINE = 0.01;

    /** A line that leans less than this to the left is upright; the slope is noise. */
    static final double SAME_DIRECTION = 1e-7;

    /** Nearest first; the rest of the order only settles ties, so that no result hangs on the order of the items. */
    static final Comparator<Edge> FRONT_TO_BACK = Comparator.comparingDouble((Edge e) -> -e.nearest())
            .thenComparingDouble(e -> -e.furthest())
            .thenComparing(Edge::part)
            .thenComparingDouble(e -> e.from.x())
            .thenComparingDouble(e -> e.from.y())
            .thenComparingDouble(e -> e.to.x())
            .thenComparingDouble(e -> e.to.y());

    /**
     * The edges of an item that do not appear as points: those along its outline's corners, its two ends, and the
     * mouths of its bore.
     */
    static List<Edge> of(Item item, Projection view) {
        Solid solid = item.solid();
        List<Vec3> first = inView(item, solid.startRing(solid.profile().outline()), view);
        List<Vec3> last = inView(item, solid.endRing(solid.profile().outline()), view);
        List<Edge> edges = new ArrayList<>();
        for (int i = 0; i < first.size(); i++) {
            edges.add(running(first.get(i), last.get(i), item.part()));
        }
        addRing(edges, first, item.part());
        addRing(edges, last, item.part());
        addRing(edges, inView(item, solid.startRing(solid.profile().bore()), view), item.part());
        addRing(edges, inView(item, solid.endRing(solid.profile().bore()), view), item.part());
        edges.removeIf(e -> e.flatLength() < FINE);
        return edges;
    }

    /** A line, unless it appears as a point. */
    static Optional<Edge> of(ThinLine line, Projection view) {
        Edge edge = running(view.inView(line.from()), view.inView(line.to()), line.part());
        return edge.flatLength() < FINE ? Optional.empty() : Optional.of(edge);
    }

    private static List<Vec3> inView(Item item, List<Vec3> ring, Projection view) {
        return ring.stream().map(p -> view.inView(item.place().toWorld(p))).toList();
    }

    private static void addRing(List<Edge> edges, List<Vec3> ring, String part) {
        for (int i = 0; i < ring.size(); i++) {
            edges.add(running(ring.get(i), ring.get((i + 1) % ring.size()), part));
        }
    }

    private static Edge running(Vec3 a, Vec3 b, String part) {
        double right = b.x() - a.x();
        double up = b.y() - a.y();
        boolean upright = Math.abs(right) <= SAME_DIRECTION * Math.abs(up);
        return (upright ? up : right) >= 0 ? new Edge(a, b, part) : new Edge(b, a, part);
    }

    static Vec2 flat(Vec3 inView) {
        return new Vec2(inView.x(), inView.y());
    }

    Vec2 step() {
        return flat(to.minus(from));
    }

    double flatLength() {
        return step().length();
    }

    /** Direction in the view: from -90 degrees, not included, to 90. */
    double angle() {
        return Math.atan2(step().y(), step().x());
    }

    double nearest() {
        return Math.max(from.z(), to.z());
    }

    double furthest() {
        return Math.min(from.z(), to.z());
    }

    /** True when this lies nowhere further from the eye than an edge that appears in the same place. */
    boolean covers(Edge same) {
        return from.z() >= same.from.z() - FINE && to.z() >= same.to.z() - FINE;
    }

    /** A stretch of this, given as shares of its length. */
    Edge stretch(Span span) {
        Vec3 step = to.minus(from);
        return new Edge(from.plus(step.times(span.from())), from.plus(step.times(span.to())), part);
    }

    Envelope box() {
        return new Envelope(from.x(), to.x(), from.y(), to.y());
    }
}
