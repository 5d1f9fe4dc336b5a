package org.baywright.model.definition;

import java.util.Optional;

/**
 * The concrete that the shed stands on, for quantities and drawings; the engineer says what it must be.
 *
 * @param thickness of the slab
 * @param beyond from the columns' outside faces to the slab's edge
 * @param padSide of the square thickening under a base plate; 0 for none
 * @param padDepth from the top of the slab to the bottom of the thickening
 * @param bars its reinforcement, when that was given
 */
public record Slab(double thickness, double beyond, double padSide, double padDepth, Optional<SlabBars> bars) {}
