package org.baywright.render.dimension;

import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.quadtree.Quadtree;

/** Patches of paper found again by where they are. */
final class Taken {
    private final Quadtree index = new Quadtree();

    /** A patch with the upright box round it, which parts most patches at little cost. */
    private record Patch(TurnedBox box, Envelope reach, boolean upright) {
        static Patch of(TurnedBox box) {
            return new Patch(box, box.envelope(), box.isUpright());
        }

        boolean overlaps(Patch other) {
            return TurnedBox.share(reach, other.reach) && (upright && other.upright || overlapsTurned(other));
        }

        private boolean overlapsTurned(Patch other) {
            if (upright && other.box.isLine()) {
                return !other.box.leavesAside(reach);
            }
            return other.upright && box.isLine() ? !box.leavesAside(other.reach) : box.overlaps(other.box);
        }
    }

    void add(TurnedBox box) {
        Patch patch = Patch.of(box);
        index.insert(patch.reach(), patch);
    }

    /** How many of the patches overlap a box. */
    int count(TurnedBox box) {
        Patch patch = Patch.of(box);
        int[] count = {0};
        // The index returns a superset, untyped; everything in it was put there by add.
        index.query(patch.reach(), item -> count[0] += ((Patch) item).overlaps(patch) ? 1 : 0);
        return count[0];
    }

    boolean any(TurnedBox box) {
        return count(box) > 0;
    }
}
