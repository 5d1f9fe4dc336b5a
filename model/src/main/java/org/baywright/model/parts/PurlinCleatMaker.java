package org.baywright.model.parts;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.baywright.model.geometry.Placement;
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
 * @param bays the rows along the building
 */
record PurlinCleatMaker(RowBays bays) {
    private static final double THICKNESS = CleatPlate.THICKNESS;
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
        CleatPlate plate = new CleatPlate(stand);
        double height = plate.height();
        double width = butt ? 2 * (RowBays.BUTT_BOLTS + CleatPlate.EDGE) + 10 : NARROW;
        double low = rows().at().get(row) - (stand.isCleatAbove() ? 0 : THICKNESS);
        Vec3 origin = rows().place(low, bays.middle(frame), height / 2);
        Placement at = Placement.of(origin, rows().up(), rows().slope().roof().outward());
        List<Hole> holes = plate.holes(butt ? List.of(-RowBays.BUTT_BOLTS, RowBays.BUTT_BOLTS) : List.of(0.0));
        return PlateMaker.plate(PartKind.PURLIN_CLEAT, height, width, THICKNESS, holes, place(at, frame));
    }

    private Place place(Placement at, int frame) {
        return new Place(at, frame, rows().slope().side());
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
