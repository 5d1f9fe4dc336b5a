package org.baywright.model.rules;

import org.baywright.model.definition.Anchor;
import org.baywright.model.definition.Slab;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.parts.PlateStand;

/**
 * The concrete round every anchor is as thick as its product asks. The least thickness is the product's own figure,
 * entered by the user or our example's; what the concrete must be for its loads is the engineer's.
 */
final class AnchorDepthRule implements Rule {
    @Override
    public void check(Asked asked) {
        Anchor anchor = asked.definition().anchor();
        if (anchor.embedment() >= anchor.minimumConcrete()) {
            asked.error(
                    "embedment-through-slab",
                    "anchor.embedment",
                    "an embedment of " + Asked.mm(anchor.embedment()) + " mm is not less than minimumConcrete "
                            + Asked.mm(anchor.minimumConcrete()),
                    "give both figures from the product's data sheet");
        }
        if (asked.definition().ground().slab().flat() < anchor.minimumConcrete()) {
            asked.stands().forEach(stand -> thickening(asked, anchor, stand));
        }
    }

    /** A slab that is too thin by itself needs a thickening that is deep enough and reaches past the holes. */
    private static void thickening(Asked asked, Anchor anchor, PlateStand stand) {
        Slab slab = asked.definition().ground().slab();
        double past = slab.padSide() / 2 - furthest(stand);
        boolean deep = past > 0 && slab.padDepth() >= anchor.minimumConcrete();
        if (!deep) {
            String thick = past > 0
                    ? "it is " + Asked.mm(Math.max(slab.padDepth(), slab.flat())) + " mm thick there"
                    : "no thickening reaches past the holes";
            asked.error(
                    "slab-too-thin",
                    past > 0 ? "slab.padDepth" : "slab.padSide",
                    anchor.size() + " anchors set " + Asked.mm(anchor.embedment()) + " mm deep need at least "
                            + Asked.mm(anchor.minimumConcrete()) + " mm of concrete; under "
                            + stand.plate().mark()
                            + " at " + stand.name() + " " + thick,
                    "deepen or widen the concrete under every base plate, and use the figures of the product you buy");
        } else if (past < anchor.minimumEdge()) {
            asked.advice(
                    "thickening-narrow",
                    "slab.padSide",
                    "the thickening under " + stand.plate().mark() + " at " + stand.name() + " ends "
                            + Asked.mm(past) + " mm past a hole line, less than the least edge distance of "
                            + Asked.mm(anchor.minimumEdge()) + " mm",
                    "widen it, or ask the engineer");
        }
    }

    /** From the middle of a plate to its outermost hole line, either way. */
    private static double furthest(PlateStand stand) {
        return stand.plate().holes().stream()
                .map(h -> h.at())
                .mapToDouble((Vec2 at) -> Math.max(Math.abs(at.x()), Math.abs(at.y())))
                .max()
                .orElse(0);
    }
}
