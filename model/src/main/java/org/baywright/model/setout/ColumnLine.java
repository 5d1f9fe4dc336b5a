package org.baywright.model.setout;

import org.baywright.model.definition.Definition;
import org.baywright.model.definition.LeanTo;
import org.baywright.model.definition.Member;
import org.baywright.model.definition.Side;
import org.baywright.model.definition.Steel;

/**
 * A string line along the building: the outside faces of a row of columns.
 *
 * @param letter grid letter: A and B for the main columns, C for a lean-to on the right, A0 for one on the left, and D
 *     or A00 for a second one further out
 * @param x across the span
 * @param side the side of the building it lies on
 * @param leanTo true for the outer columns of a lean-to
 * @param roof the slope that its columns carry
 * @param firstFrame first frame with a column on this line
 * @param lastFrame last frame with a column on this line
 */
public record ColumnLine(
        String letter, double x, Side side, boolean leanTo, RoofLine roof, int firstFrame, int lastFrame) {
    /** +1 when the building lies to the right of the line, −1 when to the left. */
    public int inward() {
        return side == Side.LEFT ? 1 : -1;
    }

    /** Rise of the roof per millimetre inward from the line. */
    public double riseInward() {
        return roof.rise() * inward();
    }

    /** Whether there is a column at a frame. */
    public boolean has(int frame) {
        return frame >= firstFrame && frame <= lastFrame;
    }

    /** Top of rafter steel projected to the outside face of the columns. */
    public double eaveHeight() {
        return roof.heightAt(x);
    }

    /** How high a plane lies at the outside face that is so far below the top of rafter steel, square to the slope. */
    public double heightBelowRoof(double square) {
        return eaveHeight() - roof.plumb(square);
    }

    /** Whether it is the outer line of a lean-to. */
    public boolean isOf(LeanTo lean) {
        return leanTo && side == lean.side() && firstFrame == lean.firstFrame();
    }

    /** The column that stands on it at a frame. */
    public Member column(Definition definition, int frame) {
        Steel steel = definition.steelAt(frame, side);
        return leanTo ? steel.leanToColumn() : steel.column();
    }

    /** The rafter that its column carries at a frame. */
    public Member rafter(Definition definition, int frame) {
        return leanTo ? definition.steelAt(frame, side).leanToRafter() : definition.rafterAt(frame, side);
    }
}
