package org.baywright.model.parts;

/** Room that plates need around what is welded to them. Common practice, no source. */
public final class PlateRoom {
    /** Leg of the fillet weld all round, mm, or as the engineer says. */
    public static final double WELD_LEG = 6;

    /** From the face of a section to the edge of the plate it stands on, mm. */
    public static final double WELD = WELD_LEG + 6;

    private PlateRoom() {}

    /** To the next whole millimetre, as plates are cut; what exceeds one by no more than a rounding is that. */
    static double upTo1(double mm) {
        return Math.ceil(mm - 1e-6);
    }

    /** A plate dimension rounded up to 5 mm, as plate is cut. */
    static double upTo5(double mm) {
        return Math.ceil(mm / 5 - 1e-9) * 5;
    }
}
