package org.baywright.model.geometry;

import java.util.List;

/**
 * A profile swept along an axis and ended by two cutting planes, in the piece's own axes: x along, y depth, z width,
 * the axis through the profile's centroid.
 *
 * <pre>
 *      start                       end
 *        /--------------------------\      ^ depth
 *       /------- axis → along -------\     |
 *      /------------------------------\
 * </pre>
 *
 * @param profile the cross-section
 * @param start the plane of the first cut; its normal points back, away from the piece
 * @param end the plane of the last cut; its normal points on, away from the piece
 */
public record Solid(Profile profile, Plane start, Plane end) {
    /** Checks that the planes face away from each other and leave a piece between them. */
    public Solid {
        if (!(start.normal().x() < -1e-6) || !(end.normal().x() > 1e-6)) {
            throw new IllegalArgumentException("the cuts of a solid must face away from it");
        }
        Plane s = start;
        Plane e = end;
        if (profile.outline().stream().anyMatch(p -> station(e, p) - station(s, p) < -Tolerance.COINCIDENT)) {
            throw new IllegalArgumentException("the cuts of a solid cross each other");
        }
    }

    /** A block: a profile with two square cuts, from one station to another. */
    public static Solid square(Profile profile, double from, double to) {
        return new Solid(profile, new Plane(new Vec3(-1, 0, 0), -from), new Plane(new Vec3(1, 0, 0), to));
    }

    /** Where along the piece a cut meets the fibre at a point of the profile. */
    private static double station(Plane cut, Vec2 at) {
        return cut.reach(new Vec3(0, at.x(), at.y()), Vec3.ACROSS);
    }

    /** Where along the piece the first cut meets the fibre at a point of the profile. */
    public double startStation(Vec2 at) {
        return station(start, at);
    }

    /** Where along the piece the last cut meets the fibre at a point of the profile. */
    public double endStation(Vec2 at) {
        return station(end, at);
    }

    /** The length of the fibre at a point of the profile. */
    public double lengthAt(Vec2 at) {
        return endStation(at) - startStation(at);
    }

    /** The length along the axis. */
    public double axisLength() {
        return lengthAt(new Vec2(0, 0));
    }

    /** Tip to tip, square to the axis: the length of bar the piece needs. */
    public double stockLength() {
        return profile.outline().stream().mapToDouble(this::endStation).max().orElseThrow()
                - profile.outline().stream()
                        .mapToDouble(this::startStation)
                        .min()
                        .orElseThrow();
    }

    /** The longest fibre: the long edge of the piece. */
    public double longEdge() {
        return profile.outline().stream().mapToDouble(this::lengthAt).max().orElseThrow();
    }

    /** The shortest fibre: the short edge of the piece. */
    public double shortEdge() {
        return profile.outline().stream().mapToDouble(this::lengthAt).min().orElseThrow();
    }

    /** Round the first cut along the outside, mm. */
    public double startRound() {
        return round(startRing(profile.outline()));
    }

    /** Round the last cut along the outside, mm. */
    public double endRound() {
        return round(endRing(profile.outline()));
    }

    private static double round(List<Vec3> ring) {
        double sum = 0;
        for (int i = 0; i < ring.size(); i++) {
            sum += ring.get(i).distance(ring.get((i + 1) % ring.size()));
        }
        return sum;
    }

    /** Exact: the area times the length along the centroid. mm³. */
    public double volume() {
        return profile.area() * axisLength();
    }

    /** The slope of a cut along the depth: how much further along it lies per millimetre of depth. */
    private static double slopeDepth(Plane cut) {
        return -cut.normal().y() / cut.normal().x();
    }

    private static double slopeWidth(Plane cut) {
        return -cut.normal().z() / cut.normal().x();
    }

    /** How much further along the first cut lies per millimetre of depth. */
    public double startSlope() {
        return slopeDepth(start);
    }

    /** How much further along the last cut lies per millimetre of depth. */
    public double endSlope() {
        return slopeDepth(end);
    }

    /** The saw angle of the first cut: its swivel from square, degrees. */
    public double startAngleDeg() {
        return Math.toDegrees(Math.acos(Math.min(1, -start.normal().x())));
    }

    /** The saw angle of the last cut: its swivel from square, degrees. */
    public double endAngleDeg() {
        return Math.toDegrees(Math.acos(Math.min(1, end.normal().x())));
    }

    /**
     * The centre of gravity, exact. With a cut at station s(d, w) = a + b·d + c·w the moment of a prism is
     * ∫ s²/2 dA = (A·a² + b²·I_d + c²·I_w)/2, and the sideways moment is b·I_d and c·I_w.
     */
    public Vec3 centreOfGravity() {
        double along = (axialMoment(end) - axialMoment(start)) / volume();
        double depth = (slopeDepth(end) - slopeDepth(start)) * profile.inertiaDepth() / volume();
        double width = (slopeWidth(end) - slopeWidth(start)) * profile.inertiaWidth() / volume();
        return new Vec3(along, depth, width);
    }

    private double axialMoment(Plane cut) {
        double a = station(cut, new Vec2(0, 0));
        double b = slopeDepth(cut);
        double c = slopeWidth(cut);
        return (profile.area() * a * a + b * b * profile.inertiaDepth() + c * c * profile.inertiaWidth()) / 2;
    }

    /** The ring of corners where the first cut meets the outline or the bore. */
    public List<Vec3> startRing(List<Vec2> ring) {
        return ring.stream().map(p -> new Vec3(startStation(p), p.x(), p.y())).toList();
    }

    /** The ring of corners where the last cut meets the outline or the bore. */
    public List<Vec3> endRing(List<Vec2> ring) {
        return ring.stream().map(p -> new Vec3(endStation(p), p.x(), p.y())).toList();
    }
}
