package org.baywright.render.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.baywright.model.geometry.Convex;
import org.baywright.model.geometry.Plane;
import org.baywright.model.geometry.Solid;
import org.baywright.model.geometry.Tolerance;
import org.baywright.model.geometry.Vec3;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

/**
 * What a convex lump of steel hides: the lump and all that lies behind it, an overlap of half-spaces in view axes.
 *
 * <pre>
 *        eye
 *     ___ front faces
 *    /   \
 *   |lump |
 *   |_____|
 *   |     |  silhouette planes, along the line of sight,
 *   |     |  without end
 * </pre>
 *
 * @param sides front faces and silhouette planes, normals outward
 * @param corners of the lump
 * @param box what it covers in the view
 * @param nearest how near the eye it comes
 */
record Shadow(List<Plane> sides, List<Vec3> corners, Envelope box, double nearest) {
    /** A face that leans less than this towards the eye is seen on edge. */
    private static final double ON_EDGE = 1e-9;

    /** The shadows of an item's lumps. */
    static List<Shadow> of(Item item, Projection view) {
        Solid solid = item.solid();
        Solid closed = new Solid(Seams.closed(solid.profile()), solid.start(), solid.end());
        return Convex.of(closed, item.place()).stream().map(c -> of(c, view)).toList();
    }

    private static Shadow of(Convex lump, Projection view) {
        List<Vec3> corners = lump.corners().stream().map(view::inView).toList();
        List<Plane> sides = silhouette(corners);
        for (Plane face : lump.faces()) {
            Vec3 normal = view.inView(face.normal());
            if (normal.z() > ON_EDGE) {
                sides.add(new Plane(normal, face.offset()));
            }
        }
        Envelope box = new Envelope();
        corners.forEach(c -> box.expandToInclude(c.x(), c.y()));
        double nearest = corners.stream().mapToDouble(Vec3::z).max().orElseThrow();
        return new Shadow(List.copyOf(sides), corners, box, nearest);
    }

    /** The planes through the sides of the hull of what is seen; a flat lump on edge has two sides and no inside. */
    private static List<Plane> silhouette(List<Vec3> corners) {
        Coordinate[] hull = Silhouette.hull(corners).getCoordinates();
        List<Plane> planes = new ArrayList<>();
        for (int i = 0; i < hull.length; i++) {
            Coordinate next = hull[(i + 1) % hull.length];
            if (!hull[i].equals2D(next)) {
                // The hull runs clockwise, so outward lies to the left of each side.
                Vec3 outward = new Vec3(hull[i].y - next.y, next.x - hull[i].x, 0);
                planes.add(Plane.through(new Vec3(next.x, next.y, 0), outward));
            }
        }
        return planes;
    }

    /**
     * The stretch of an edge that lies in this shadow; none when the edge nowhere runs deeper in it than {@link
     * Edge#FINE}, so that edges on a face or on the silhouette stay seen. A stretch that does reach deeper is hidden up
     * to the very border, so that two lumps side by side leave no gap between them.
     */
    Optional<Span> hides(Edge edge) {
        Span inside = Span.WHOLE;
        Span deep = Span.WHOLE;
        for (Plane side : sides) {
            double first = side.distance(edge.from());
            double last = side.distance(edge.to());
            deep = deep.overlap(Span.below(-Edge.FINE, first, last));
            if (deep.isEmpty()) {
                return Optional.empty();
            }
            inside = inside.overlap(Span.below(0, first, last));
        }
        return Optional.of(inside);
    }

    /** True when this hides all that the other hides. */
    boolean covers(Shadow other) {
        return box.getMinX() <= other.box.getMinX() + Tolerance.COINCIDENT
                && box.getMaxX() >= other.box.getMaxX() - Tolerance.COINCIDENT
                && sides.stream().allMatch(s -> other.isBehind(s));
    }

    private boolean isBehind(Plane side) {
        return corners.stream().allMatch(c -> side.distance(c) <= Tolerance.COINCIDENT);
    }
}
