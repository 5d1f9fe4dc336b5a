package org.baywright.model.nesting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.baywright.model.cutting.Saw;

/**
 * Lays the pieces of one bar behind each other: next comes whichever lies closest to the cut before it. Among those,
 * pieces that end as they begin come first, so that parallel pieces lie between the two halves of a pair:
 *
 * <pre>
 *   |______/__ /___ /______|   square to slant, parallel, parallel, slant to square
 * </pre>
 *
 * <p>Pieces that share a slope, by any turn, then lose at most one wedge at each side of their run.
 *
 * @source nearest neighbour; the geometry of shared cuts is common practice
 */
final class Nest {
    private static final double FINE = 1e-9;

    private final Saw saw;
    private final List<Laid> laid = new ArrayList<>();
    private double at;
    private End before;

    private Nest(Saw saw, End start) {
        this.saw = saw;
        at = saw.endTrimMm();
        before = start;
    }

    /** The pieces in an order and a place that waste little: the shorter of all at once and slope by slope. */
    static List<Laid> of(List<Blank> blanks, Saw saw) {
        List<Blank> longestFirst = blanks.stream()
                .sorted(Comparator.comparingDouble(b -> -b.middleMm()))
                .toList();
        List<Laid> free = laid(List.of(longestFirst), saw);
        Map<List<Object>, List<Blank>> bySlope = new LinkedHashMap<>();
        longestFirst.forEach(
                b -> bySlope.computeIfAbsent(slopes(b), k -> new ArrayList<>()).add(b));
        if (bySlope.size() < 3) {
            return free;
        }
        List<List<Blank>> squareFirst = bySlope.values().stream()
                .sorted(Comparator.comparing(group -> !group.get(0).isSquare()))
                .toList();
        List<Laid> ordered = laid(squareFirst, saw);
        return reach(ordered) < reach(free) - FINE ? ordered : free;
    }

    /** The pieces as they come, none turned. */
    static List<Laid> inOrder(List<Blank> blanks, Saw saw) {
        Blank first = blanks.get(0);
        Nest nest = new Nest(saw, new End(first.plane(), first.depthMm(), 0));
        blanks.forEach(b -> nest.lay(new Laid(b, Turn.AS_DRAWN, 0)));
        return nest.laid;
    }

    private static List<Object> slopes(Blank blank) {
        double steeper = Math.max(Math.abs(blank.startSlope()), Math.abs(blank.endSlope()));
        return blank.isSquare() ? List.of() : List.of(blank.plane(), steeper);
    }

    private static double reach(List<Laid> laid) {
        return laid.get(laid.size() - 1).rightTipMm();
    }

    private static List<Laid> laid(List<List<Blank>> groups, Saw saw) {
        Blank first = groups.get(0).get(0);
        Nest nest = new Nest(saw, new End(first.plane(), first.depthMm(), 0));
        for (List<Blank> group : groups) {
            List<Blank> waiting = new ArrayList<>(group);
            while (!waiting.isEmpty()) {
                waiting.remove(nest.layNearest(waiting));
            }
        }
        return nest.laid;
    }

    private Blank layNearest(List<Blank> waiting) {
        Laid best = null;
        double least = Double.POSITIVE_INFINITY;
        for (Blank blank : waiting) {
            for (Turn turn : Turn.values()) {
                if (blank.turns().contains(turn)) {
                    Laid next = new Laid(blank, turn, 0);
                    double cost = cost(next);
                    if (cost < least - FINE) {
                        least = cost;
                        best = next;
                    }
                }
            }
        }
        lay(best);
        return best.blank();
    }

    /** The wedge before it; of equals, less for a piece that leaves the slope as it found it. */
    private double cost(Laid next) {
        boolean stays = next.left().shares(next.right());
        return before.wedgeTo(next.left()) + (stays ? 0 : 2 * FINE);
    }

    private void lay(Laid next) {
        double from = laid.isEmpty() ? at + next.left().setbackMm() : at + before.gapTo(next.left(), saw.kerfMm());
        laid.add(new Laid(next.blank(), next.turn(), from));
        at = from + next.blank().middleMm();
        before = next.right();
    }
}
