package org.baywright.model.rules;

import org.baywright.model.catalogue.Section;
import org.baywright.model.parts.BracedSlopes;
import org.baywright.model.setout.ColumnLine;

/**
 * The upper of two crossed braces lies under the purlins, so a rafter is deeper than the brace stands up: advice where it
 * comes close to them, an error where it would run through them.
 */
final class BraceDepthRule implements Rule {
    /** The cleat under the brace, and left over it. Common practice, no source. */
    private static final double CLEAT = 8;

    private static final double ROOM = 10;

    @Override
    public void check(Asked asked) {
        if (asked.clad()) {
            for (int bay : asked.definition().envelope().bracing().bays()) {
                asked.setOut().columnLines().stream()
                        .filter(line -> line.has(bay) && line.has(bay + 1))
                        .filter(line -> BracedSlopes.isBraced(asked.definition(), asked.setOut(), line, bay))
                        .forEach(line -> check(asked, line, bay));
            }
        }
    }

    private static void check(Asked asked, ColumnLine line, int bay) {
        Section brace = asked.definition().envelope().bracing().section();
        double least = brace.width() + CLEAT;
        double rafter = Math.min(
                asked.rafter(line, bay).depth(), asked.rafter(line, bay + 1).depth());
        if (rafter < least) {
            asked.error(
                    "brace-through-purlins",
                    "bracing.section",
                    "a brace of " + brace.designation() + " on a rafter " + Asked.mm(rafter)
                            + " mm deep would run through the purlins; it takes a rafter of " + Asked.mm(least),
                    "brace with rods or flats, such as section: ROD 16, or name a deeper rafter");
        } else if (rafter < least + ROOM) {
            asked.advice(
                    "brace-meets-purlins",
                    "bracing.section",
                    "a brace of " + brace.designation() + " stands up to the purlins on a rafter " + Asked.mm(rafter)
                            + " mm deep; clear of them it takes a rafter of " + Asked.mm(least + ROOM),
                    "brace with rods or flats, or see that nuts and the brace's leg pass the purlins' lower flanges");
        }
    }
}
