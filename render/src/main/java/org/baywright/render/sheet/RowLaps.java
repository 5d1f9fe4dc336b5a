package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.baywright.model.geometry.Vec3;

/** Where lengths of one row lie beside each other: the laps of purlins over their frames. */
final class RowLaps {
    /** Lengths whose middles are no further apart than this, square to the row, are of one row, mm. */
    private static final double SAME_ROW = 30;

    private RowLaps() {}

    /** A stretch that two lengths share. */
    record Lap(Vec3 from, Vec3 to) {
        double length() {
            return from.distance(to);
        }
    }

    /** The laps of rows that run one way. */
    static List<Lap> of(List<MemberAxis> rows, Vec3 along) {
        List<Stretch> stretches =
                rows.stream().map(row -> Stretch.of(row, along)).toList();
        List<Lap> laps = new ArrayList<>();
        for (List<Stretch> row : gathered(stretches)) {
            row.sort(Comparator.comparingDouble(Stretch::low));
            for (int i = 1; i < row.size(); i++) {
                double end = Math.min(row.get(i - 1).high(), row.get(i).high());
                double start = row.get(i).low();
                if (end > start) {
                    Vec3 side = row.get(i).side();
                    laps.add(new Lap(side.plus(along.times(start)), side.plus(along.times(end))));
                }
            }
        }
        return laps;
    }

    private static List<List<Stretch>> gathered(List<Stretch> stretches) {
        List<Stretch> sorted = new ArrayList<>(stretches);
        sorted.sort(Comparator.comparingDouble((Stretch s) -> s.side().x())
                .thenComparingDouble(s -> s.side().y())
                .thenComparingDouble(s -> s.side().z()));
        List<List<Stretch>> rows = new ArrayList<>();
        Vec3 last = null;
        for (Stretch stretch : sorted) {
            if (last == null || last.distance(stretch.side()) > SAME_ROW) {
                rows.add(new ArrayList<>());
            }
            rows.get(rows.size() - 1).add(stretch);
            last = stretch.side();
        }
        return rows;
    }

    /** A length from low to high along the row; its side is where the row crosses zero. */
    private record Stretch(Vec3 side, double low, double high) {
        static Stretch of(MemberAxis axis, Vec3 along) {
            double a = axis.from().dot(along);
            double b = axis.to().dot(along);
            return new Stretch(axis.from().minus(along.times(a)), Math.min(a, b), Math.max(a, b));
        }
    }
}
