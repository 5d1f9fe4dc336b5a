package org.baywright.model.rules;

import org.baywright.model.catalogue.Section;
import org.baywright.model.setout.ColumnLine;

/** Advice: the upper of two crossed braces lies under the purlins, so a rafter is deeper than the brace stands up. */
final class BraceDepthRule implements Rule {
    /** A cleat under the brace, and left over it. Common practice, no source. */
    private static final double CLEAT_AND_ROOM = 18;

    @Override
    public void check(Asked asked) {
        if (asked.clad()) {
            for (int bay : asked.definition().envelope().bracing().bays()) {
                asked.setOut().columnLines().stream()
                        .filter(line -> line.has(bay) && line.has(bay + 1))
                        .forEach(line -> check(asked, line, bay));
            }
        }
    }

    private static void check(Asked asked, ColumnLine line, int bay) {
        Section brace = asked.definition().envelope().bracing().section();
        double least = brace.width() + CLEAT_AND_ROOM;
        double rafter = Math.min(
                asked.rafter(line, bay).depth(), asked.rafter(line, bay + 1).depth());
        if (rafter < least) {
            asked.advice(
                    "brace-meets-purlins",
                    "bracing.section",
                    "a brace of " + brace.designation() + " stands up to the purlins on a rafter " + Asked.mm(rafter)
                            + " mm deep; under them it takes a rafter of " + Asked.mm(least),
                    "brace with rods or flats, or cut the purlins' lower flanges round it as the engineer says");
        }
    }
}
