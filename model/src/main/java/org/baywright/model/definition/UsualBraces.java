package org.baywright.model.definition;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The bays that are braced when the user names none: the first, and again after at most five bays or 30 m; each moved
 * to a neighbour when an opening is in its side walls, since a brace never crosses one.
 *
 * <p>Common practice, no source.
 */
final class UsualBraces {
    private static final int BAYS_APART = 5;
    private static final double APART = 30_000;
    private static final int FURTHEST_MOVE = 2;

    private UsualBraces() {}

    static List<Integer> usual(List<Double> spacings, List<Opening> openings) {
        List<Integer> braced = new ArrayList<>();
        int bay = 1;
        while (bay <= spacings.size()) {
            int moved = nearestFree(bay, spacings.size(), openings);
            if (!braced.contains(moved)) {
                braced.add(moved);
            }
            bay = next(bay, spacings);
        }
        return braced.stream().sorted().toList();
    }

    /** The bay furthest on that still starts within the distance. */
    private static int next(int bay, List<Double> spacings) {
        double along = 0;
        int next = bay;
        while (next < spacings.size() + 1
                && next - bay < BAYS_APART
                && (next == bay || along + spacings.get(next - 1) <= APART)) {
            along += spacings.get(next - 1);
            next++;
        }
        return next;
    }

    private static int nearestFree(int bay, int bays, List<Opening> openings) {
        return IntStream.rangeClosed(1, bays)
                .filter(b -> Math.abs(b - bay) <= FURTHEST_MOVE)
                .filter(b -> openings.stream().noneMatch(o -> isIn(o, b)))
                .boxed()
                .min(Comparator.comparingInt(b -> Math.abs(b - bay)))
                .orElse(bay);
    }

    private static boolean isIn(Opening opening, int bay) {
        return !opening.wall().isEnd() && opening.bay().orElse(0) == bay;
    }
}
