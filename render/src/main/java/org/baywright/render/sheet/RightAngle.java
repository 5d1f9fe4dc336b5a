package org.baywright.render.sheet;

import org.baywright.model.setout.SetOut;

/**
 * A right angle at the datum by tape: 3, 4 and 5 times one length, as large as the building takes, the longer leg along
 * its longer side. @source 3² + 4² = 5²
 *
 * @param unit the length, mm
 * @param alongA how many times on line A: 4 or 3
 */
record RightAngle(double unit, int alongA) {
    /** The unit is a whole number of these, for marks that are easy to find on a tape. */
    private static final double STEP = 100;

    /** The largest of a building. */
    static RightAngle of(SetOut setOut) {
        double large = Math.max(setOut.length(), setOut.span());
        double small = Math.min(setOut.length(), setOut.span());
        double unit = Math.max(STEP, Math.floor(Math.min(large / 4, small / 3) / STEP) * STEP);
        return new RightAngle(unit, setOut.length() >= setOut.span() ? 4 : 3);
    }

    double onA() {
        return alongA * unit;
    }

    double onOne() {
        return (7 - alongA) * unit;
    }

    double across() {
        return 5 * unit;
    }
}
