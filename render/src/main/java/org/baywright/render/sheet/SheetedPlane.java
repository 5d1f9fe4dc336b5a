package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.baywright.model.cladding.Surface;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Profile;
import org.baywright.model.geometry.Solid;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.baywright.render.view.Item;
import org.baywright.render.view.ThinLine;

/**
 * A sheeted plane as it is drawn: upright strips between its corners and the sides of its openings, each cut into what
 * is closed, that hide what is behind; its outline on both faces; and ribs on its outside.
 *
 * @param surface the plane
 */
record SheetedPlane(Surface surface) {
    private static final double LEAST = 0.5;

    private static final double EXACT = 1e-6;

    /** Strips are parted here and there for drawing only; a narrow one across each parting lets nothing show through. */
    private static final double SEAM = 2;

    private double depth() {
        return surface.profile().depth();
    }

    /** The strips that hide. */
    List<Item> blinds() {
        List<Item> blinds = new ArrayList<>();
        List<Double> at = List.copyOf(stations());
        for (int i = 1; i < at.size(); i++) {
            closed(at.get(i - 1), at.get(i)).forEach(piece -> blinds.add(prism(piece)));
            if (i + 1 < at.size()) {
                closed(at.get(i) - SEAM, at.get(i) + SEAM).forEach(piece -> blinds.add(prism(piece)));
            }
        }
        return blinds;
    }

    private TreeSet<Double> stations() {
        TreeSet<Double> at = new TreeSet<>();
        surface.outline().forEach(p -> at.add(p.x()));
        surface.holes().forEach(h -> h.forEach(p -> at.add(p.x())));
        return at;
    }

    /** What is closed between two stations: from the lower edge to the upper, less the openings across it. */
    private List<List<Vec2>> closed(double left, double right) {
        List<List<Vec2>> pieces = new ArrayList<>();
        if (right - left < LEAST) {
            return pieces;
        }
        double from = low((left + right) / 2);
        for (double[] gap : gaps(left, right)) {
            if (gap[0] - from > LEAST) {
                pieces.add(Profile.box(left, from, right, gap[0]));
            }
            from = Math.max(from, gap[1]);
        }
        double topLeft = top(left);
        double topRight = top(right);
        if (Math.max(topLeft, topRight) - from > LEAST) {
            pieces.add(List.of(
                    new Vec2(left, from),
                    new Vec2(right, from),
                    new Vec2(right, Math.max(from + 0.1, topRight)),
                    new Vec2(left, Math.max(from + 0.1, topLeft))));
        }
        return pieces;
    }

    /** The openings over a stretch of the plane, from the lowest up. */
    private List<double[]> gaps(double from, double to) {
        List<double[]> gaps = new ArrayList<>();
        for (List<Vec2> hole : surface.holes()) {
            double left = hole.stream().mapToDouble(Vec2::x).min().orElseThrow();
            double right = hole.stream().mapToDouble(Vec2::x).max().orElseThrow();
            if (to > left && from < right) {
                gaps.add(new double[] {
                    hole.stream().mapToDouble(Vec2::y).min().orElseThrow(),
                    hole.stream().mapToDouble(Vec2::y).max().orElseThrow()
                });
            }
        }
        gaps.sort((a, b) -> Double.compare(a[0], b[0]));
        return gaps;
    }

    /** The lower edge over a place: the outline runs anticlockwise, so it runs to the right there. */
    private double low(double u) {
        return edge(u, 1).min().orElse(0);
    }

    /** The upper edge over a place. */
    private double top(double u) {
        return edge(u, -1).max().orElse(0);
    }

    /** Where those parts of the outline that run one way cross a place. */
    private DoubleStream edge(double u, int way) {
        List<Vec2> ring = surface.outline();
        return IntStream.range(0, ring.size())
                .mapToObj(i -> new Vec2[] {ring.get(i), ring.get((i + 1) % ring.size())})
                .filter(e -> (e[1].x() - e[0].x()) * way > 0)
                .filter(e -> Math.min(e[0].x(), e[1].x()) - EXACT <= u && u <= Math.max(e[0].x(), e[1].x()) + EXACT)
                .mapToDouble(e -> e[0].y() + (e[1].y() - e[0].y()) * (u - e[0].x()) / (e[1].x() - e[0].x()));
    }

    /** A strip of the plane, as thick as the sheet is deep. */
    private Item prism(List<Vec2> piece) {
        double u = piece.get(0).x();
        double v = piece.get(0).y();
        List<Vec2> ring =
                piece.stream().map(p -> new Vec2(p.x() - u, p.y() - v)).toList();
        // Only its planes and corners are used here, never its mass.
        Profile profile = new Profile(ring, List.of(), List.of(ring), 1, 1, 1);
        Placement axes = surface.axes();
        // Along the plane's outward, its depth along u and so its width along v.
        Placement at = Placement.of(axes.toWorld(u, v, 0), axes.width(), axes.along());
        return new Item(Scene.SKIN, Solid.square(profile, 0, depth()), at);
    }

    /** Outline and openings on both faces. */
    List<ThinLine> edges() {
        List<ThinLine> edges = new ArrayList<>();
        for (double out : new double[] {0, depth()}) {
            ring(surface.outline(), out, edges);
            surface.holes().forEach(h -> ring(h, out, edges));
        }
        return edges;
    }

    private void ring(List<Vec2> ring, double out, List<ThinLine> to) {
        for (int i = 0; i < ring.size(); i++) {
            Vec2 a = ring.get(i);
            Vec2 b = ring.get((i + 1) % ring.size());
            to.add(new ThinLine(world(a, out), world(b, out), Scene.SKIN));
        }
    }

    private Vec3 world(Vec2 at, double out) {
        return surface.axes().toWorld(at.x(), at.y(), out);
    }

    /** Ribs on the outside, as many as can be told apart: every so many of them. */
    List<ThinLine> ribs(int every) {
        return ribs(every, depth());
    }

    /** Ribs on the inside, where it is seen through an open bay: half as many, for what is further back is lighter. */
    List<ThinLine> ribsInside(int every) {
        return ribs(2 * every, 0);
    }

    private List<ThinLine> ribs(int every, double out) {
        List<ThinLine> ribs = new ArrayList<>();
        double first = surface.outline().stream().mapToDouble(Vec2::x).min().orElseThrow();
        double last = surface.outline().stream().mapToDouble(Vec2::x).max().orElseThrow();
        double step = surface.profile().ribPitch() * every;
        for (int i = 1; first + i * step < last - step / 4; i++) {
            double u = first + i * step;
            double from = low(u);
            for (double[] gap : gaps(u, u)) {
                rib(u, from, gap[0], out, ribs);
                from = Math.max(from, gap[1]);
            }
            rib(u, from, top(u), out, ribs);
        }
        return ribs;
    }

    private void rib(double u, double from, double to, double out, List<ThinLine> ribs) {
        if (to - from > LEAST) {
            ribs.add(new ThinLine(world(new Vec2(u, from), out), world(new Vec2(u, to), out), Scene.RIB));
        }
    }
}
