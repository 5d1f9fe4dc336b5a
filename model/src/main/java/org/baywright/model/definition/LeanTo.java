package org.baywright.model.definition;

/**
 * A lower roof along one side.
 *
 * @param side which side
 * @param width main column's outside face to outer column's outside face
 * @param pitchDeg falling away from the building
 * @param drop how far its top of steel lies below the main eave line, at the main column's outside face
 * @param fromBay first bay, from 1
 * @param toBay last bay
 */
public record LeanTo(Side side, double width, double pitchDeg, double drop, int fromBay, int toBay) {
    /** The first frame it has a column at, from 1. */
    public int firstFrame() {
        return fromBay;
    }

    /** The last frame it has a column at. */
    public int lastFrame() {
        return toBay + 1;
    }

    /** Whether it has a column at a frame. */
    public boolean has(int frame) {
        return frame >= firstFrame() && frame <= lastFrame();
    }
}
