package org.baywright.model.geometry;

/**
 * A position in the building, or a step from one to another. Millimetres.
 *
 * <p>x runs across the span from the outside face of the left columns, y along the building from the outside face of
 * frame 1, z up from the finished floor.
 */
public record Vec3(double x, double y, double z) {
    /** The datum corner. */
    public static final Vec3 ZERO = new Vec3(0, 0, 0);

    /** Across the span, to the right. */
    public static final Vec3 ACROSS = new Vec3(1, 0, 0);

    /** Along the building, away from frame 1. */
    public static final Vec3 ALONG = new Vec3(0, 1, 0);

    /** Up. */
    public static final Vec3 UP = new Vec3(0, 0, 1);

    /** The sum of this and another. */
    public Vec3 plus(Vec3 other) {
        return new Vec3(x + other.x, y + other.y, z + other.z);
    }

    /** The step from another position to this one. */
    public Vec3 minus(Vec3 other) {
        return new Vec3(x - other.x, y - other.y, z - other.z);
    }

    /** This, times a number. */
    public Vec3 times(double factor) {
        return new Vec3(x * factor, y * factor, z * factor);
    }

    /** The same step the other way. */
    public Vec3 negated() {
        return times(-1);
    }

    /** The scalar product. */
    public double dot(Vec3 other) {
        return x * other.x + y * other.y + z * other.z;
    }

    /** The vector product, right-handed. */
    public Vec3 cross(Vec3 other) {
        return new Vec3(y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
    }

    /** The distance from zero. */
    public double length() {
        return Math.sqrt(dot(this));
    }

    /** The distance to another position. */
    public double distance(Vec3 other) {
        return minus(other).length();
    }

    /** This, one millimetre long. */
    public Vec3 unit() {
        return times(1 / length());
    }
}
