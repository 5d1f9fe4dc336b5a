package org.baywright.model.cladding;

import java.util.ArrayList;
import java.util.List;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;

/**
 * The upright edges of sheeted walls, and what each meets there: another wall at a corner, a wall that it runs up
 * against, sheets that go on beside it, or nothing, beside an open bay.
 *
 * @param walls their surfaces
 */
record WallEdges(List<Surface> walls) {
    /** Surfaces this near meet. */
    private static final double MEET = 1;

    /** A lower rest of an edge is under another flashing's end. Common practice, no source. */
    private static final double LEAST = 150;

    /** How an edge is closed. */
    enum Joint {
        OUTER_CORNER,
        INNER_CORNER,
        FREE
    }

    /** A stretch of an upright edge. */
    record Edge(Joint joint, Vec3 foot, double top) {}

    /** Every stretch that a flashing closes; an outer corner once for both its walls. */
    List<Edge> closed() {
        List<Edge> edges = new ArrayList<>();
        for (int i = 0; i < walls.size(); i++) {
            for (boolean right : new boolean[] {false, true}) {
                close(i, right, edges);
            }
        }
        return edges;
    }

    private void close(int wall, boolean right, List<Edge> edges) {
        Surface a = walls.get(wall);
        Vec3 foot = end(a, right, false);
        double top = end(a, right, true).z();
        List<double[]> rest = new ArrayList<>(List.of(new double[] {foot.z(), top}));
        for (int j = 0; j < walls.size(); j++) {
            Surface b = walls.get(j);
            Vec3 at = b.axes().toLocal(foot);
            double left = b.outline().get(0).x();
            double end = b.outline().get(1).x();
            if (j == wall || Math.abs(at.z()) > MEET || at.x() < left - MEET || at.x() > end + MEET) {
                continue;
            }
            boolean atItsEdge = at.x() < left + MEET || at.x() > end - MEET;
            double[] both = {Math.max(foot.z(), b.outline().get(0).y()), Math.min(top, height(b, at.x()))};
            if (both[1] > both[0]) {
                boolean crosses = Math.abs(a.axes().width().dot(b.axes().width())) < 0.5;
                if (crosses && (!atItsEdge || j > wall)) {
                    Joint joint = atItsEdge ? Joint.OUTER_CORNER : Joint.INNER_CORNER;
                    edges.add(new Edge(joint, new Vec3(foot.x(), foot.y(), both[0]), both[1]));
                }
                rest = without(rest, both);
            }
        }
        rest.stream()
                .filter(r -> r[1] - r[0] > LEAST)
                .forEach(r -> edges.add(new Edge(Joint.FREE, new Vec3(foot.x(), foot.y(), r[0]), r[1])));
    }

    private static List<double[]> without(List<double[]> from, double[] taken) {
        List<double[]> left = new ArrayList<>();
        for (double[] f : from) {
            if (taken[0] > f[0]) {
                left.add(new double[] {f[0], Math.min(f[1], taken[0])});
            }
            if (taken[1] < f[1]) {
                left.add(new double[] {Math.max(f[0], taken[1]), f[1]});
            }
        }
        return left;
    }

    /** An end of a wall's left or right edge. */
    private static Vec3 end(Surface wall, boolean right, boolean top) {
        List<Vec2> o = wall.outline();
        Vec2 at = right ? (top ? o.get(2) : o.get(1)) : (top ? o.get(o.size() - 1) : o.get(0));
        return wall.axes().toWorld(at.x(), at.y(), 0);
    }

    /** The upper edge of a wall at a place along it. */
    private static double height(Surface wall, double u) {
        List<Vec2> o = wall.outline();
        for (int i = 2; i + 1 < o.size(); i++) {
            Vec2 a = o.get(i);
            Vec2 b = o.get(i + 1);
            if (u <= a.x() + MEET && u >= b.x() - MEET) {
                return a.y() + (b.y() - a.y()) * (u - a.x()) / (b.x() - a.x());
            }
        }
        throw new IllegalArgumentException("not along " + wall.name() + ": " + u);
    }
}
