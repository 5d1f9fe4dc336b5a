package org.baywright.model.rules;

import org.baywright.model.definition.Member;
import org.baywright.model.setout.ColumnLine;

/** Every column must be left some length between its base plate and the steel above it. */
final class ColumnHeightRule implements Rule {
    /** Shorter than this is a stub, not a column. Common practice, no source. */
    private static final double SHORTEST = 300;

    @Override
    public void check(Asked asked) {
        asked.setOut()
                .columnLines()
                .forEach(line -> asked.frames().filter(line::has).forEach(frame -> check(asked, line, frame)));
    }

    private static void check(Asked asked, ColumnLine line, int frame) {
        Member column = asked.column(line, frame);
        double foot =
                asked.definition().plates().groutGap() + asked.base(line, frame).thickness();
        double outside = line.heightBelowRoof(asked.belowRoof(line, frame));
        double inside = outside + line.riseInward() * column.depth();
        double rafterUnder = line.heightBelowRoof(asked.rafter(line, frame).depth());
        double shortest = Math.min(Math.min(outside, inside), rafterUnder) - foot;
        if (shortest < SHORTEST) {
            asked.error(
                    "column-too-short",
                    asked.heightKey(line),
                    "the column on line " + line.letter() + " would be left " + Asked.mm(shortest)
                            + " mm long under the rafter; at least " + Asked.mm(SHORTEST) + " is needed",
                    "raise the eave by " + Asked.mm(Math.ceil(SHORTEST - shortest)) + " mm, or use a shallower rafter");
        }
    }
}
