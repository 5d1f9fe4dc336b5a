package org.baywright.model.rules;

import java.util.Optional;
import org.baywright.model.definition.Anchor;
import org.baywright.model.definition.Slab;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.parts.Foundation;
import org.baywright.model.parts.PlateStand;
import org.baywright.model.setout.SlabEdge;

/**
 * Every anchor hole stands at least the product's least distance inside the edge of slab or pad. Nearer than 1.5 times
 * the embedment is advice: there a product carries less than in the open, and how much less is the engineer's.
 *
 * <p>@source 1.5 times embedment: full-capacity edge distances of two published epoxy anchor data sheets
 */
final class AnchorEdgeRule implements Rule {
    private static final double FULL = 1.5;

    /** How finely a needed length is told, millimetres. */
    private static final double FINE = 0.01;

    /** The hole that is nearest to an edge. */
    private record Nearest(PlateStand stand, Vec2 hole, double edge) {}

    @Override
    public void check(Asked asked) {
        SlabEdge edge = Foundation.of(asked.definition(), asked.setOut(), asked.stands())
                .edge();
        Optional<Nearest> nearest = asked.stands().stream()
                .flatMap(s -> s.holes().stream().map(h -> new Nearest(s, h, edge.distance(h))))
                .reduce((a, b) -> b.edge < a.edge - 1e-6 ? b : a);
        nearest.ifPresent(n -> tell(asked, n));
    }

    private static void tell(Asked asked, Nearest nearest) {
        Slab slab = asked.definition().ground().slab();
        Anchor anchor = asked.definition().anchor();
        double full = FULL * anchor.embedment();
        String key = slab.isPads() ? "slab.padSide" : "slab.beyond";
        String what = slab.isPads() ? "pad" : "slab";
        String where = "a hole of " + nearest.stand.plate().mark() + " at " + nearest.stand.name();
        String stands = nearest.edge > 0
                ? " is " + Asked.mm(nearest.edge) + " mm from the " + what + "'s edge"
                : " is off the " + what;
        if (nearest.edge < anchor.minimumEdge() - 1e-6) {
            asked.error(
                    "anchor-off-edge",
                    key,
                    where + stands + "; the product's least is " + Asked.mm(anchor.minimumEdge()) + " mm",
                    remedy(asked, nearest));
        } else if (nearest.edge < full - 1e-6) {
            asked.advice(
                    "anchor-near-edge",
                    key,
                    where + stands + "; the full edge distance is " + Asked.mmUp(full)
                            + " mm, less is for the engineer",
                    remedy(asked, nearest));
        }
    }

    private static String remedy(Asked asked, Nearest nearest) {
        Slab slab = asked.definition().ground().slab();
        Anchor anchor = asked.definition().anchor();
        String is = slab.isPads()
                ? "slab.padSide is " + Asked.mm(slab.padSide())
                : "slab.beyond is " + Asked.mm(slab.beyond()) + " from the columns' faces";
        return is + ": this hole asks " + needed(asked, nearest, anchor.minimumEdge())
                + " mm for the product's least of " + Asked.mm(anchor.minimumEdge()) + ", "
                + needed(asked, nearest, FULL * anchor.embedment())
                + " mm for the full distance of 1.5 x embedment";
    }

    /** The figure of slab or pad that gives a hole so much concrete beside it. */
    private static String needed(Asked asked, Nearest nearest, double edge) {
        Slab slab = asked.definition().ground().slab();
        if (slab.isPads()) {
            return Asked.mmUp(slab.padSide() + 2 * (edge - nearest.edge));
        }
        double low = slab.beyond();
        double high = low + edge - nearest.edge;
        if (nearest.edge > 0) {
            return Asked.mmUp(Math.max(0, high));
        }
        // At a corner that the hole lies off, the slab nears it faster than it grows.
        while (high - low > FINE) {
            double middle = (low + high) / 2;
            boolean enough =
                    SlabEdge.of(asked.definition(), asked.setOut(), middle).distance(nearest.hole) >= edge - 1e-6;
            low = enough ? low : middle;
            high = enough ? middle : high;
        }
        return Asked.mmUp(high - FINE);
    }
}
