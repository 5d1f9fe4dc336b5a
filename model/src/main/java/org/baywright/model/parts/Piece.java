package org.baywright.model.parts;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Plane;
import org.baywright.model.geometry.Solid;
import org.baywright.model.geometry.Tolerance;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;

/**
 * One piece at one place, before equal pieces are gathered under a mark.
 *
 * <p>A column of the right side is the column of the left side turned about, so each member is first laid the one way
 * that all its turns agree on. Only turns are used, never mirrors: what is left different is a different hand.
 */
record Piece(PartKind kind, Material material, Solid solid, List<Hole> holes, List<Double> punched, Place place) {
    /** A piece that is not punched along its length. */
    Piece(PartKind kind, Material material, Solid solid, List<Hole> holes, Place place) {
        this(kind, material, solid, holes, List.of(), place);
    }

    private static final Placement END_FOR_END = Placement.of(Vec3.ZERO, new Vec3(-1, 0, 0), new Vec3(0, -1, 0));
    private static final Placement HALF_TURN = Placement.of(Vec3.ZERO, new Vec3(1, 0, 0), new Vec3(0, -1, 0));

    /** Rows, braces and beams for lifting stay as they are made; the others are laid the agreed way: squarer cut first, then leaning forward along the depth. */
    Piece settled() {
        boolean turnable = kind.group() == PartKind.Group.FRAME || kind.group() == PartKind.Group.WALL;
        if (!kind.isMember() || !turnable) {
            return this;
        }
        return turns().min(Comparator.comparingLong((Piece p) -> steps(Math.abs(p.solid.startSlope())))
                        .thenComparingLong(p -> -steps(p.solid.startSlope()))
                        .thenComparingLong(p -> -steps(p.solid.endSlope())))
                .orElseThrow()
                .fromZero();
    }

    /** The piece as it is, and turned wherever its section fills the same place again. */
    private Stream<Piece> turns() {
        Piece halfTurn = turned(HALF_TURN);
        List<Piece> turns = new ArrayList<>(List.of(this));
        if (isAlike(-1, -1)) {
            turns.add(halfTurn);
        }
        if (isAlike(-1, 1)) {
            turns.add(turned(END_FOR_END));
        }
        if (isAlike(1, -1)) {
            turns.add(halfTurn.turned(END_FOR_END));
        }
        return turns.stream();
    }

    /** Whether the section lies on itself when its depth and width change sign. */
    private boolean isAlike(int depth, int width) {
        List<Vec2> outline = solid.profile().outline();
        return outline.stream()
                .map(p -> new Vec2(depth * p.x(), width * p.y()))
                .allMatch(p -> outline.stream().anyMatch(o -> o.distance(p) < Tolerance.COINCIDENT));
    }

    private static long steps(double slope) {
        return Math.round(slope * 1e9);
    }

    /** The same steel in the same place, described in axes turned by a half turn (its own inverse). */
    private Piece turned(Placement turn) {
        Plane start = turn.toWorld(solid.start());
        Plane end = turn.toWorld(solid.end());
        Solid other = start.normal().x() < 0
                ? new Solid(solid.profile(), start, end)
                : new Solid(solid.profile(), end, start);
        return new Piece(kind, material, other, holes, moved(turn));
    }

    private Place moved(Placement inner) {
        return new Place(place.placement().then(inner), place.frame(), place.side());
    }

    /** The same steel with zero at the middle of its first cut. */
    private Piece fromZero() {
        double step = solid.startStation(new Vec2(0, 0));
        Solid shifted = new Solid(solid.profile(), back(solid.start(), step), back(solid.end(), step));
        Placement inner = Placement.of(new Vec3(step, 0, 0), new Vec3(1, 0, 0), new Vec3(0, 1, 0));
        return new Piece(kind, material, shifted, holes, moved(inner));
    }

    private static Plane back(Plane cut, double step) {
        return cut.shifted(-cut.normal().x() * step);
    }

    /** With more pairs of holes along its length. */
    Piece punchedToo(List<Double> more) {
        List<Double> every =
                Stream.concat(punched.stream(), more.stream()).sorted().toList();
        return new Piece(kind, material, solid, holes, every, place);
    }

    /** Where its steel stands. */
    Standing standing() {
        return Standing.of(alone(), place);
    }

    private static String likeness(Hole hole) {
        return tenths(hole.at()) + " " + Math.round(hole.diameter() * 10) + " " + tenths(hole.run());
    }

    private static String tenths(Vec2 v) {
        return Math.round(v.x() * 10) + "," + Math.round(v.y() * 10);
    }

    private Part alone() {
        return new Part("?", kind, material, solid, holes, punched, List.of(place));
    }

    /** What two pieces must share to carry one mark: everything, to the tenth of a millimetre. */
    String likeness() {
        Part alone = alone();
        return String.join(
                "|",
                kind.name(),
                material.designation(),
                material.grade(),
                String.valueOf(alone.stockLength()),
                String.valueOf(alone.longEdge()),
                String.valueOf(alone.shortEdge()),
                String.valueOf(Math.round(solid.startSlope() * 1e6)),
                String.valueOf(Math.round(solid.endSlope() * 1e6)),
                String.valueOf(Math.round(solid.profile().depth() * 10)),
                holes.stream().map(Piece::likeness).sorted().toList().toString(),
                punched.stream().map(p -> Math.round(p * 10)).toList().toString());
    }
}
