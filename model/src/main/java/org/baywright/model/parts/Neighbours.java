package org.baywright.model.parts;

import java.util.List;
import java.util.stream.Stream;
import org.baywright.model.geometry.Clearance;
import org.locationtech.jts.index.strtree.STRtree;

/** Pieces where they stand, to find what lies near another and what would run into it. */
final class Neighbours {
    /** Pieces may lie in each other this far: rounding. */
    static final double ROUNDING = 0.1;

    private final STRtree index = new STRtree();

    Neighbours(Stream<Piece> pieces) {
        pieces.map(Piece::standing).forEach(s -> index.insert(s.plan(), s));
        index.build();
    }

    @SuppressWarnings("unchecked") // the index holds standing pieces only
    Stream<Standing> near(Standing piece) {
        return ((List<Standing>) index.query(piece.plan())).stream();
    }

    /** Whether a piece would run into nothing, save what stands at a place that it takes itself. */
    boolean isClear(Standing piece, Place own) {
        return near(piece).noneMatch(o -> o.place() != own && overlap(piece, o) > ROUNDING);
    }

    /** How far the steel of two pieces lies in each other. */
    static double overlap(Standing a, Standing b) {
        return a.lumps().stream()
                .flatMapToDouble(p -> b.lumps().stream().mapToDouble(q -> Clearance.overlap(p, q)))
                .max()
                .orElse(0);
    }
}
