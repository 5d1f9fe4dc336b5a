package org.baywright.model.setout;

import org.baywright.model.geometry.Plane;
import org.baywright.model.geometry.Vec3;

/**
 * The top of rafter steel of one roof slope, seen along the building: z = height + rise · (x − x0).
 *
 * @param x0 where the slope's eave height is measured: a column's outside face
 * @param height top of rafter steel there, above finished floor
 * @param rise millimetres up per millimetre to the right; negative on a right-hand slope
 */
public record RoofLine(double x0, double height, double rise) {
    /** Top of rafter steel at a place across the span. */
    public double heightAt(double x) {
        return height + rise * (x - x0);
    }

    /** Cosine of the pitch. */
    public double cosine() {
        return 1 / Math.hypot(1, rise);
    }

    /** The pitch, degrees from level. */
    public double pitchDeg() {
        return Math.toDegrees(Math.atan(Math.abs(rise)));
    }

    /** Up the slope, or to the right when level. */
    public Vec3 upSlope() {
        Vec3 right = new Vec3(1, 0, rise).unit();
        return rise < 0 ? right.negated() : right;
    }

    /** Square to the slope, outward. */
    public Vec3 outward() {
        return new Vec3(-rise, 0, 1).unit();
    }

    /** The plane of the top of rafter steel, facing out. */
    public Plane plane() {
        return Plane.through(new Vec3(x0, 0, height), outward());
    }

    /** What a thickness measured square to the slope takes off a plumb height. */
    public double plumb(double squareThickness) {
        return squareThickness / cosine();
    }
}
