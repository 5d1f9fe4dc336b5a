package org.baywright.model.geometry;

/**
 * A plane that keeps what lies behind it: the positions p with normal·p ≤ offset.
 *
 * @param normal one millimetre long, pointing away from what is kept
 * @param offset distance of the plane from the datum corner, along the normal
 */
public record Plane(Vec3 normal, double offset) {
    /** Checks that the normal has length one. */
    public Plane {
        if (!(Math.abs(normal.length() - 1) < 1e-9) || !Double.isFinite(offset)) {
            throw new IllegalArgumentException("a plane needs a unit normal and a finite offset: " + normal);
        }
    }

    /** The plane through a position, square to a direction of any length. */
    public static Plane through(Vec3 position, Vec3 direction) {
        Vec3 normal = direction.unit();
        return new Plane(normal, normal.dot(position));
    }

    /** How far a position lies in front of the plane; negative behind it. */
    public double distance(Vec3 position) {
        return normal.dot(position) - offset;
    }

    /** The parallel plane a distance further forward. */
    public Plane shifted(double distance) {
        return new Plane(normal, offset + distance);
    }

    /** The same plane keeping the other side. */
    public Plane flipped() {
        return new Plane(normal.negated(), -offset);
    }

    /** The step along a direction, from a position, at which the plane is met. */
    public double reach(Vec3 from, Vec3 direction) {
        return -distance(from) / normal.dot(direction);
    }
}
