package org.baywright.render.dimension;

import org.baywright.model.geometry.Vec2;
import org.locationtech.jts.geom.Envelope;

/**
 * The axes in which a row of dimensions is laid out: s runs along the row the way its text reads, v runs upward as seen
 * by the reader. The view lies on one side of the rail; rows stack on the other.
 *
 * @param origin where s and v are zero, on the edge of the view
 * @param along unit; text reads this way
 * @param outSign +1 when rows stack towards +v, -1 when they stack towards -v
 */
record Rail(Vec2 origin, Vec2 along, int outSign) {
    /** The rail on a side of a view, through a point on the edge of that side. */
    static Rail on(Side side, Vec2 edge) {
        Vec2 along = side.level() ? new Vec2(1, 0) : new Vec2(0, 1);
        return new Rail(edge, along, side.out().dot(along.left()) > 0 ? 1 : -1);
    }

    /** The rail through two points, rows on the side that a direction points to. */
    static Rail through(Vec2 a, Vec2 b, Vec2 out) {
        Vec2 step = b.minus(a).unit();
        // Readable from the bottom or from the right: between straight down (not) and straight up.
        boolean readable = step.x() > 1e-9 || (Math.abs(step.x()) <= 1e-9 && step.y() > 0);
        Vec2 along = readable ? step : step.times(-1);
        return new Rail(a, along, out.dot(along.left()) >= 0 ? 1 : -1);
    }

    /** The place on paper of a position in the rail's axes. */
    Vec2 at(double s, double v) {
        return origin.plus(along.times(s)).plus(along.left().times(v));
    }

    Vec2 at(Vec2 sv) {
        return at(sv.x(), sv.y());
    }

    /** The position of a place on paper in the rail's axes. */
    Vec2 of(Vec2 paper) {
        Vec2 step = paper.minus(origin);
        return new Vec2(step.dot(along), step.dot(along.left()));
    }

    /** The first and last station that a box of paper covers. */
    double[] room(Envelope box) {
        double[] stations = TurnedBox.of(box).corners().stream()
                .mapToDouble(c -> of(c).x())
                .sorted()
                .toArray();
        return new double[] {stations[0], stations[3]};
    }

    double turnDeg() {
        return Math.toDegrees(Math.atan2(along.y(), along.x()));
    }

    /** The turn of text that reads square to the row, still from the bottom or the right. */
    double acrossDeg() {
        double turn = turnDeg() + 90;
        return turn > 90.001 ? turn - 180 : turn;
    }

    /** True when text square to the row reads towards +v. */
    boolean acrossReadsUp() {
        return turnDeg() + 90 <= 90.001;
    }
}
