package org.baywright.model.definition;

import java.util.List;

/**
 * Everything that was asked for, defaults applied. Millimetres and degrees.
 *
 * @param project what the title block says
 * @param shape span, bays, heights and roof
 * @param leanTos none, one or two
 * @param steel the sections of the ordinary frames
 * @param heavier other sections at named frames; a later entry wins over an earlier one
 * @param plates plates and gaps
 * @param anchor the anchor at every hole of every base plate
 * @param envelope what goes on the frame
 * @param ground what it stands on
 * @param sawing what its bars are cut from
 */
public record Definition(
        Project project,
        Shape shape,
        List<LeanTo> leanTos,
        Steel steel,
        List<Heavier> heavier,
        Plates plates,
        Anchor anchor,
        Envelope envelope,
        Ground ground,
        Sawing sawing) {
    /** Copies the lists. */
    public Definition {
        leanTos = List.copyOf(leanTos);
        heavier = List.copyOf(heavier);
    }

    /** The sections at one side of a frame: the ordinary ones, unless a heavier entry says otherwise. */
    public Steel steelAt(int frame, Side side) {
        Steel result = steel;
        for (Heavier entry : heavier) {
            if (entry.covers(frame, side)) {
                result = new Steel(
                        entry.column().orElse(result.column()),
                        entry.rafter().orElse(result.rafter()),
                        entry.leanToColumn().orElse(result.leanToColumn()),
                        entry.leanToRafter().orElse(result.leanToRafter()));
            }
        }
        return result;
    }

    /** The rafter over one side of a frame; a skillion has one rafter over both. */
    public Member rafterAt(int frame, Side side) {
        return steelAt(frame, shape.roofShape() == RoofShape.SKILLION ? Side.LEFT : side)
                .rafter();
    }
}
