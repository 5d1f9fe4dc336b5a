package org.baywright.model.geometry;

/**
 * Where a piece stands: its own axes laid in the building. Always right-handed, so a placement can turn a piece but
 * never mirror it; a mirrored piece is another piece.
 *
 * @param origin where the piece's own zero lies
 * @param along the piece's length (unit)
 * @param depth the piece's depth, the first dimension of its section (unit)
 * @param width the piece's width, along × depth (unit)
 */
public record Placement(Vec3 origin, Vec3 along, Vec3 depth, Vec3 width) {
    /** Checks that the three axes are a right-handed unit frame. */
    public Placement {
        boolean unit = Math.abs(along.length() - 1) < 1e-9 && Math.abs(depth.length() - 1) < 1e-9;
        if (!unit || !(along.cross(depth).distance(width) < 1e-9) || !(Math.abs(along.dot(depth)) < 1e-9)) {
            throw new IllegalArgumentException("axes of a placement must be right-handed and square to each other");
        }
    }

    /** A placement from its origin, length and depth directions; the width follows. */
    public static Placement of(Vec3 origin, Vec3 along, Vec3 depth) {
        Vec3 a = along.unit();
        Vec3 d = depth.unit();
        return new Placement(origin, a, d, a.cross(d));
    }

    /** A position of the piece (along, depth, width), in the building. */
    public Vec3 toWorld(double s, double d, double w) {
        // Without vectors in between: every corner of every view and check is placed here.
        return new Vec3(
                origin.x() + along.x() * s + depth.x() * d + width.x() * w,
                origin.y() + along.y() * s + depth.y() * d + width.y() * w,
                origin.z() + along.z() * s + depth.z() * d + width.z() * w);
    }

    /** A position of the piece, in the building. */
    public Vec3 toWorld(Vec3 local) {
        return toWorld(local.x(), local.y(), local.z());
    }

    /** A direction of the piece, in the building. */
    public Vec3 directionToWorld(Vec3 local) {
        return along.times(local.x()).plus(depth.times(local.y())).plus(width.times(local.z()));
    }

    /** A plane of the piece, in the building. */
    public Plane toWorld(Plane local) {
        return Plane.through(toWorld(local.normal().times(local.offset())), directionToWorld(local.normal()));
    }

    /** A position of the building, in the piece's own axes. */
    public Vec3 toLocal(Vec3 world) {
        Vec3 step = world.minus(origin);
        return new Vec3(step.dot(along), step.dot(depth), step.dot(width));
    }

    /** A plane of the building, in the piece's own axes. */
    public Plane toLocal(Plane world) {
        Vec3 n = world.normal();
        Vec3 local = new Vec3(n.dot(along), n.dot(depth), n.dot(width));
        return Plane.through(local.times(-world.distance(origin)), local);
    }

    /** The same place, with the piece's zero moved and its axes turned as the inner placement says. */
    public Placement then(Placement inner) {
        return new Placement(
                toWorld(inner.origin),
                directionToWorld(inner.along),
                directionToWorld(inner.depth),
                directionToWorld(inner.width));
    }
}
