package org.baywright.model.rules;

import org.baywright.model.setout.ColumnLine;

/** Advice: a rafter wider than its end column stands past the end string line, where girts and sheeting go. */
final class WideRafterRule implements Rule {
    @Override
    public void check(Asked asked) {
        for (ColumnLine line : asked.setOut().columnLines()) {
            asked.frames()
                    .filter(f -> line.has(f) && (f == 1 || f == asked.setOut().frames()))
                    .forEach(frame -> check(asked, line, frame));
        }
    }

    private static void check(Asked asked, ColumnLine line, int frame) {
        double past =
                (asked.rafter(line, frame).width() - asked.column(line, frame).width()) / 2;
        if (past > 0.5) {
            asked.advice(
                    "rafter-past-end-line",
                    line.leanTo() ? "leanToRafter" : "rafter",
                    "at the end frames the rafter is wider than its column and stands " + Asked.mm(past)
                            + " mm past the end string line",
                    "allow for it in the end wall, or choose a column as wide as the rafter");
        }
    }
}
