package org.baywright.model.parts;

import java.util.List;
import org.baywright.model.definition.Member;
import org.baywright.model.definition.Side;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Plane;
import org.baywright.model.geometry.Solid;
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
        return new Piece(
                kind,
                new Material.Bar(member.section(), member.turned()),
                solid,
                List.of(),
                new Place(at, frame, side));
    }

    /** A plain plate on the rafter's end, from the face it meets to the rafter. */
    Piece endPlate(PartKind plate, double face, double rafterEnd) {
        double width = PlateRoom.upTo5(member.width() + 2 * PlateRoom.WELD);
        double height = PlateRoom.upTo5(roof.plumb(member.depth()) + PlateRoom.WELD);
        return upright(plate, face, rafterEnd, height, width, List.of());
    }

    /** A bolted plate at the ridge, from the ridge line to the rafter. */
    Piece apexPlate(ApexDesign design, double ridge, double rafterEnd) {
        return upright(PartKind.APEX_PLATE, ridge, rafterEnd, design.height(), design.width(), design.holes());
    }

    /** Its top lies at the lower of its two faces, so that nothing stands above the roof plane. */
    private Piece upright(
            PartKind plate, double face, double rafterEnd, double height, double width, List<Hole> holes) {
        double top = Math.min(roof.heightAt(face), roof.heightAt(rafterEnd));
        Vec3 origin = new Vec3(face, middle, top - height / 2);
        Placement at = Placement.of(origin, new Vec3(Math.signum(rafterEnd - face), 0, 0), Vec3.UP);
        double thickness = Math.abs(rafterEnd - face);
        return PlateMaker.plate(plate, height, width, thickness, holes, new Place(at, frame, side));
    }
}
