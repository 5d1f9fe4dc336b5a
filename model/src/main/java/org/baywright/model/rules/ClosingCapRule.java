package org.baywright.model.rules;

import org.baywright.model.definition.Side;
import org.baywright.model.setout.ColumnLine;

/** The cap that closes a butted column lies between its faces; too thick for the pitch, nothing of it is left. */
final class ClosingCapRule implements Rule {
    private static final double SHORTEST = 20;

    @Override
    public void check(Asked asked) {
        if (asked.butted()) {
            asked.frames().forEach(frame -> {
                for (Side side : Side.values()) {
                    check(asked, asked.setOut().main(side), frame);
                }
            });
        }
    }

    private static void check(Asked asked, ColumnLine line, int frame) {
        double cap = asked.definition().plates().capThickness();
        double lost = cap * Math.abs(line.roof().rise());
        double length = line.roof().plumb(asked.column(line, frame).depth()) - lost;
        if (length < SHORTEST) {
            asked.error(
                    "cap-too-thick",
                    "capPlate.thickness",
                    "a cap of " + Asked.mm(cap) + " mm at this pitch leaves " + Asked.mm(length)
                            + " mm of plate between the column's faces; at least " + Asked.mm(SHORTEST)
                            + " is needed",
                    "use a thinner cap, a lower pitch or a deeper column");
        }
    }
}
