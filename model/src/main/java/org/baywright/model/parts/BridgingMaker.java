package org.baywright.model.parts;

import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.baywright.model.catalogue.Section;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.setout.RoofRows;

/**
 * The bridging of one slope: in each line of a bay one length between every two rows, between the webs at
 * about half depth. It is cut from the angle of the fly braces. Common practice, no source.
 *
 * @param bays the rows along the building
 */
record BridgingMaker(RowBays bays) {
    private RoofRows rows() {
        return bays.rows();
    }

    Stream<Piece> pieces() {
        return bays.bays()
                .boxed()
                .flatMap(bay -> bays.bridging(bay)
                        .boxed()
                        .flatMap(y -> IntStream.range(1, rows().at().size())
                                .boxed()
                                .flatMap(row -> between(row - 1, row, bay, y))));
    }

    private Stream<Piece> between(int low, int high, int bay, double y) {
        double from = rows().at().get(low) - bays.aside(bay) + webAbove(low);
        double to = rows().at().get(high) - bays.aside(bay) - webBelow(high);
        Section angle = bays.definition().envelope().bracing().flyBraceSection();
        Vec3 origin = rows().place(from, y, rows().sheetPlane() / 2);
        Placement at = Placement.of(origin, rows().up(), rows().slope().roof().outward());
        return new BridgingLength(angle, rows().sheetPlane())
                .pieces(at, to - from, p -> new Place(p, bay, rows().slope().side()));
    }

    private double webAbove(int row) {
        return rows().standOf(row).isCleatAbove() ? 0 : rows().stand().web();
    }

    private double webBelow(int row) {
        return rows().stand().web() - webAbove(row);
    }
}
