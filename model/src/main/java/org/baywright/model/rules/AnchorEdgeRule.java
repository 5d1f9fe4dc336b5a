package org.baywright.model.rules;

import java.util.Optional;
import org.baywright.model.definition.Anchor;
import org.baywright.model.parts.PlateStand;
import org.baywright.model.setout.SlabEdge;

/**
 * Every anchor hole stands at least the product's least distance inside the slab's edge. Nearer than 1.5 times the
 * embedment is advice: there a product carries less than in the open, and how much less is the engineer's.
 *
 * <p>@source 1.5 times embedment: full-capacity edge distances of two published epoxy anchor data sheets
 */
final class AnchorEdgeRule implements Rule {
    private static final double FULL = 1.5;

    /** The hole that is nearest to the slab's edge. */
    private record Nearest(PlateStand stand, double edge) {}

    @Override
    public void check(Asked asked) {
        SlabEdge edge = SlabEdge.of(asked.definition(), asked.setOut());
        Optional<Nearest> nearest = asked.stands().stream()
                .flatMap(s -> s.holes().stream().map(h -> new Nearest(s, edge.distance(h))))
                .reduce((a, b) -> b.edge < a.edge - 1e-6 ? b : a);
        nearest.ifPresent(n -> tell(asked, n));
    }

    private static void tell(Asked asked, Nearest nearest) {
        Anchor anchor = asked.definition().anchor();
        double full = FULL * anchor.embedment();
        String where = "a hole of " + nearest.stand.plate().mark() + " at " + nearest.stand.name();
        String stands =
                nearest.edge > 0 ? " is " + Asked.mm(nearest.edge) + " mm from the slab's edge" : " is off the slab";
        String asks = beyond(asked, nearest, anchor.minimumEdge()) + " mm for the product's least of "
                + Asked.mm(anchor.minimumEdge()) + ", " + beyond(asked, nearest, full)
                + " mm for the full distance of 1.5 x embedment";
        String remedy =
                "slab.beyond is " + Asked.mm(asked.definition().ground().slab().beyond())
                        + " from the columns' faces: this hole asks " + asks;
        if (nearest.edge < anchor.minimumEdge() - 1e-6) {
            asked.error(
                    "anchor-off-edge",
                    "slab.beyond",
                    where + stands + "; the product's least is " + Asked.mm(anchor.minimumEdge()) + " mm",
                    remedy);
        } else if (nearest.edge < full - 1e-6) {
            asked.advice(
                    "anchor-near-edge",
                    "slab.beyond",
                    where + stands + "; the full edge distance is " + Asked.mmUp(full)
                            + " mm, less is for the engineer",
                    remedy);
        }
    }

    /**
     * What the slab must reach beyond the column's face so that this hole has so much concrete beside it.
     *
     * <p>@source hole to edge = face to edge − (gauge − column)/2: what one gains the other gains, derived here
     */
    private static String beyond(Asked asked, Nearest nearest, double edge) {
        return Asked.mmUp(asked.definition().ground().slab().beyond() + edge - nearest.edge);
    }
}
