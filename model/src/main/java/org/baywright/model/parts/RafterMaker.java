package org.baywright.model.parts;

import java.util.List;
import org.baywright.model.catalogue.HollowSection;
import org.baywright.model.definition.Member;
import org.baywright.model.definition.Side;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Plane;
import org.baywright.model.geometry.Solid;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.setout.RoofLine;

/**
 * A rafter under its roof slope, cut plumb at both ends, and the upright plates at its ends.
 *
 * @param kind main or lean-to rafter
 * @param member its section
 * @param roof its top
 * @param middle where it lies along the building
 * @param frame frame number
 * @param side side of the building
 */
record RafterMaker(PartKind kind, Member member, RoofLine roof, double middle, int frame, Side side) {
    /** Bolts at the ridge: M16 in 18 holes, set beside a hollow section or between a beam's flanges. */
    private static final double APEX_HOLE = 18;

    private static final double APEX_EDGE = 35;

    /** The rafter between two plumb planes across the span. */
    Piece between(double xa, double xb) {
        Vec3 along = roof.upSlope();
        double low = along.x() > 0 ? Math.min(xa, xb) : Math.max(xa, xb);
        double high = low == xa ? xb : xa;
        Vec3 top = new Vec3(low, middle, roof.heightAt(low));
        Placement at = Placement.of(top.minus(roof.outward().times(member.depth() / 2)), along, roof.outward());
        Vec3 level = new Vec3(Math.signum(along.x()), 0, 0);
        Plane start = at.toLocal(Plane.through(new Vec3(low, 0, 0), level.negated()));
        Plane end = at.toLocal(Plane.through(new Vec3(high, 0, 0), level));
        Solid solid = new Solid(member.profile(), start, end);
        return new Piece(kind, new Material.Bar(member.section()), solid, List.of(), new Place(at, frame, side));
    }

    /** Height of a plate over the plumb end of the rafter, with room for a weld below; its top is flush. */
    private double plateHeight() {
        return PlateRoom.upTo5(roof.plumb(member.depth()) + PlateRoom.WELD);
    }

    /** A plain plate on the rafter's end, from the face it meets to the rafter. */
    Piece endPlate(PartKind plate, double face, double rafterEnd) {
        double width = PlateRoom.upTo5(member.width() + 2 * PlateRoom.WELD);
        return upright(plate, face, rafterEnd, width, List.of());
    }

    /** A bolted plate at the ridge, from the ridge line to the rafter. */
    Piece apexPlate(double ridge, double rafterEnd) {
        double gauge = apexGauge();
        double width = PlateRoom.upTo5(Math.max(member.width() + 2 * PlateRoom.WELD, gauge + 2 * APEX_EDGE));
        return upright(PartKind.APEX_PLATE, ridge, rafterEnd, width, apexHoles(gauge));
    }

    /** Between bolt lines: beside a hollow section clear of weld and washer, or 90 (70 on narrow flanges) in a beam. */
    private double apexGauge() {
        if (member.section() instanceof HollowSection) {
            return PlateRoom.upTo5(member.width() + 60);
        }
        return member.width() >= 120 ? 90 : member.width() / 2;
    }

    private List<Hole> apexHoles(double gauge) {
        double rows = plateHeight() - 2 * (APEX_EDGE + 20);
        double w = gauge / 2;
        List<Vec2> at = rows < 50
                ? List.of(new Vec2(0, -w), new Vec2(0, w))
                : List.of(
                        new Vec2(-rows / 2, -w), new Vec2(rows / 2, -w), new Vec2(rows / 2, w), new Vec2(-rows / 2, w));
        return at.stream().map(p -> new Hole(p, APEX_HOLE)).toList();
    }

    private Piece upright(PartKind plate, double face, double rafterEnd, double width, List<Hole> holes) {
        double height = plateHeight();
        Vec3 origin = new Vec3(face, middle, roof.heightAt(rafterEnd) - height / 2);
        Placement at = Placement.of(origin, new Vec3(Math.signum(rafterEnd - face), 0, 0), Vec3.UP);
        return PlateMaker.plate(plate, height, width, Math.abs(rafterEnd - face), holes, new Place(at, frame, side));
    }
}
