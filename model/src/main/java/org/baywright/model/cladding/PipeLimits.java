package org.baywright.model.cladding;

import org.baywright.model.definition.RoofWater;

/**
 * What one downpipe of a building can drain, and its gutter bring to it.
 *
 * @param roofM2 catchment
 * @param gutter length of gutter
 * @param sideLs litres a second that the gutter brings from one side
 */
public record PipeLimits(double roofM2, double gutter, double sideLs) {
    /** Most gutter to a downpipe. From memory. */
    private static final double MOST_GUTTER = 12_000;

    /** Roof that a pipe of 100 x 75 takes at 150 mm/h, m². From memory. */
    private static final double PIPE_ROOF_M2 = 45;

    private static final double PIPE_AREA = 7500;
    private static final double PIPE_RAINFALL = 150;

    /** The limits of a building's gutters and pipes at its rainfall. */
    public static PipeLimits of(RoofWater water) {
        double roof = PIPE_ROOF_M2 * water.downpipe().areaMm2() / PIPE_AREA * PIPE_RAINFALL / water.rainfallMmPerH();
        return new PipeLimits(roof, MOST_GUTTER, gutterLs(water.gutter().areaMm2()));
    }

    /**
     * Litres a second that a gutter takes to an outlet at its end.
     *
     * <p>@source EN 12056-3, 0.9 · 2.78e-5 · A^1.25 of a half-round gutter, from memory; a box takes more
     */
    static double gutterLs(double areaMm2) {
        return 0.9 * 2.78e-5 * Math.pow(areaMm2, 1.25);
    }

    /** Gutter that one pipe can drain: at most so much, and its roof no more than the pipe takes. */
    double mostGutter(double catchmentPerMm) {
        return Math.min(gutter, roofM2 / catchmentPerMm);
    }
}
