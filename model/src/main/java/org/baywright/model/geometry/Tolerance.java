package org.baywright.model.geometry;

/** The two tolerances of the whole model, named in one place. Millimetres. */
public final class Tolerance {
    /** Two positions closer than this are one position. */
    public static final double COINCIDENT = 1e-6;

    /** Steps in a millimetre that a fabricated length is given to; the shop cannot measure finer than 0.1. */
    private static final double STEPS_PER_MM = 10;

    private Tolerance() {}

    /** True when the two lengths are the same position. */
    public static boolean same(double a, double b) {
        return Math.abs(a - b) <= COINCIDENT;
    }

    /**
     * A length rounded to 0.1 mm, half up. The hair added first keeps a length that stands exactly on a half from
     * falling either way by the noise of the sum that made it.
     */
    public static double fabricated(double lengthMm) {
        return Math.round(lengthMm * STEPS_PER_MM + COINCIDENT) / STEPS_PER_MM;
    }
}
