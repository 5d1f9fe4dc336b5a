package org.baywright.render.view;

import java.util.List;
import org.baywright.model.geometry.Convex;
import org.baywright.model.geometry.Plane;
import org.baywright.model.geometry.Vec3;

/** The slow way to tell what is hidden: a ray from each position to the eye, met by each lump in turn. */
final class RayCast {
    private final List<Convex> lumps;
    private final Vec3 towards;

    RayCast(List<Item> items, Projection view) {
        lumps = items.stream()
                .flatMap(i -> Convex.of(i.solid(), i.place()).stream())
                .toList();
        towards = view.towards();
    }

    /** True when the ray runs through a lump that is made smaller all round. */
    boolean surelyHidden(Vec3 position) {
        return lumps.stream().anyMatch(l -> chord(l, position, -3 * Edge.FINE) > 1e-6);
    }

    /** False when the ray meets steel at most on a face. */
    boolean perhapsHidden(Vec3 position) {
        return lumps.stream().anyMatch(l -> chord(l, position, 1e-6) > 1e-4);
    }

    /** How long the ray runs inside a lump grown by a margin. */
    private double chord(Convex lump, Vec3 position, double margin) {
        double from = 0;
        double to = Double.POSITIVE_INFINITY;
        for (Plane face : lump.faces()) {
            double ahead = face.distance(position) - margin;
            double rate = face.normal().dot(towards);
            if (Math.abs(rate) < 1e-12) {
                to = ahead > 0 ? 0 : to;
            } else if (rate > 0) {
                to = Math.min(to, -ahead / rate);
            } else {
                from = Math.max(from, -ahead / rate);
            }
        }
        return to - from;
    }
}
