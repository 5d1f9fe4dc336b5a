package org.baywright.model.nesting;

import java.util.Objects;
import java.util.Set;
import org.baywright.model.geometry.Plane;
import org.baywright.model.geometry.Profile;
import org.baywright.model.geometry.Solid;
import org.baywright.model.parts.Material;
import org.baywright.model.parts.Part;

/**
 * A piece to be cut, as the saw sees it: its middle line and the slopes of both ends.
 *
 * <pre>
 *        start             end
 *   y     /-----------------\      slope: how much further along per millimetre of y
 *   ^    /------ middle -----\
 *   |   /---------------------\
 * </pre>
 *
 * @param mark what is written on it
 * @param plane the blade swivels in
 * @param depthMm of the section in that plane
 * @param middleMm length along the middle, the tip-to-tip length as rounded for the shop less both setbacks
 * @param startSlope of the first cut
 * @param endSlope of the last cut
 * @param turns that give the same piece
 */
public record Blank(
        String mark,
        SawPlane plane,
        double depthMm,
        double middleMm,
        double startSlope,
        double endSlope,
        Set<Turn> turns) {
    private static final double SLOPE_STEPS = 1e9;

    /** Checks the figures and copies the turns. */
    public Blank {
        Objects.requireNonNull(mark);
        turns = Set.copyOf(turns);
        if (!turns.contains(Turn.AS_DRAWN) || !(middleMm > 0)) {
            throw new IllegalArgumentException("a piece has a length and lies as it is drawn: " + mark);
        }
    }

    /** A piece with square ends. */
    public static Blank square(String mark, double lengthMm, double depthMm) {
        return new Blank(mark, SawPlane.DEPTH, depthMm, lengthMm, 0, 0, Set.of(Turn.AS_DRAWN));
    }

    /**
     * A member of a shed. One cut in both planes at once, or in one plane at one end and in the other at the other, is
     * taken as its tip-to-tip length with square ends, so that nothing is nested into it.
     */
    static Blank of(Part part, Material.Bar bar) {
        Solid solid = part.solid();
        Profile profile = solid.profile();
        double startWidth = slopeAcross(solid.start());
        double endWidth = slopeAcross(solid.end());
        boolean inDepth = rounded(solid.startSlope()) != 0 || rounded(solid.endSlope()) != 0;
        boolean inWidth = startWidth != 0 || endWidth != 0;
        if (inDepth == inWidth) {
            return square(part.mark(), part.stockLength(), profile.depth());
        }
        double start = inDepth ? rounded(solid.startSlope()) : startWidth;
        double end = inDepth ? rounded(solid.endSlope()) : endWidth;
        double depth = inDepth ? profile.depth() : profile.width();
        double setbacks = (Math.abs(start) + Math.abs(end)) * depth / 2;
        return new Blank(
                part.mark(),
                plane(profile, inDepth != bar.turned()),
                depth,
                part.stockLength() - setbacks,
                start,
                end,
                Turn.of(profile, inDepth ? SawPlane.DEPTH : SawPlane.WIDTH));
    }

    private static SawPlane plane(Profile profile, boolean ofFirstDimension) {
        return ofFirstDimension || Turn.isQuarterAlike(profile) ? SawPlane.DEPTH : SawPlane.WIDTH;
    }

    private static double slopeAcross(Plane cut) {
        return rounded(-cut.normal().z() / cut.normal().x());
    }

    private static double rounded(double slope) {
        return Math.round(slope * SLOPE_STEPS) / SLOPE_STEPS;
    }

    End start() {
        return new End(plane, depthMm, startSlope);
    }

    End end() {
        return new End(plane, depthMm, endSlope);
    }

    /** Tip to tip: the bar length it needs alone. */
    public double tipMm() {
        return middleMm + start().setbackMm() + end().setbackMm();
    }

    /** Whether both ends are square. */
    public boolean isSquare() {
        return startSlope == 0 && endSlope == 0;
    }
}
