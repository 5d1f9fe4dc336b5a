package org.baywright.render.view;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.baywright.model.geometry.Convex;
import org.baywright.model.geometry.Plane;
import org.baywright.model.geometry.Solid;
import org.baywright.model.geometry.Tolerance;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.locationtech.jts.algorithm.ConvexHull;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;

/** Areas of a view: what an item covers, and what a plane cuts through. Rings in view coordinates, even-odd. */
public final class Silhouette {
    private static final GeometryFactory SHAPES = new GeometryFactory();

    /** Corners that are one position for the model are one corner here, so that pieces join without slivers. */
    private static final PrecisionModel GRID = new PrecisionModel(1 / Tolerance.COINCIDENT);

    private Silhouette() {}

    /** The area of the view that items cover, as a box. */
    public static Envelope bounds(List<Item> items, Projection view) {
        Envelope bounds = new Envelope();
        for (Item item : items) {
            corners(item).forEach(c -> bounds.expandToInclude(c.dot(view.right()), c.dot(view.up())));
        }
        return bounds;
    }

    /** The area that an item covers. */
    public static List<List<Vec2>> outline(Item item, Projection view) {
        List<Geometry> hulls = new ArrayList<>();
        for (Convex lump : Convex.of(item.solid(), item.place())) {
            hulls.add(hull(lump.corners().stream().map(view::inView).toList()));
        }
        return rings(UnaryUnionNG.union(hulls, SHAPES, GRID));
    }

    /** The area where a plane cuts through an item, its bore left out; empty when the plane only touches it. */
    public static List<List<Vec2>> cut(Item item, Plane plane, Projection view) {
        Solid solid = item.solid();
        List<Geometry> faces = new ArrayList<>();
        for (List<Vec2> piece : solid.profile().pieces()) {
            faces.add(face(item, piece, plane, view));
        }
        Geometry whole = UnaryUnionNG.union(faces, SHAPES, GRID);
        Geometry bore = face(item, solid.profile().bore(), plane, view);
        return rings(OverlayNG.overlay(whole, bore, OverlayNG.DIFFERENCE, GRID));
    }

    /** The items, whole, of which anything lies on the kept side of a plane. */
    public static List<Item> behind(List<Item> items, Plane plane) {
        return items.stream()
                .filter(i -> corners(i).stream().anyMatch(c -> plane.distance(c) < -Tolerance.COINCIDENT))
                .toList();
    }

    private static List<Vec3> corners(Item item) {
        Solid solid = item.solid();
        List<Vec3> corners = new ArrayList<>(solid.startRing(solid.profile().outline()));
        corners.addAll(solid.endRing(solid.profile().outline()));
        corners.replaceAll(item.place()::toWorld);
        return corners;
    }

    /** The convex hull of positions in view axes, clockwise; a point or line when they are seen on edge. */
    static Geometry hull(List<Vec3> inView) {
        Coordinate[] points =
                inView.stream().map(p -> new Coordinate(p.x(), p.y())).toArray(Coordinate[]::new);
        return new ConvexHull(points, SHAPES).getConvexHull().norm();
    }

    /** Where a plane cuts the convex prism that a ring of the profile sweeps. */
    private static Geometry face(Item item, List<Vec2> ring, Plane plane, Projection view) {
        List<Vec3> first =
                item.solid().startRing(ring).stream().map(item.place()::toWorld).toList();
        List<Vec3> last =
                item.solid().endRing(ring).stream().map(item.place()::toWorld).toList();
        if (Stream.concat(first.stream(), last.stream()).noneMatch(c -> plane.distance(c) < -Tolerance.COINCIDENT)) {
            return SHAPES.createPolygon();
        }
        List<Vec3> met = new ArrayList<>();
        for (int i = 0; i < ring.size(); i++) {
            int next = (i + 1) % ring.size();
            addMeeting(met, first.get(i), last.get(i), plane);
            addMeeting(met, first.get(i), first.get(next), plane);
            addMeeting(met, last.get(i), last.get(next), plane);
        }
        Geometry hull = hull(met.stream().map(view::inView).toList());
        return hull instanceof Polygon ? hull : SHAPES.createPolygon();
    }

    /** A corner in the plane counts as behind it. */
    private static void addMeeting(List<Vec3> met, Vec3 a, Vec3 b, Plane plane) {
        double before = plane.distance(a);
        double after = plane.distance(b);
        if ((before > Tolerance.COINCIDENT) != (after > Tolerance.COINCIDENT)) {
            met.add(a.plus(b.minus(a).times(before / (before - after))));
        }
    }

    private static List<List<Vec2>> rings(Geometry area) {
        List<List<Vec2>> rings = new ArrayList<>();
        for (int i = 0; i < area.getNumGeometries(); i++) {
            if (area.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
                rings.add(ring(polygon.getExteriorRing()));
                for (int h = 0; h < polygon.getNumInteriorRing(); h++) {
                    rings.add(ring(polygon.getInteriorRingN(h)));
                }
            }
        }
        return rings;
    }

    private static List<Vec2> ring(LinearRing ring) {
        return Arrays.stream(ring.getCoordinates())
                .limit(ring.getNumPoints() - 1L)
                .map(c -> new Vec2(c.x, c.y))
                .toList();
    }
}
