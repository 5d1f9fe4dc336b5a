package org.baywright.model.definition;

import java.util.List;

/**
 * The main building.
 *
 * @param span out to out of columns
 * @param baySpacings one per bay, in order from frame 1
 * @param eaveHeight finished floor to top of rafter steel at the column's outside face; a skillion's low side
 * @param roofPitchDeg from level
 * @param roofShape gable or skillion
 * @param kneeJoint seated or butted
 */
public record Shape(
        double span,
        List<Double> baySpacings,
        double eaveHeight,
        double roofPitchDeg,
        RoofShape roofShape,
        KneeJoint kneeJoint) {
    /** Copies the list. */
    public Shape {
        baySpacings = List.copyOf(baySpacings);
    }

    /** How many bays. */
    public int bays() {
        return baySpacings.size();
    }

    /** How many frames: one more than bays. */
    public int frames() {
        return bays() + 1;
    }

    /** Out to out of the end columns. */
    public double length() {
        return baySpacings.stream().mapToDouble(s -> s).sum();
    }
}
