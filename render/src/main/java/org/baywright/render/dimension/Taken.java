package org.baywright.render.dimension;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Envelope;

/** Patches of paper found again by where they are. */
final class Taken {
    /** About as wide as a short label, mm of paper. */
    private static final double CELL = 12;

    private final Map<Long, List<Patch>> cells = new HashMap<>();

    /** A patch with the upright box round it, which parts most patches at little cost. */
    private record Patch(TurnedBox box, Envelope reach, Cells cells, boolean upright) {
        static Patch of(TurnedBox box) {
            Envelope reach = box.envelope();
            return new Patch(box, reach, Cells.of(reach), box.isUpright());
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
        Cells of = patch.cells;
        for (int row = of.bottom; row <= of.top; row++) {
            for (int column = of.left; column <= of.right; column++) {
                cells.computeIfAbsent(key(row, column), k -> new ArrayList<>()).add(patch);
            }
        }
    }

    /** How many of the patches overlap a box. */
    int count(TurnedBox box) {
        return count(box, Integer.MAX_VALUE);
    }

    boolean any(TurnedBox box) {
        return count(box, 1) > 0;
    }

    private int count(TurnedBox box, int enough) {
        Patch patch = Patch.of(box);
        Cells of = patch.cells;
        int count = 0;
        for (int row = of.bottom; row <= of.top; row++) {
            for (int column = of.left; column <= of.right && count < enough; column++) {
                for (Patch other : cells.getOrDefault(key(row, column), List.of())) {
                    count += of.meetFirst(other.cells, row, column) && other.overlaps(patch) ? 1 : 0;
                }
            }
        }
        return count;
    }

    private static long key(int row, int column) {
        return ((long) row << Integer.SIZE) + column;
    }

    /** The cells that a box lies in. */
    private record Cells(int left, int bottom, int right, int top) {
        static Cells of(Envelope box) {
            return new Cells(cell(box.getMinX()), cell(box.getMinY()), cell(box.getMaxX()), cell(box.getMaxY()));
        }

        private static int cell(double at) {
            return (int) Math.floor(at / CELL);
        }

        /** Whether a cell is the lower left one of those that both lie in: there a patch counts, and in no other. */
        boolean meetFirst(Cells other, int row, int column) {
            return row == Math.max(bottom, other.bottom) && column == Math.max(left, other.left);
        }
    }
}
