package org.baywright.model.nesting;

import java.util.List;
import java.util.Objects;
import org.baywright.model.geometry.Vec2;

/**
 * A piece as it lies in a bar.
 *
 * @param blank the piece
 * @param turn how it is turned
 * @param atMm where its middle line begins, from the end of the bar
 */
public record Laid(Blank blank, Turn turn, double atMm) {
    /** Checks that it may lie so. */
    public Laid {
        Objects.requireNonNull(blank);
        if (!blank.turns().contains(turn)) {
            throw new IllegalArgumentException(blank.mark() + " would be another piece when turned so: " + turn);
        }
    }

    /** Its left end. */
    public End left() {
        return new End(blank.plane(), blank.depthMm(), turn.left(blank.startSlope(), blank.endSlope()));
    }

    /** Its right end. */
    public End right() {
        return new End(blank.plane(), blank.depthMm(), turn.right(blank.startSlope(), blank.endSlope()));
    }

    /** Where its middle line ends. */
    public double toMm() {
        return atMm + blank.middleMm();
    }

    /** Its left tip. */
    public double leftTipMm() {
        return atMm - left().setbackMm();
    }

    /** Its right tip. */
    public double rightTipMm() {
        return toMm() + right().setbackMm();
    }

    /** Its corners in the plane of the saw, anticlockwise from the lower left one. */
    public List<Vec2> outline() {
        double half = blank.depthMm() / 2;
        double left = left().slope() * half;
        double right = right().slope() * half;
        return List.of(
                new Vec2(atMm - left, -half),
                new Vec2(toMm() - right, -half),
                new Vec2(toMm() + right, half),
                new Vec2(atMm + left, half));
    }
}
