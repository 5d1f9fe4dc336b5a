package org.baywright.model.parts;

/** The shape that the two end cuts give a piece, seen square to the plane of the cuts. */
public enum CutForm {
    /** Both ends square. */
    SQUARE,
    /** One end square, one end at an angle. */
    MITRE,
    /** Both ends at an angle, leaning the same way: the edges are equal at equal angles. */
    PARALLEL,
    /** Both ends at an angle, leaning towards each other. */
    OPPOSED;

    /** The form of a piece from how much further along each cut lies per millimetre of depth. */
    static CutForm of(double startSlope, double endSlope) {
        boolean startSquare = Math.abs(startSlope) < 1e-9;
        boolean endSquare = Math.abs(endSlope) < 1e-9;
        if (startSquare && endSquare) {
            return SQUARE;
        }
        if (startSquare || endSquare) {
            return MITRE;
        }
        return startSlope * endSlope > 0 ? PARALLEL : OPPOSED;
    }
}
