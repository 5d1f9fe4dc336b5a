package org.baywright.model.parts;

import java.util.List;
import java.util.Optional;

/**
 * One length of girt along a wall.
 *
 * @param from its left end
 * @param to its right end
 * @param height of the row's back
 */
record GirtSpan(End from, End to, double height) {
    /** Two lengths whose ends are this near are cut at one place. */
    private static final double SAME = 1e-6;

    /**
     * An end of a length.
     *
     * @param at where the steel ends
     * @param gap from there to the face of what carries its cleat
     * @param toBolt from there to the bolts of its cleat
     * @param over the frame that it laps over, when it does
     */
    record End(double at, double gap, double toBolt, Optional<Lap> over) {
        /** From the end of a length to its bolts, and half a cleat. Common practice, no source. */
        static final double TO_BOLTS = 25;

        End(double at, double gap) {
            this(at, gap, TO_BOLTS, Optional.empty());
        }

        boolean isAt(double u) {
            return Math.abs(at - u) < SAME;
        }
    }

    /**
     * A lap over a frame.
     *
     * @param line of the frame
     * @param half how far a length reaches past it
     */
    record Lap(double line, double half) {
        /** On the cleat, and at both ends of the lap. */
        List<Double> bolts() {
            double out = half - RowBays.TO_BOLTS;
            return List.of(line - out, line, line + out);
        }
    }

    double length() {
        return to.at - from.at;
    }

    /** Whether a length at another height stands over or under its middle. */
    boolean isInLineWith(GirtSpan other) {
        double middle = (from.at + to.at) / 2;
        return other.from.at < middle && middle < other.to.at;
    }

    boolean isLapped() {
        return from.over.isPresent() || to.over.isPresent();
    }
}
