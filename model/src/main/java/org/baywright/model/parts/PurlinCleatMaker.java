package org.baywright.model.parts;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.setout.RoofRows;
import org.baywright.model.setout.RowStand;

/**
 * The cleats of one slope: a plate welded upright on the rafter at every row and frame. A row past the rafter's end has
 * its cleat on the end of a bracket, an upright plate that reaches back onto the rafter.
 *
 * <pre>
 *      row |[]____________
 *          |[]____bracket_|___
 *                |  rafter
 * </pre>
 *
 * <p>Common practice, no source: 8 mm plate, M12 bolts in 18 holes. From memory: two holes of a pair lie 40 apart in a
 * purlin about 100 deep, 60 in one of 150, 110 in one of 200.
 *
 * @param bays the rows along the building
 */
record PurlinCleatMaker(RowBays bays) {
    private static final double THICKNESS = 8;
    private static final double HOLE = 18;
    private static final double EDGE = 25;
    private static final double NARROW = 100;

    /** How far a bracket lies on the rafter. Common practice, no source. */
    private static final double SEAT = 100;

    /** A bracket stays below the lips of what lies over it. */
    private static final double BRACKET_SHARE = 0.6;

    private RoofRows rows() {
        return bays.rows();
    }

    Stream<Piece> pieces() {
        return IntStream.rangeClosed(bays.first(), bays.last())
                .boxed()
                .flatMap(frame -> IntStream.range(0, rows().at().size()).boxed().flatMap(row -> at(row, frame)));
    }

    private Stream<Piece> at(int row, int frame) {
        double reach = RoofRows.supportLow(bays.definition(), rows().slope())
                - rows().at().get(row);
        return reach > 0 ? Stream.of(cleat(row, frame), bracket(row, frame, reach)) : Stream.of(cleat(row, frame));
    }

    private Piece cleat(int row, int frame) {
        RowStand stand = rows().standOf(row);
        boolean butt = !stand.isLapped() && !bays.isEnd(frame);
        double height = height(stand);
        double width = butt ? 2 * (RowBays.BUTT_BOLTS + EDGE) + 10 : NARROW;
        double low = rows().at().get(row) - (stand.isCleatAbove() ? 0 : THICKNESS);
        Vec3 origin = rows().place(low, bays.middle(frame), height / 2);
        Placement at = Placement.of(origin, rows().up(), rows().slope().roof().outward());
        List<Hole> holes = holes(stand, butt ? List.of(-RowBays.BUTT_BOLTS, RowBays.BUTT_BOLTS) : List.of(0.0));
        return PlateMaker.plate(PartKind.PURLIN_CLEAT, height, width, THICKNESS, holes, place(at, frame));
    }

    private Place place(Placement at, int frame) {
        return new Place(at, frame, rows().slope().side());
    }

    private static double gauge(double depth) {
        return depth < 90 ? 0 : depth < 125 ? 40 : depth < 175 ? 60 : depth < 225 ? 110 : 160;
    }

    /** Past the upper hole, and under the upper flange. */
    private static double height(RowStand stand) {
        double depth = stand.member().depth();
        double past = PlateRoom.upTo5((depth + gauge(depth)) / 2 + EDGE);
        return Math.min(past, Math.floor(depth - Math.max(stand.web(), 1)));
    }

    /** At half the depth of the purlin, wherever the middle of the plate is. */
    private static List<Hole> holes(RowStand stand, List<Double> across) {
        double depth = stand.member().depth();
        double half = gauge(depth) / 2;
        double middle = (depth - height(stand)) / 2;
        Stream<Double> heights = half > 0 ? Stream.of(middle - half, middle + half) : Stream.of(middle);
        return heights.flatMap(h -> across.stream().map(w -> new Hole(new Vec2(h, w), HOLE)))
                .toList();
    }

    private Piece bracket(int row, int frame, double reach) {
        double height = Math.floor(rows().sheetPlane() * BRACKET_SHARE / 5) * 5;
        double length = PlateRoom.upTo5(reach - THICKNESS + SEAT);
        double middle = rows().at().get(row) + THICKNESS + length / 2;
        Vec3 origin = rows().place(middle, bays.middle(frame) - THICKNESS / 2, height / 2);
        Placement at = Placement.of(origin, Vec3.ALONG, rows().up());
        return PlateMaker.plate(PartKind.PURLIN_CLEAT, length, height, THICKNESS, List.of(), place(at, frame));
    }
}
