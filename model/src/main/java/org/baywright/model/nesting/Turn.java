package org.baywright.model.nesting;

import java.util.Collections;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.baywright.model.geometry.Profile;
import org.baywright.model.geometry.Vec2;

/**
 * A half turn of a piece on the saw. Only turns, never mirrors: the piece keeps its hand.
 *
 * <pre>
 *   as drawn        rolled over      end for end      end for end, rolled
 *    /-------/      \-------\         /-------/        \-------\
 *  (start, end)  (-start, -end)     (end, start)     (-end, -start)
 * </pre>
 */
public enum Turn {
    AS_DRAWN("", false, false),
    /** Half a turn about its length. */
    ROLLED("rolled over", true, false),
    /** Half a turn on the saw bench, the same face up. */
    END_FOR_END("end for end", false, true),
    /** Both. */
    END_FOR_END_ROLLED("end for end, rolled over", true, true);

    private static final double STEPS_PER_MM = 1e6;

    private final String label;
    private final boolean rolls;
    private final boolean swaps;

    Turn(String label, boolean rolls, boolean swaps) {
        this.label = label;
        this.rolls = rolls;
        this.swaps = swaps;
    }

    /** In words; empty for a piece that lies as it is drawn. */
    public String label() {
        return label;
    }

    /** The slope of its left end once turned, from the slopes of its start and its end. */
    public double left(double start, double end) {
        return signed(swaps ? end : start);
    }

    /** The slope of its right end once turned. */
    public double right(double start, double end) {
        return signed(swaps ? start : end);
    }

    private double signed(double slope) {
        return rolls && slope != 0 ? -slope : slope;
    }

    /** The turns that lay a profile on itself, seen in one of its planes. */
    static Set<Turn> of(Profile profile, SawPlane plane) {
        boolean overDepth = isSame(profile, p -> new Vec2(-p.x(), p.y()));
        boolean overWidth = isSame(profile, p -> new Vec2(p.x(), -p.y()));
        Set<Turn> turns = EnumSet.of(AS_DRAWN);
        if (isSame(profile, p -> new Vec2(-p.x(), -p.y()))) {
            turns.add(ROLLED);
        }
        if (plane == SawPlane.DEPTH ? overDepth : overWidth) {
            turns.add(END_FOR_END);
        }
        if (plane == SawPlane.DEPTH ? overWidth : overDepth) {
            turns.add(END_FOR_END_ROLLED);
        }
        return Collections.unmodifiableSet(turns);
    }

    /** Whether a quarter turn about its length lays a profile on itself, so that both planes are one. */
    static boolean isQuarterAlike(Profile profile) {
        return isSame(profile, Vec2::left);
    }

    private static boolean isSame(Profile profile, UnaryOperator<Vec2> move) {
        return steps(profile.outline(), move).equals(steps(profile.outline(), p -> p))
                && steps(profile.bore(), move).equals(steps(profile.bore(), p -> p));
    }

    private static Set<List<Long>> steps(List<Vec2> ring, UnaryOperator<Vec2> move) {
        Set<List<Long>> steps = new HashSet<>();
        for (Vec2 corner : ring) {
            Vec2 p = move.apply(corner);
            steps.add(List.of(Math.round(p.x() * STEPS_PER_MM), Math.round(p.y() * STEPS_PER_MM)));
        }
        return steps;
    }
}
