package org.baywright.model.cutting;

/**
 * The slope of both ends of a piece whose end cuts are parallel. Pieces of one mitre laid one after the other share a
 * cut, so along the bar each takes its edge length and one slanted kerf, and the run as a whole the overlap once:
 *
 * <pre>
 *    ____________ ____________
 *   /   edge    //   edge    /     run = Σ(edge + kerf / cos angle) + depth · tan angle
 *  /___________//___________/
 * </pre>
 *
 * @param angleDeg saw angle from square, 0 up to but not 90; pieces that may be turned over share one sign
 * @param depthMm depth of the section in the plane of the cut
 * @source geometry of a parallelogram; nesting of parallel cuts is common practice
 */
public record Mitre(double angleDeg, double depthMm) {
    /** Square at both ends. */
    public static final Mitre SQUARE = new Mitre(0, 0);

    /** Checks the ranges. */
    public Mitre {
        if (!(angleDeg >= 0 && angleDeg < 90)) {
            throw new IllegalArgumentException("a saw angle must be from 0 to under 90 degrees: " + angleDeg);
        }
        if (!(depthMm >= 0 && depthMm <= Stock.LONGEST_MM)) {
            throw new IllegalArgumentException("a section's depth must be 0 or more: " + depthMm);
        }
    }

    /** The bar length one run of such pieces takes beyond its edges and kerfs. */
    public double overlapMm() {
        return depthMm * Math.tan(Math.toRadians(angleDeg));
    }

    /** The bar length a slanted cut takes. */
    public double kerfMm(double squareKerfMm) {
        return squareKerfMm / Math.cos(Math.toRadians(angleDeg));
    }
}
