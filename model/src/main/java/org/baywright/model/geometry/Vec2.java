package org.baywright.model.geometry;

/** A position in a flat figure: a profile's cross-section, a plate's face or a view. Millimetres. */
public record Vec2(double x, double y) {
    /** The sum of this and another. */
    public Vec2 plus(Vec2 other) {
        return new Vec2(x + other.x, y + other.y);
    }

    /** The step from another position to this one. */
    public Vec2 minus(Vec2 other) {
        return new Vec2(x - other.x, y - other.y);
    }

    /** This, times a number. */
    public Vec2 times(double factor) {
        return new Vec2(x * factor, y * factor);
    }

    /** The scalar product. */
    public double dot(Vec2 other) {
        return x * other.x + y * other.y;
    }

    /** The signed area of the parallelogram of the two; positive when the other lies to the left. */
    public double cross(Vec2 other) {
        return x * other.y - y * other.x;
    }

    /** The distance from zero. */
    public double length() {
        return Math.hypot(x, y);
    }

    /** The distance to another position. */
    public double distance(Vec2 other) {
        return minus(other).length();
    }

    /** A quarter turn to the left. */
    public Vec2 left() {
        return new Vec2(-y, x);
    }

    /** This, one millimetre long. */
    public Vec2 unit() {
        return times(1 / length());
    }
}
