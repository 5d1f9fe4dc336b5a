package org.baywright.model.parts;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.baywright.model.catalogue.BeamSection;
import org.baywright.model.catalogue.Section;
import org.baywright.model.definition.Bracing;
import org.baywright.model.definition.Member;
import org.baywright.model.definition.Plates;
import org.baywright.model.definition.Side;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Solid;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.setout.ColumnLine;
import org.baywright.model.setout.RoofLine;
import org.baywright.model.setout.RoofRows;
import org.baywright.model.setout.RoofSlope;
import org.baywright.model.setout.RowStand;

/**
 * The fly braces of one slope: from a purlin down to the inner flange of the rafter, at 45° where the bay is long
 * enough. They are at the first row inside the knee and the last below the top, and at every so many rows between. The
 * foot is bolted to a lug on the rafter: on the inner flange of a beam, up to its web, or on the side of another section.
 *
 * <pre>
 *     purlin ===================
 *          |rafter|     /
 *          |      |   /
 *          |______|[/] lug
 * </pre>
 *
 * @source each side of knee and apex, then every second or third purlin: common practice
 * @param bays the slope along the building
 */
record FlyBraceMaker(RowBays bays) {
    /** From the flange's edge to the brace's end, and from the rafter's underside up to it. Common practice, no source. */
    private static final double LUG = 35;

    private static final double FOOT = 30;

    /** From the foot to the top of a rafter with room for the lug, which stays below the purlins; no foot is lower. */
    private static final double OVER_FOOT = 50;

    private static final double LEAST_FOOT = 5;

    /** Thickness of a lug, its hole for M12, and from that to its edges and the brace's end. Common practice, no source. */
    private static final double LUG_THICKNESS = 8;

    private static final double HOLE = 14;
    private static final double EDGE = 25;

    /** The most of a bay that a fly brace reaches along it. Common practice, no source. */
    private static final double REACH = 0.3;

    /** Half of the room that a fly brace takes beside its line. */
    private static final double BODY = 60;

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
                .flatMap(frame -> braced(frame).boxed().flatMap(row -> {
                    Piece brace = brace(row, frame);
                    return Stream.of(brace, lug(brace, row, frame));
                }));
    }

    /** Rows with a fly brace at a frame, counted from the eave: those that a roof brace leaves free. */
    private IntStream braced(int frame) {
        double low = clearOfColumn(rows().slope().line(), frame);
        double high = rows().slope().run() / rows().slope().roof().cosine() - highPlate(frame);
        int[] free = IntStream.range(0, rows().at().size())
                .filter(row -> rows().at().get(row) > low && rows().at().get(row) < high)
                .filter(row -> isFree(rows().at().get(row), frame))
                .filter(row -> passesUprights(rows().at().get(row), frame))
                .toArray();
        int every = bracing().flyBraceEvery();
        return IntStream.range(0, free.length)
                .filter(i -> i % every == 0 || i == free.length - 1)
                .map(i -> free[i]);
    }

    /** From the top of the slope down to where the column there is passed, or the plumb plate on the rafter's end. */
    private double highPlate(int frame) {
        if (rows().slope().top() == RoofSlope.Top.HIGH_EAVE) {
            return clearOfColumn(bays.setOut().main(Side.RIGHT), frame);
        }
        RoofLine roof = rows().slope().roof();
        Plates plates = bays.definition().plates();
        double deepest = rows().slope().line().rafter(bays.definition(), frame).depth() + 2 * PlateRoom.WELD;
        double end = Math.max(plates.apexThickness(), plates.leanToGap());
        return deepest * Math.abs(roof.rise()) + end / roof.cosine() + BODY;
    }

    /** From a column's outside face up the slope to where its inside and its cap are passed. */
    private double clearOfColumn(ColumnLine line, int frame) {
        return (line.column(bays.definition(), frame).depth() + BODY + PlateRoom.WELD)
                / line.roof().cosine();
    }

    private boolean isFree(double at, int frame) {
        int bay = direction(frame) > 0 ? frame : frame - 1;
        if (!bracing().bays().contains(bay)) {
            return true;
        }
        BracePanels panels = new BracePanels(bays, bay);
        double depth = panels.plateDepth();
        Member rafter = panels.rafter(frame);
        double drop = rows().sheetPlane() / 2 + rafter.depth() - foot(rafter);
        double lean = out(drop, frame) / drop;
        double low = rafter.width() / 2 + LUG;
        double over = rafter.depth() - foot(rafter) - 2 * depth;
        return panels.isFree(
                at, over < 2 * BODY ? 0 : low + over * lean - BODY, low + rafter.depth() * lean + BODY, BODY);
    }

    /** Uprights of an end wall stand inside it under the rafter, where a fly brace would come down. */
    private boolean passesUprights(double at, int frame) {
        double rafter = rows().slope().line().rafter(bays.definition(), frame).depth();
        double head = rows().place(at, 0, rows().sheetPlane()).x();
        double foot = rows().place(at, 0, -rafter).x();
        double room = bays.definition().envelope().walls().mullions().member().width() / 2 + BODY;
        return new EndUprights(bays)
                .across(frame)
                .noneMatch(u -> u > Math.min(head, foot) - room && u < Math.max(head, foot) + room);
    }

    private static double foot(Member rafter) {
        return Math.max(LEAST_FOOT, Math.min(FOOT, rafter.depth() - OVER_FOOT));
    }

    private double out(double drop, int frame) {
        double there = bays.setOut().frameLine(frame + direction(frame));
        return Math.min(drop, REACH * Math.abs(there - bays.setOut().frameLine(frame)));
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
        double drop = stand.member().depth() / 2 + rafter.depth() - foot(rafter);
        double low = rafter.width() / 2 + LUG;
        double out = out(drop, frame);
        double y = bays.middle(frame) + into * low;
        // The angle's leg lies against the face that the cleats bear on: the higher web of a lap.
        double heel = -angle.profile().outline().stream()
                .mapToDouble(p -> p.y())
                .min()
                .orElseThrow();
        double up = rows().at().get(row) + (stand.isCleatAbove() ? heel : -heel);
        Vec3 foot = rows().place(up, y, foot(rafter) - rafter.depth());
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

    /** A plate against the brace's flat leg, from the rafter's web or side past the brace's bolt. */
    private Piece lug(Piece brace, int row, int frame) {
        Member rafter = rows().slope().line().rafter(bays.definition(), frame);
        int into = direction(frame);
        double side = rafter.width() / 2;
        double bottom = -rafter.depth();
        if (rafter.section() instanceof BeamSection beam && !rafter.turned()) {
            side = beam.webThickness() / 2;
            bottom += beam.flangeThickness();
        }
        Vec3 along = brace.place().placement().along();
        double out = rafter.width() / 2 + LUG + EDGE * Math.abs(along.y());
        double rise = foot(rafter)
                - rafter.depth()
                + EDGE * along.dot(rows().slope().roof().outward());
        double width = PlateRoom.upTo5(out + EDGE - side);
        double height = Math.min(PlateRoom.upTo5(rise + EDGE - bottom), Math.floor(-bottom));
        // Lugs of either side are one plate: its width always points away from the rafter.
        Vec3 thick = rows().slope().roof().outward().cross(Vec3.ALONG.times(into));
        boolean upward = thick.dot(rows().up()) > 0;
        double from = upward ? 0 : LUG_THICKNESS;
        double at = rows().at().get(row) + from - (rows().standOf(row).isCleatAbove() ? LUG_THICKNESS : 0);
        Placement stands = Placement.of(
                rows().place(at, bays.middle(frame) + into * (side + width / 2), bottom + height / 2),
                thick,
                rows().slope().roof().outward());
        Hole hole = new Hole(new Vec2(rise - bottom - height / 2, out - side - width / 2), HOLE);
        return PlateMaker.plate(
                PartKind.FLY_BRACE_LUG,
                height,
                width,
                LUG_THICKNESS,
                List.of(hole),
                new Place(stands, frame, rows().slope().side()));
    }
}
