package org.baywright.model.definition;

import java.util.Optional;

/**
 * The concrete.
 *
 * @param floor a slab, or pads under the base plates and earth between
 * @param thickness of the slab
 * @param beyond from the columns' outside faces to the slab's edge
 * @param padSide of the square thickening or pad under a base plate; 0 for none
 * @param padDepth from the finished floor to the bottom of the thickening or pad
 * @param edgeWidth of the beam along the slab's edge; 0 for none
 * @param edgeDepth from the finished floor to the bottom of that beam
 * @param joints most between sawn joints; 0 for none
 * @param bars its reinforcement, when that was given
 */
public record Slab(
        Floor floor,
        double thickness,
        double beyond,
        double padSide,
        double padDepth,
        double edgeWidth,
        double edgeDepth,
        double joints,
        Optional<SlabBars> bars) {
    /** Whether there is concrete under the base plates only. */
    public boolean isPads() {
        return floor == Floor.PADS;
    }

    /** How thick the concrete is where it is not thickened. */
    public double flat() {
        return isPads() ? 0 : thickness;
    }

    /** How deep a saw cuts a joint. @source placing joints in concrete: a quarter of the thickness */
    public double jointDepth() {
        return Math.ceil(thickness / 4);
    }
}
