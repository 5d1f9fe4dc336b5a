package org.baywright.model.takeoff;

/**
 * A stick electrode.
 *
 * @param lengthMm new
 * @param stubMm thrown away
 * @param efficiency of what melts, the part that stays in the weld
 */
public record Electrode(double lengthMm, double stubMm, double efficiency) {
    /** 350 long, burnt to a stub of 50, seven tenths of the rest in the weld. */
    public static final Electrode USUAL = new Electrode(350, 50, 0.70);

    /**
     * How much of a new stick stays in the weld.
     *
     * @source Basics of Arc Welding, lesson 9, stub-loss table (14 in stick, 2 in stub: 60 % becomes 51.4 %): efficiency ·
     *     (length − stub) / length
     */
    public double usable() {
        return efficiency * (lengthMm - stubMm) / lengthMm;
    }
}
