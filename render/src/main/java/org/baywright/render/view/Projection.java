package org.baywright.render.view;

import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;

/**
 * A direction of looking, parallel rays. View coordinates are building millimetres, x right and y up.
 *
 * @param right the building direction that runs right in the view (unit)
 * @param up the building direction that runs up in the view (unit)
 * @param towards from the building to the eye: right × up (unit)
 */
public record Projection(Vec3 right, Vec3 up, Vec3 towards) {
    /** A projection from its right and up directions. */
    public static Projection of(Vec3 right, Vec3 up) {
        return new Projection(right.unit(), up.unit(), right.cross(up).unit());
    }

    /** Frame 1 end, looking along the building; left is on the left. */
    public static Projection front() {
        return of(Vec3.ACROSS, Vec3.UP);
    }

    /** The far end. */
    public static Projection rear() {
        return of(Vec3.ACROSS.negated(), Vec3.UP);
    }

    /** The left side, frame 1 on the right. */
    public static Projection leftSide() {
        return of(Vec3.ALONG.negated(), Vec3.UP);
    }

    /** The right side, frame 1 on the left. */
    public static Projection rightSide() {
        return of(Vec3.ALONG, Vec3.UP);
    }

    /** From above; the building runs up the sheet. */
    public static Projection above() {
        return of(Vec3.ACROSS, Vec3.ALONG);
    }

    /** Where a position appears. */
    public Vec2 flat(Vec3 position) {
        return new Vec2(position.dot(right), position.dot(up));
    }

    /** A position or direction in view axes: x right, y up, z towards the eye. */
    public Vec3 inView(Vec3 world) {
        return new Vec3(world.dot(right), world.dot(up), world.dot(towards));
    }

    /** How near the eye a position is; larger is nearer. */
    public double nearness(Vec3 position) {
        return position.dot(towards);
    }
}
