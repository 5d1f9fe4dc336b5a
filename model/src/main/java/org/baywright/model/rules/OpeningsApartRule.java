package org.baywright.model.rules;

import java.util.List;
import org.baywright.model.setout.OpeningPlace;

/**
 * Openings of one wall stand apart: jambs run from floor to roof, so each needs its own beside the other. One may stand
 * over another between the same jambs, with room for a header and a sill.
 */
final class OpeningsApartRule implements Rule {
    @Override
    public void check(Asked asked) {
        List<OpeningPlace> openings = asked.openings();
        for (int i = 0; i < openings.size(); i++) {
            for (int j = 0; j < i; j++) {
                check(asked, openings.get(j), openings.get(i));
            }
        }
    }

    private static void check(Asked asked, OpeningPlace first, OpeningPlace second) {
        if (!first.face().equals(second.face()) || !first.bay().equals(second.bay())) {
            return;
        }
        boolean whole = first.isWholeBay() || second.isWholeBay();
        if (!whole && first.isBetweenSameJambs(second) && isApartInHeight(first, second)) {
            over(asked, first, second);
        } else {
            beside(asked, first, second, whole ? 0 : 2 * new OpeningRoom(asked, first).jamb());
        }
    }

    private static boolean isApartInHeight(OpeningPlace first, OpeningPlace second) {
        return first.head() <= second.sill() || second.head() <= first.sill();
    }

    /** A header and a sill, each as high as an upright is wide. */
    private static void over(Asked asked, OpeningPlace first, OpeningPlace second) {
        double between = Math.max(second.sill() - first.head(), first.sill() - second.head());
        double trims = 2 * new OpeningRoom(asked, first).jamb();
        if (between < trims) {
            asked.error(
                    "openings-overlap",
                    Asked.key(second),
                    "there are " + Asked.mm(between) + " mm between it and " + Asked.key(first)
                            + " over or under it; a header and a sill take " + Asked.mm(trims),
                    "change sill or height");
        }
    }

    private static void beside(Asked asked, OpeningPlace first, OpeningPlace second, double jambs) {
        double gap = Math.max(second.left() - first.right(), first.left() - second.right());
        if (gap < jambs) {
            boolean over = gap < 0 && isApartInHeight(first, second);
            asked.error(
                    "openings-overlap",
                    Asked.key(second),
                    told(first, second, gap, jambs),
                    over ? "give both the same width and offset" : "change offset, bay or width");
        }
    }

    private static String told(OpeningPlace first, OpeningPlace second, double gap, double jambs) {
        if (gap < 0 && isApartInHeight(first, second)) {
            return "it stands above or below " + Asked.key(first)
                    + " of the same wall with other edges; jambs run from the floor to"
                    + " the roof, so that two openings over each other share theirs";
        }
        return gap < 0
                ? "it runs " + Asked.mm(-gap) + " mm into " + Asked.key(first) + " of the same wall"
                : "it stands " + Asked.mm(gap) + " mm from " + Asked.key(first) + "; a jamb for each takes "
                        + Asked.mm(jambs);
    }
}
