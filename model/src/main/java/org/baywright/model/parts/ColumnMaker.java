package org.baywright.model.parts;

import java.util.List;
import org.baywright.model.definition.Member;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Plane;
import org.baywright.model.geometry.Solid;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.setout.ColumnLine;
import org.baywright.model.setout.RoofLine;

/**
 * A column on its base plate with its cap: what stands at one line of one frame.
 *
 * <pre>
 *   outside |    ___/  cap plate, on the slope
 *    face   |___/ |
 *    = line |     |  ----> inward
 *           |     |
 * </pre>
 *
 * @param kind main or lean-to column
 * @param member its section
 * @param line the string line at its outside face
 * @param frame frame number
 * @param middle where its middle stands along the building
 * @param base its base plate
 * @param grout under the base plate
 */
record ColumnMaker(
        PartKind kind, Member member, ColumnLine line, int frame, double middle, BaseDesign base, double grout) {
    private Vec3 inward() {
        return new Vec3(line.inward(), 0, 0);
    }

    private Vec3 foot() {
        return new Vec3(line.x() + line.inward() * member.depth() / 2, middle, grout);
    }

    private Place place(Placement at) {
        return new Place(at, frame, line.side());
    }

    /** The column, cut along the slope so far below the top of rafter steel, square to the slope. */
    Piece column(double below) {
        Placement at = Placement.of(foot().plus(new Vec3(0, 0, base.thickness())), Vec3.UP, inward());
        Plane top = at.toLocal(line.roof().plane().shifted(-below));
        Solid solid = new Solid(member.profile(), new Plane(new Vec3(-1, 0, 0), 0), top);
        return new Piece(kind, new Material.Bar(member.section(), member.turned()), solid, List.of(), place(at));
    }

    /** The base plate. */
    Piece basePlate() {
        Placement at = Placement.of(foot(), Vec3.UP, inward());
        return PlateMaker.plate(
                PartKind.BASE_PLATE, base.width(), base.depth(), base.thickness(), base.holes(), place(at));
    }

    /** Where the anchors go into the slab. */
    List<Vec3> anchorHoles() {
        Placement at = Placement.of(foot(), Vec3.UP, inward());
        return base.holes().stream()
                .map(h -> at.toWorld(-grout, h.at().x(), h.at().y()))
                .toList();
    }

    /** A cap that a rafter sits on: room for welds all round, unless it must end flush outside. */
    Piece seatingCap(double thickness, double rafterDepth, double rafterWidth, double rafterMiddle, boolean flush) {
        double cut = line.roof().plumb(member.depth());
        double room = PlateRoom.WELD;
        double from = flush ? plumbGuard(thickness) : -room;
        double length = PlateRoom.upTo5(cut + room - from);
        double start = flush ? from : (cut - length) / 2;
        double low = Math.min(middle - member.width() / 2, rafterMiddle - rafterWidth / 2);
        double high = Math.max(middle + member.width() / 2, rafterMiddle + rafterWidth / 2);
        double width = PlateRoom.upTo5(high - low + 2 * room);
        return cap(thickness, rafterDepth, start, length, width, (low + high) / 2);
    }

    /** A cap that closes a butted column, in whole millimetres: nothing of it stands past the column's faces. */
    Piece closingCap(double thickness) {
        double rise = line.riseInward();
        double from = plumbGuard(thickness);
        double to = line.roof().plumb(member.depth()) + Math.min(0, thickness * rise);
        double length = Math.floor(to - from);
        return cap(thickness, 0, (from + to - length) / 2, length, member.width(), middle);
    }

    /** How far up the slope a cap starts so that its top corner, square to the slope, stays inside the face. */
    private double plumbGuard(double thickness) {
        return Math.max(0, thickness * line.riseInward());
    }

    private Piece cap(double thickness, double below, double from, double length, double width, double y) {
        RoofLine roof = line.roof();
        Vec3 upInward = new Vec3(line.inward(), 0, line.inward() * roof.rise()).unit();
        double outsideTop = line.heightBelowRoof(below + thickness);
        Vec3 origin = new Vec3(line.x(), y, outsideTop).plus(upInward.times(from + length / 2));
        Placement at = Placement.of(origin, roof.outward(), upInward);
        return PlateMaker.plate(PartKind.CAP_PLATE, length, width, thickness, List.of(), place(at));
    }
}
