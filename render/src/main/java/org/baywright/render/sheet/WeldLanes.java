package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.parts.Attached;
import org.baywright.render.mark.Mark;
import org.locationtech.jts.geom.Envelope;

/**
 * Weld symbols over a view, none on another and no arrow line through one. Symbols run right from their arrows, those on
 * the left higher, so that an arrow line has nothing above it; where the paper ends they run left, those on the right
 * higher.
 */
final class WeldLanes {
    private static final double LANE = 2 * WeldSymbol.HALF;

    /**
     * A symbol to be placed.
     *
     * @param plate one of the plates it is for
     * @param count how many it is for
     * @param x where its arrow points, across the paper
     */
    record Wanted(Attached plate, int count, double x) {
        WeldSymbol symbol(double y, boolean toRight) {
            return WeldSymbol.of(plate, count, new Vec2(x, y), toRight);
        }
    }

    private record Placed(Wanted wanted, boolean toRight, int lane) {
        /** The paper of the words, the lanes as heights. */
        Envelope box() {
            double bend = wanted.x + (toRight ? WeldSymbol.BEND : -WeldSymbol.BEND);
            double end = bend + (toRight ? 1 : -1) * wanted.symbol(0, toRight).length();
            return new Envelope(bend, end, lane + 0.1, lane + 0.9);
        }

        Envelope leader() {
            return new Envelope(wanted.x, wanted.x + (toRight ? WeldSymbol.BEND : -WeldSymbol.BEND), -1, lane + 0.5);
        }
    }

    private final List<Placed> placed = new ArrayList<>();

    WeldLanes(List<Wanted> wanted, double left, double right) {
        List<Wanted> ordered =
                wanted.stream().sorted(Comparator.comparingDouble(Wanted::x)).toList();
        List<Wanted> leftward = new ArrayList<>();
        double limit = right;
        for (int i = ordered.size() - 1; i >= 0; i--) {
            Wanted next = ordered.get(i);
            double length = WeldSymbol.BEND + next.symbol(0, true).length();
            if (next.x + length > limit && next.x - length > left) {
                leftward.add(0, next);
                limit = next.x - WeldSymbol.BEND;
            } else {
                place(next, true);
            }
        }
        leftward.forEach(next -> place(next, false));
    }

    private void place(Wanted wanted, boolean toRight) {
        int lane = 0;
        while (!isFree(new Placed(wanted, toRight, lane))) {
            lane++;
        }
        placed.add(new Placed(wanted, toRight, lane));
    }

    /** The words clear of words and of arrow lines; crossing another's words is left to the order of placing. */
    private boolean isFree(Placed one) {
        return placed.stream().noneMatch(p -> shares(p.box(), one.box()) || shares(p.leader(), one.box()));
    }

    private static boolean shares(Envelope a, Envelope b) {
        Envelope both = a.intersection(b);
        return !both.isNull() && both.getWidth() > 1e-6 && both.getHeight() > 1e-6;
    }

    /** The paper it takes above the view. */
    double height() {
        return placed.stream().mapToInt(p -> p.lane + 1).max().orElse(0) * LANE;
    }

    /**
     * Draws above a height of the paper.
     *
     * @param target the height at which the arrow to a plate ends
     */
    List<Mark> draw(double foot, ToDoubleFunction<Attached> target) {
        List<Mark> marks = new ArrayList<>();
        for (Placed p : placed) {
            double y = foot + (p.lane + 0.5) * LANE;
            marks.addAll(p.wanted
                    .symbol(target.applyAsDouble(p.wanted.plate), p.toRight)
                    .draw(y));
        }
        return marks;
    }
}
