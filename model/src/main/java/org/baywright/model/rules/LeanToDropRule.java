package org.baywright.model.rules;

import org.baywright.model.definition.LeanTo;
import org.baywright.model.definition.Plates;
import org.baywright.model.geometry.Tolerance;
import org.baywright.model.parts.PlateRoom;
import org.baywright.model.setout.ColumnLine;

/**
 * A lean-to hangs on the face of the main column, below everything on the column's top, or carries on the main roof
 * line. In between, its rafter would run through the top of the column.
 */
final class LeanToDropRule implements Rule {
    @Override
    public void check(Asked asked) {
        if (!asked.butted()) {
            asked.setOut()
                    .leanTos()
                    .forEach(line -> asked.frames().filter(line::has).forEach(frame -> check(asked, line, frame)));
        }
    }

    private static void check(Asked asked, ColumnLine leanToLine, int frame) {
        int index = asked.leanToIndex(leanToLine);
        LeanTo leanTo = asked.definition().leanTos().get(index);
        double overhang = asked.definition().plates().rafterOverhang();
        double least = leastDrop(asked, leanToLine, frame);
        boolean continues = Tolerance.same(leanTo.drop(), 0);
        if (continues && overhang > 0) {
            asked.error(
                    "overhang-meets-lean-to",
                    "leanTos[" + index + "].drop",
                    "a continuing lean-to (drop 0) needs rafterOverhang 0, read " + Asked.mm(overhang),
                    "set rafterOverhang to 0, or the drop to " + Asked.mm(Math.ceil(least)) + " or more");
        } else if (!continues && leanTo.drop() < least - Tolerance.COINCIDENT) {
            asked.error(
                    "lean-to-through-column-top",
                    "leanTos[" + index + "].drop",
                    "a drop of " + Asked.mm(leanTo.drop())
                            + " mm takes the lean-to rafter through the top of the main column; allowed are 0"
                            + " (continuing roof) or " + Asked.mm(Math.ceil(least)) + " and more",
                    "set the drop to 0 or to " + Asked.mm(Math.ceil(least)) + " or more");
        }
    }

    /** The drop at which the lean-to's steel passes below the cap and the overhanging tail of the main rafter. */
    private static double leastDrop(Asked asked, ColumnLine leanToLine, int frame) {
        ColumnLine main = asked.setOut().main(leanToLine.side());
        Plates plates = asked.definition().plates();
        double rise = main.riseInward();
        double cap = main.roof().plumb(asked.belowRoof(main, frame));
        double underCap = cap + Math.max(0, PlateRoom.WELD * rise);
        double tailRise = rise - leanToLine.riseInward();
        double underTail =
                main.roof().plumb(asked.rafter(main, frame).depth()) + Math.max(0, plates.rafterOverhang() * tailRise);
        return Math.max(underCap, underTail);
    }
}
