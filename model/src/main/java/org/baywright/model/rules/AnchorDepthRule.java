package org.baywright.model.rules;

import org.baywright.model.definition.Anchor;

/**
 * Advice: chemical anchors need deeper concrete than a plain farm slab.
 *
 * <p>The least thickness is the product's own figure, entered by the user or our example's.
 */
final class AnchorDepthRule implements Rule {
    /** A light farm slab. Common practice, no source. */
    private static final double LIGHT_SLAB = 100;

    @Override
    public void check(Asked asked) {
        Anchor anchor = asked.definition().anchor();
        if (anchor.minimumConcrete() > LIGHT_SLAB) {
            asked.advice(
                    "slab-needs-thickening",
                    "anchor",
                    anchor.size() + " anchors set " + Asked.mm(anchor.embedment()) + " mm deep need at least "
                            + Asked.mm(anchor.minimumConcrete()) + " mm of concrete; a "
                            + Asked.mm(LIGHT_SLAB) + " mm slab does not have it",
                    "thicken the slab under every base plate, and use the figures of the product you buy");
        }
        if (anchor.embedment() >= anchor.minimumConcrete()) {
            asked.error(
                    "embedment-through-slab",
                    "anchor.embedment",
                    "an embedment of " + Asked.mm(anchor.embedment()) + " mm is not less than minimumConcrete "
                            + Asked.mm(anchor.minimumConcrete()),
                    "give both figures from the product's data sheet");
        }
    }
}
