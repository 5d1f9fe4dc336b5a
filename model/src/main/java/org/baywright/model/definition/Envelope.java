package org.baywright.model.definition;

import java.util.List;
import java.util.Optional;

/**
 * All that goes on the frame.
 *
 * @param extent whether anything goes on it
 * @param purlins roof rows
 * @param walls wall rows and uprights
 * @param bracing roof and wall bracing
 * @param sheeting sheets
 * @param roofWater gutters and downpipes
 * @param openings doors, windows and open bays
 * @param liftingBeam a beam for a hoist
 */
public record Envelope(
        Extent extent,
        Purlins purlins,
        WallFrame walls,
        Bracing bracing,
        Sheeting sheeting,
        RoofWater roofWater,
        List<Opening> openings,
        Optional<LiftingBeam> liftingBeam) {
    /** How much of it there is. */
    public enum Extent {
        FULL,
        NONE
    }

    /** Rows and uprights of the walls. */
    public record WallFrame(Girts girts, Mullions mullions) {}

    /** Copies the list. */
    public Envelope {
        openings = List.copyOf(openings);
    }

    /** Whether the shed has an envelope at all. */
    public boolean isFull() {
        return extent == Extent.FULL;
    }
}
