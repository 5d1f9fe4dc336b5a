package org.baywright.model.rules;

import org.baywright.model.definition.Member;
import org.baywright.model.setout.ColumnLine;

/** Flush girts stand between the columns and under the end rafters, so they are no deeper than those. */
final class FlushGirtRule implements Rule {
    /** So much may stand out inside, packed. Common practice, no source. */
    private static final double SLACK = 10;

    @Override
    public void check(Asked asked) {
        var girts = asked.definition().envelope().walls().girts();
        if (asked.definition().envelope().isFull() && girts.flush()) {
            for (ColumnLine line : asked.setOut().columnLines()) {
                asked.frames().filter(line::has).forEach(f -> check(asked, asked.column(line, f), girts.member()));
            }
        }
    }

    private static void check(Asked asked, Member column, Member girt) {
        double room = Math.min(column.depth(), column.width());
        if (girt.depth() > room + SLACK) {
            asked.error(
                    "flush-girts-too-deep",
                    "girts",
                    "flush girts are " + Asked.mm(girt.depth()) + " mm deep; the slightest column is " + Asked.mm(room)
                            + " mm",
                    "choose a girt no deeper than the columns, or place: outside");
        }
    }
}
