package org.baywright.model.rules;

import java.util.List;
import org.baywright.model.setout.OpeningPlace;

/** Openings of one wall stand apart: jambs run from floor to roof, so each needs its own beside the other. */
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
        double jambs = first.isWholeBay() || second.isWholeBay() ? 0 : 2 * new OpeningRoom(asked, first).jamb();
        double gap = Math.max(second.left() - first.right(), first.left() - second.right());
        if (first.face().equals(second.face()) && first.bay().equals(second.bay()) && gap < jambs) {
            asked.error(
                    "openings-overlap",
                    Asked.key(second),
                    told(first, second, gap, jambs),
                    "change offset, bay or width");
        }
    }

    private static String told(OpeningPlace first, OpeningPlace second, double gap, double jambs) {
        boolean over = first.head() <= second.sill() || second.head() <= first.sill();
        if (gap < 0 && over) {
            return "it stands above or below opening " + first.number()
                    + " of the same wall; jambs run from the floor to"
                    + " the roof, so that two openings stand beside each other only";
        }
        return gap < 0
                ? "it runs " + Asked.mm(-gap) + " mm into opening " + first.number() + " of the same wall"
                : "it stands " + Asked.mm(gap) + " mm from opening " + first.number() + "; a jamb for each takes "
                        + Asked.mm(jambs);
    }
}
