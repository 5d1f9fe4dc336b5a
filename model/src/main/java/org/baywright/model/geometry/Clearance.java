package org.baywright.model.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * How far apart two convex lumps stand: the widest gap over all separating directions; negative when they overlap.
 *
 * <p>Source: separating-axis theorem for convex polyhedra (S. Gottschalk, Separating axis theorem, 1996): the normals of
 * both and the products of their edge directions suffice. Edge directions are taken as products of face normals.
 */
public final class Clearance {
    private Clearance() {}

    /** The clearance; for touching faces exactly their distance. */
    public static double between(Convex a, Convex b) {
        List<Vec3> axes = new ArrayList<>();
        a.faces().forEach(f -> axes.add(f.normal()));
        b.faces().forEach(f -> axes.add(f.normal()));
        for (Vec3 ea : edges(a)) {
            for (Vec3 eb : edges(b)) {
                Vec3 axis = ea.cross(eb);
                if (axis.length() > 1e-6) {
                    axes.add(axis.unit());
                }
            }
        }
        return axes.stream().mapToDouble(n -> gap(a, b, n)).max().orElseThrow();
    }

    /** How far they run into each other; nothing as soon as a face of either keeps them apart. */
    public static double overlap(Convex a, Convex b) {
        boolean apart = a.faces().stream().anyMatch(f -> gap(a, b, f.normal()) >= 0)
                || b.faces().stream().anyMatch(f -> gap(a, b, f.normal()) >= 0);
        return apart ? 0 : Math.max(0, -between(a, b));
    }

    private static List<Vec3> edges(Convex convex) {
        List<Vec3> edges = new ArrayList<>();
        List<Plane> faces = convex.faces();
        for (int i = 0; i < faces.size(); i++) {
            for (int j = i + 1; j < faces.size(); j++) {
                Vec3 edge = faces.get(i).normal().cross(faces.get(j).normal());
                if (edge.length() > 1e-6) {
                    edges.add(edge.unit());
                }
            }
        }
        return edges;
    }

    private static double gap(Convex a, Convex b, Vec3 n) {
        double aLow = a.corners().stream().mapToDouble(n::dot).min().orElseThrow();
        double aHigh = a.corners().stream().mapToDouble(n::dot).max().orElseThrow();
        double bLow = b.corners().stream().mapToDouble(n::dot).min().orElseThrow();
        double bHigh = b.corners().stream().mapToDouble(n::dot).max().orElseThrow();
        return Math.max(bLow - aHigh, aLow - bHigh);
    }
}
