package org.baywright.model.setout;

/**
 * A shift of the bars of one way only, where no shift takes the bars of both ways clear of every hole.
 *
 * @param along whether the bars that lie across the building move along it; else those along it move across
 * @param shift of those bars, as {@link BarShift} counts it
 * @param clear whether they are then clear of every hole; else they only just miss
 * @param stillHit holes that the bars of the other way go on to hit
 */
public record OneWayShift(boolean along, double shift, boolean clear, long stillHit) {}
