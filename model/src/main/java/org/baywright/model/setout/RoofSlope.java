package org.baywright.model.setout;

import java.util.ArrayList;
import java.util.List;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.RoofShape;
import org.baywright.model.definition.Side;
import org.baywright.model.geometry.Tolerance;

/**
 * One plane of the roof over the steel: from the outside face at its eave to its upper edge, between the end string
 * lines of the frames it spans.
 *
 * @param line the column line at its eave: the low one of a skillion
 * @param upper across the span, where it ends at the top: the ridge, the high face of a skillion, or the main face
 * @param top what it meets there
 * @param firstFrame first frame under it
 * @param lastFrame last frame under it
 */
public record RoofSlope(ColumnLine line, double upper, Top top, int firstFrame, int lastFrame) {
    /** What a slope meets at its upper edge. */
    public enum Top {
        /** The slope of the other side. */
        RIDGE,
        /** Nothing: the high side of a skillion. */
        HIGH_EAVE,
        /** The wall of the main building, below its eave. */
        WALL,
        /** The main roof, carried on by a lean-to without a drop. */
        MAIN_ROOF
    }

    /** The slopes of a building, main roof first. */
    public static List<RoofSlope> of(Definition definition, SetOut setOut) {
        List<RoofSlope> slopes = new ArrayList<>();
        ColumnLine left = setOut.main(Side.LEFT);
        ColumnLine right = setOut.main(Side.RIGHT);
        if (definition.shape().roofShape() == RoofShape.SKILLION) {
            slopes.add(new RoofSlope(left, setOut.span(), Top.HIGH_EAVE, 1, setOut.frames()));
        } else {
            slopes.add(new RoofSlope(left, setOut.span() / 2, Top.RIDGE, 1, setOut.frames()));
            slopes.add(new RoofSlope(right, setOut.span() / 2, Top.RIDGE, 1, setOut.frames()));
        }
        for (ColumnLine lean : setOut.leanTos()) {
            ColumnLine main = setOut.main(lean.side());
            boolean carriedOn = Tolerance.same(lean.roof().heightAt(main.x()), main.eaveHeight());
            slopes.add(new RoofSlope(
                    lean, main.x(), carriedOn ? Top.MAIN_ROOF : Top.WALL, lean.firstFrame(), lean.lastFrame()));
        }
        return slopes;
    }

    /** Its top of rafter steel. */
    public RoofLine roof() {
        return line.roof();
    }

    /** Across the span, at the eave's outside face. */
    public double eave() {
        return line.x();
    }

    /** Level, from the eave's outside face to the upper edge. */
    public double run() {
        return Math.abs(upper - eave());
    }

    /** The side of the building that it falls to. */
    public Side side() {
        return line.side();
    }

    /** Where it starts along the building. */
    public double from(SetOut setOut) {
        return setOut.frameLine(firstFrame);
    }

    /** Where it ends along the building. */
    public double to(SetOut setOut) {
        return setOut.frameLine(lastFrame);
    }
}
