package org.baywright.model.rules;

import org.baywright.model.setout.ColumnLine;

/** A lean-to must be high enough to walk under at its outer columns. */
final class LeanToHeadRule implements Rule {
    /** Head height at an outer eave. Common practice, no source. */
    static final double HEAD = 2000;

    @Override
    public void check(Asked asked) {
        asked.setOut().leanTos().forEach(line -> check(asked, line));
    }

    private static void check(Asked asked, ColumnLine line) {
        String key = "leanTos[" + asked.leanToIndex(line) + "]";
        double eave = line.eaveHeight();
        double under = asked.frames()
                .filter(line::has)
                .mapToDouble(f -> line.heightBelowRoof(asked.rafter(line, f).depth()))
                .min()
                .orElse(eave);
        if (eave < HEAD) {
            asked.error(
                    "lean-to-too-low",
                    key,
                    "the outer eave of the lean-to comes to " + Asked.mm(eave)
                            + (eave <= 0 ? " mm, under the ground" : " mm above the floor, lower than a head")
                            + "; at least " + Asked.mm(HEAD) + " is needed",
                    "lessen its width, pitch or drop, or raise eaveHeight by " + Asked.mm(Math.ceil(HEAD - eave))
                            + " mm");
        } else if (under < HEAD) {
            asked.advice(
                    "lean-to-low-headroom",
                    key,
                    "there are " + Asked.mm(under) + " mm clear under the rafter at the outer columns of the lean-to",
                    "check that people and machines pass under it");
        }
    }
}
