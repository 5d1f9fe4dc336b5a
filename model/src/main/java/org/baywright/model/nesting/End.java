package org.baywright.model.nesting;

import java.util.Objects;

/**
 * An end of a piece as it lies in a bar.
 *
 * @param plane the blade swivels in
 * @param depthMm of the section in that plane
 * @param slope how much further along the bar the cut lies per millimetre across it; 0 when square
 */
public record End(SawPlane plane, double depthMm, double slope) {
    /** Two slopes closer than this are one saw setting. */
    private static final double SAME = 1e-6;

    /** Checks the figures. */
    public End {
        Objects.requireNonNull(plane);
        if (!(depthMm > 0) || !Double.isFinite(slope)) {
            throw new IllegalArgumentException("an end needs a depth and a slope: " + depthMm + ", " + slope);
        }
    }

    /** Saw angle from square, degrees. */
    public double angleDeg() {
        return Math.toDegrees(Math.atan(Math.abs(slope)));
    }

    /** From the tip to the middle of the cut, along the bar. */
    public double setbackMm() {
        return Math.abs(slope) * depthMm / 2;
    }

    /** Bar length that the cut takes. */
    public double kerfMm(double squareKerfMm) {
        return squareKerfMm * Math.hypot(1, slope);
    }

    /** Whether one cut makes this end and the one beside it. */
    public boolean shares(End next) {
        boolean square = Math.abs(slope) < SAME && Math.abs(next.slope) < SAME;
        return square || plane == next.plane && Math.abs(slope - next.slope) < SAME;
    }

    /**
     * From the middle of this end to the middle of the next, when their nearest points are one kerf apart: two ends of
     * one plane lose the wedge between them, two of different planes lose both setbacks.
     */
    double gapTo(End next, double squareKerfMm) {
        return wedgeTo(next) + Math.max(kerfMm(squareKerfMm), next.kerfMm(squareKerfMm));
    }

    /** Bar length lost between the middles of two ends, kerf apart. */
    double wedgeTo(End next) {
        if (shares(next)) {
            return 0;
        }
        return plane == next.plane
                ? Math.abs(slope - next.slope) * Math.max(depthMm, next.depthMm) / 2
                : setbackMm() + next.setbackMm();
    }
}
