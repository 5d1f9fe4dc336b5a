package org.baywright.model.setout;

/**
 * A shift that takes anchor holes and bars out of each other's way.
 *
 * @param along the building, away from line 1 when above zero
 * @param across the building, away from line A to the right when above zero
 * @param clear whether every hole is then clear; else the holes only just miss the bars
 */
public record BarShift(double along, double across, boolean clear) {
    /** The same shift the other way: moving the plate instead of the bars. */
    public BarShift reversed() {
        return new BarShift(0 - along, 0 - across, clear);
    }
}
