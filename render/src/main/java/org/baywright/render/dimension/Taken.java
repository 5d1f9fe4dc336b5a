package org.baywright.render.dimension;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.quadtree.Quadtree;

/** Patches of paper found again by where they are. */
final class Taken {
    private final Quadtree index = new Quadtree();

    void add(TurnedBox box) {
        index.insert(box.envelope(), box);
    }

    /** How many of the patches overlap a box. */
    int count(TurnedBox box) {
        return (int) near(box).stream().filter(box::overlaps).count();
    }

    boolean any(TurnedBox box) {
        return near(box).stream().anyMatch(box::overlaps);
    }

    private List<TurnedBox> near(TurnedBox box) {
        Envelope envelope = box.envelope();
        List<TurnedBox> near = new ArrayList<>();
        // The index returns a superset, untyped; everything in it was put there by add.
        index.query(envelope, item -> near.add((TurnedBox) item));
        return near;
    }
}
