package org.baywright.model.parts;

import java.util.Comparator;
import java.util.List;
import org.baywright.model.geometry.Convex;
import org.baywright.model.geometry.Plane;
import org.baywright.model.geometry.Vec3;
import org.locationtech.jts.geom.Envelope;

/**
 * A piece where it stands.
 *
 * @param lumps its steel as convex lumps
 * @param plan the box that it takes in plan, a touch wider
 */
record Standing(Part part, Place place, List<Convex> lumps, Envelope plan) {
    /** Steel no further apart than this is taken to meet, mm: a weld or a bolt closes it. */
    static final double TOUCH = 1.0;

    /** From line A on, and from frame 1 on. */
    static final Comparator<Standing> FROM_A1 = Comparator.comparingLong(
                    (Standing s) -> Math.round(s.place.placement().origin().x()))
            .thenComparingLong(s -> Math.round(s.place.placement().origin().y()));

    static Standing of(Part part, Place place) {
        List<Convex> lumps = Convex.of(part.solid(), place.placement());
        Envelope plan = new Envelope();
        lumps.forEach(l -> l.corners().forEach(c -> plan.expandToInclude(c.x(), c.y())));
        plan.expandBy(TOUCH);
        return new Standing(part, place, lumps, plan);
    }

    /** How much of a direction both take up. */
    double shared(Standing other, Vec3 along) {
        return Math.min(reach(along, 1), other.reach(along, 1)) + Math.min(reach(along, -1), other.reach(along, -1));
    }

    private double reach(Vec3 along, int way) {
        return lumps.stream()
                .flatMap(l -> l.corners().stream())
                .mapToDouble(c -> way * c.dot(along))
                .max()
                .orElseThrow();
    }

    boolean touches(Standing other) {
        return gap(other) < TOUCH;
    }

    double gap(Standing other) {
        double least = Double.POSITIVE_INFINITY;
        for (Convex a : lumps) {
            for (Convex b : other.lumps) {
                least = Math.min(least, apart(a, b));
            }
        }
        return least;
    }

    /** The widest gap that a face of either leaves to the other; no more than the true gap (separating axes). */
    private static double apart(Convex a, Convex b) {
        return Math.max(beyond(a, b), beyond(b, a));
    }

    private static double beyond(Convex a, Convex b) {
        double widest = Double.NEGATIVE_INFINITY;
        for (Plane face : a.faces()) {
            double nearest = Double.POSITIVE_INFINITY;
            for (Vec3 corner : b.corners()) {
                nearest = Math.min(nearest, face.distance(corner));
            }
            widest = Math.max(widest, nearest);
        }
        return widest;
    }
}
