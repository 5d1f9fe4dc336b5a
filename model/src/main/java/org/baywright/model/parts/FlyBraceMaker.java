package org.baywright.model.parts;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.baywright.model.catalogue.Section;
import org.baywright.model.definition.Bracing;
import org.baywright.model.definition.Member;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Solid;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.setout.RoofRows;
import org.baywright.model.setout.RowStand;

/**
 * The fly braces of one slope: from a purlin down to the inner flange of the rafter, at 45° where the bay is long
 * enough. They are at the first row inside the knee and the last below the top, and at every so many rows between.
 *
 * <pre>
 *     purlin ===================
 *          |rafter|     /
 *          |      |   /
 *          |______| /
 * </pre>
 *
 * @source each side of knee and apex, then every second or third purlin: common practice
 * @param bays the slope along the building
 */
record FlyBraceMaker(RowBays bays) {
    /** From the flange's edge to the brace's end, for the lug that it is bolted to. Common practice, no source. */
    private static final double LUG = 35;

    /** The most of a bay that a fly brace reaches along it. Common practice, no source. */
    private static final double REACH = 0.3;

    private RoofRows rows() {
        return bays.rows();
    }

    private Bracing bracing() {
        return bays.definition().envelope().bracing();
    }

    Stream<Piece> pieces() {
        if (bracing().flyBraceEvery() == 0) {
            return Stream.of();
        }
        return IntStream.rangeClosed(bays.first(), bays.last())
                .boxed()
                .flatMap(frame -> braced(frame).mapToObj(row -> brace(row, frame)));
    }

    /** Rows with a fly brace at a frame, counted from the eave. */
    private IntStream braced(int frame) {
        double inside = rows().slope().line().column(bays.definition(), frame).depth()
                / rows().slope().roof().cosine();
        int last = rows().at().size() - 1;
        int first = (int) rows().at().stream().filter(at -> at < inside).count();
        int every = bracing().flyBraceEvery();
        return IntStream.rangeClosed(first, last).filter(row -> (row - first) % every == 0 || row == last);
    }

    /** Into the bay before the frame, unless there is none, or it is taken by the roof's braces. */
    private int direction(int frame) {
        boolean before = frame > bays.first() && !bracing().bays().contains(frame - 1);
        return before || frame == bays.last() ? -1 : 1;
    }

    private Piece brace(int row, int frame) {
        Member rafter = rows().slope().line().rafter(bays.definition(), frame);
        RowStand stand = rows().standOf(row);
        Section angle = bracing().flyBraceSection();
        int into = direction(frame);
        double drop = stand.member().depth() / 2 + rafter.depth();
        double bay =
                Math.abs(bays.setOut().frameLine(frame + into) - bays.setOut().frameLine(frame));
        double low = rafter.width() / 2 + LUG;
        double out = Math.min(drop, REACH * bay);
        double y = bays.middle(frame) + into * low;
        // The angle's leg lies against the face of the web that the cleats bear on.
        double heel = -angle.profile().outline().stream()
                .mapToDouble(p -> p.y())
                .min()
                .orElseThrow();
        int bay1 = into > 0 ? frame : frame - 1;
        double up = rows().at().get(row) + (stand.isCleatAbove() ? heel - bays.aside(bay1) : -heel);
        Vec3 foot = rows().place(up, y, -rafter.depth());
        Vec3 head = rows().place(up, y + into * out, stand.member().depth() / 2);
        Vec3 along = head.minus(foot).unit();
        Vec3 width = stand.isCleatAbove() ? rows().up() : rows().up().negated();
        Placement at = Placement.of(foot, along, width.cross(along));
        return new Piece(
                PartKind.FLY_BRACE,
                new Material.Bar(angle, false),
                Solid.square(angle.profile(), 0, head.distance(foot)),
                List.of(),
                new Place(at, frame, rows().slope().side()));
    }
}
