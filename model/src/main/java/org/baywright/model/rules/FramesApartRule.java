package org.baywright.model.rules;

import org.baywright.model.setout.ColumnLine;

/** Neighbouring frames must stand clear of each other with all that is welded to them. */
final class FramesApartRule implements Rule {
    /** What apex plates and caps take past the sides of a rafter or column, both sides together. */
    private static final double PLATES = 140;

    @Override
    public void check(Asked asked) {
        asked.frames().filter(f -> f < asked.setOut().frames()).forEach(frame -> check(asked, frame));
    }

    private static void check(Asked asked, int frame) {
        double bay = asked.setOut().frameLine(frame + 1) - asked.setOut().frameLine(frame);
        double taken = reach(asked, frame) + reach(asked, frame + 1);
        if (bay < taken) {
            asked.error(
                    "frames-too-close",
                    "baySpacing",
                    "bay " + frame + " is " + Asked.mm(bay) + " mm; the frames and their plates take " + Asked.mm(taken)
                            + " mm of it",
                    "widen the bay or use narrower sections");
        }
    }

    /** How far a frame may reach from its line; an end frame lies wholly inside its line. */
    private static double reach(Asked asked, int frame) {
        double widest = 0;
        for (ColumnLine line : asked.setOut().columnLines()) {
            if (line.has(frame)) {
                widest = Math.max(
                        widest,
                        Math.max(
                                asked.column(line, frame).width(),
                                asked.rafter(line, frame).width()));
            }
        }
        boolean end = frame == 1 || frame == asked.setOut().frames();
        return end ? widest + PLATES / 2 : (widest + PLATES) / 2;
    }
}
