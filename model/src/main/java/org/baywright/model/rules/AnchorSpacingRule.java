package org.baywright.model.rules;

import java.util.List;
import org.baywright.model.definition.Anchor;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.parts.PlateStand;

/**
 * The anchors of a plate stand at least the product's least spacing apart. Closer than 3 times the embedment is advice:
 * there anchors share the concrete between them, and what that costs is the engineer's. So are two plates whose anchors
 * come close.
 *
 * <p>@source 3 times embedment: full-capacity spacings of two published epoxy anchor data sheets
 */
final class AnchorSpacingRule implements Rule {
    private static final double FULL = 3;

    @Override
    public void check(Asked asked) {
        List<PlateStand> stands = asked.stands();
        stands.forEach(stand -> within(asked, stand));
        for (int i = 0; i < stands.size(); i++) {
            for (int j = i + 1; j < stands.size(); j++) {
                between(asked, stands.get(i), stands.get(j));
            }
        }
    }

    private static void within(Asked asked, PlateStand stand) {
        Anchor anchor = asked.definition().anchor();
        double closest = closest(stand.holes(), stand.holes());
        String apart = "anchors of " + stand.plate().mark() + " at " + stand.name() + " stand " + Asked.mm(closest)
                + " mm apart; ";
        if (closest < anchor.minimumSpacing() - 1e-6) {
            asked.error(
                    "anchors-close",
                    "anchor.minimumSpacing",
                    apart + "the product's least is " + Asked.mm(anchor.minimumSpacing()) + " mm",
                    "raise gaugeX or gaugeY, or use fewer holes or smaller anchors");
        } else if (closest < FULL * anchor.embedment() - 1e-6) {
            asked.advice(
                    "anchors-share-concrete",
                    "anchor.minimumSpacing",
                    apart + "the full spacing of 3 x embedment is " + Asked.mmUp(FULL * anchor.embedment())
                            + " mm, less is for the engineer",
                    "have the engineer take the group as one");
        }
    }

    private static void between(Asked asked, PlateStand a, PlateStand b) {
        Anchor anchor = asked.definition().anchor();
        double closest = near(a, b, anchor) ? closest(a.holes(), b.holes()) : Double.MAX_VALUE;
        if (closest < anchor.minimumSpacing() - 1e-6) {
            asked.advice(
                    "plates-share-concrete",
                    "anchor.minimumSpacing",
                    "anchors of " + a.plate().mark() + " at " + a.name() + " and of "
                            + b.plate().mark() + " at " + b.name()
                            + " stand " + Asked.mm(closest) + " mm apart; the product's least is "
                            + Asked.mm(anchor.minimumSpacing()) + " mm",
                    "move the opening or the post, or ask the engineer");
        }
    }

    /** Whether holes of two plates can be closer than the least spacing at all. */
    private static boolean near(PlateStand a, PlateStand b, Anchor anchor) {
        double reach = (a.plate().stockLength() + b.plate().stockLength()) / Math.sqrt(2);
        return Math.hypot(
                        a.middle().x() - b.middle().x(),
                        a.middle().y() - b.middle().y())
                < reach + anchor.minimumSpacing();
    }

    private static double closest(List<Vec2> some, List<Vec2> others) {
        return some.stream()
                .flatMapToDouble(a -> others.stream().filter(b -> b != a).mapToDouble(a::distance))
                .filter(d -> d > 1e-6)
                .min()
                .orElse(Double.MAX_VALUE);
    }
}
