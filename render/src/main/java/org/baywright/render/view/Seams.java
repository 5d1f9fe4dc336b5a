package org.baywright.render.view;

import java.util.ArrayList;
import java.util.List;
import org.baywright.model.geometry.Profile;
import org.baywright.model.geometry.Tolerance;
import org.baywright.model.geometry.Vec2;

/**
 * Closes the seams inside a profile. Its convex pieces only touch, so a ray along the seam would pass between them; a
 * side that lies wholly inside the steel is moved into its neighbour.
 */
final class Seams {
    /** Well above what a view tells apart, well below any thickness of steel. Millimetres. */
    private static final double LAP = 10 * Edge.FINE;

    private Seams() {}

    /** The same profile, its pieces lapped over each other. */
    static Profile closed(Profile profile) {
        if (profile.pieces().size() == 1) {
            return profile;
        }
        List<List<Vec2>> lapped =
                profile.pieces().stream().map(p -> lapped(p, profile.outline())).toList();
        return new Profile(
                profile.outline(),
                profile.bore(),
                lapped,
                profile.area(),
                profile.inertiaDepth(),
                profile.inertiaWidth());
    }

    /** Each inner side moves outward as its two neighbours are made longer, so their lines stay where they are. */
    private static List<Vec2> lapped(List<Vec2> piece, List<Vec2> outline) {
        int n = piece.size();
        List<Vec2> moved = new ArrayList<>(piece);
        for (int i = 0; i < n; i++) {
            int next = (i + 1) % n;
            Vec2 a = piece.get(i);
            Vec2 b = piece.get(next);
            if (isInside(a, b, outline)) {
                moved.set(i, moved.get(i).plus(stretch(piece.get((i + n - 1) % n), a)));
                moved.set(next, moved.get(next).plus(stretch(piece.get((i + 2) % n), b)));
            }
        }
        return moved;
    }

    private static Vec2 stretch(Vec2 from, Vec2 to) {
        return to.minus(from).unit().times(LAP);
    }

    private static boolean isInside(Vec2 a, Vec2 b, List<Vec2> outline) {
        for (int i = 0; i < outline.size(); i++) {
            if (shared(a, b, outline.get(i), outline.get((i + 1) % outline.size())) > Tolerance.COINCIDENT) {
                return false;
            }
        }
        return true;
    }

    /** How much of the side from a to b lies on the side from c to d. */
    private static double shared(Vec2 a, Vec2 b, Vec2 c, Vec2 d) {
        Vec2 along = b.minus(a).unit();
        Vec2 toC = c.minus(a);
        Vec2 toD = d.minus(a);
        if (Math.abs(along.cross(toC)) + Math.abs(along.cross(toD)) > Tolerance.COINCIDENT) {
            return 0;
        }
        double first = Math.min(along.dot(toC), along.dot(toD));
        double last = Math.max(along.dot(toC), along.dot(toD));
        return Math.min(last, a.distance(b)) - Math.max(first, 0);
    }
}
