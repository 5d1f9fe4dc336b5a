package org.baywright.model.cutting;

/**
 * How far the two ends of a slanted piece reach beyond its middle line, along the bar; the piece's length is then that of
 * its middle line. On a bar the pieces make a way from the square start through their ends to the square finish; where
 * one ends otherwise than the next begins, the wedge between them is lost:
 *
 * <pre>
 *   setback   0 ──piece──▶ s ◀──piece── 0        two alike, long points together: nothing is lost
 *             0 ──piece──▶ s ╌╌lost╌╌▶ 0         one alone: its own setback is
 * </pre>
 *
 * @param plane which plane of the section the saw swings in; pieces of two planes never nest
 * @param lesserMm at the end that is less steep
 * @param steeperMm at the other
 */
public record Setbacks(int plane, double lesserMm, double steeperMm) {
    /** Square at both ends. */
    public static final Setbacks NONE = new Setbacks(0, 0, 0);

    /** Checks the ranges. */
    public Setbacks {
        if (!(lesserMm >= 0 && lesserMm <= steeperMm && steeperMm <= Stock.LONGEST_MM)) {
            throw new IllegalArgumentException(
                    "setbacks are 0 or more, the lesser first: " + lesserMm + ", " + steeperMm);
        }
    }

    /** From the setbacks of both ends, in any order. */
    public static Setbacks of(int plane, double oneMm, double otherMm) {
        return new Setbacks(plane, Math.min(oneMm, otherMm), Math.max(oneMm, otherMm));
    }

    /** Whether both ends are square. */
    public boolean isSquare() {
        return steeperMm == 0;
    }
}
