package org.baywright.model.rules;

import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Sheeting;
import org.baywright.model.setout.RoofSlope;

/** Advice: sheets longer than can be carried are split and lapped. */
final class SheetLengthRule implements Rule {
    @Override
    public void check(Asked asked) {
        if (asked.clad()) {
            RoofSlope.of(asked.definition(), asked.setOut()).forEach(slope -> check(asked, slope));
        }
    }

    private static void check(Asked asked, RoofSlope slope) {
        Sheeting sheeting = asked.definition().envelope().sheeting();
        double length = slope(asked.definition(), slope);
        if (length > sheeting.longest()) {
            int pieces = (int) Math.ceil(length / sheeting.longest());
            asked.advice(
                    "sheet-split",
                    "longestSheet",
                    "the roof sheets would be " + Asked.mm(length) + " mm long; longer than "
                            + Asked.mm(sheeting.longest()) + " they are split into " + pieces + " and lapped",
                    "raise longestSheet if longer ones can be carried and lifted; otherwise see to the laps' sealing");
        }
    }

    /** As long as the slope, past the gutter's support and into the gutter, less the gap at the ridge. */
    private static double slope(Definition definition, RoofSlope slope) {
        Sheeting.Roof roof = definition.envelope().sheeting().roof();
        boolean flush = definition.envelope().walls().girts().flush();
        double girt = flush ? 0 : definition.envelope().walls().girts().member().depth();
        double support = Math.max(girt, definition.plates().rafterOverhang());
        return (slope.run() + support) / slope.roof().cosine() + roof.intoGutter() - roof.ridgeGap();
    }
}
