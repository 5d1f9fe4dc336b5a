package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.baywright.model.definition.Side;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Place;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.ColumnLine;
import org.baywright.render.view.Item;

/**
 * Where one column stands on its base plate.
 *
 * @param line the string line at the column's outside face
 * @param column the part
 * @param columnPlace which of its places
 * @param plate under it
 * @param platePlace which of its places
 */
record Footing(ColumnLine line, Part column, Place columnPlace, Part plate, Place platePlace) {
    /** All of a shed, by frame and then from left to right. */
    static List<Footing> of(Shed shed) {
        List<Footing> footings = new ArrayList<>();
        for (PartKind kind : List.of(PartKind.COLUMN, PartKind.LEAN_TO_COLUMN)) {
            for (Part column : shed.parts(kind)) {
                column.places().forEach(place -> footings.add(of(shed, column, place)));
            }
        }
        footings.sort(Comparator.comparingInt(Footing::frame)
                .thenComparingDouble(f -> f.middle().x()));
        return footings;
    }

    private static Footing of(Shed shed, Part column, Place at) {
        Vec3 middle = at.placement().origin();
        Footing nearest = null;
        double least = Double.POSITIVE_INFINITY;
        for (Part plate : shed.parts(PartKind.BASE_PLATE)) {
            for (Place place : plate.places()) {
                if (place.frame() == at.frame() && apart(place.placement().origin(), middle) < least) {
                    least = apart(place.placement().origin(), middle);
                    nearest = new Footing(line(shed, column, at), column, at, plate, place);
                }
            }
        }
        return nearest;
    }

    private static double apart(Vec3 a, Vec3 b) {
        return Math.hypot(a.x() - b.x(), a.y() - b.y());
    }

    private static ColumnLine line(Shed shed, Part column, Place place) {
        boolean leanTo = column.kind() == PartKind.LEAN_TO_COLUMN;
        double half = column.solid().profile().depth() / 2;
        double middle = place.placement().origin().x();
        return shed.setOut().columnLines().stream()
                .filter(l -> l.leanTo() == leanTo && l.side() == place.side() && l.has(place.frame()))
                .min(Comparator.comparingDouble(l -> Math.abs(l.x() + l.inward() * half - middle)))
                .orElseThrow();
    }

    int frame() {
        return columnPlace.frame();
    }

    Side side() {
        return columnPlace.side();
    }

    /** The middle of the plate. */
    Vec3 middle() {
        return platePlace.placement().origin();
    }

    Item columnItem() {
        return new Item(column.mark(), column.solid(), columnPlace.placement());
    }

    Item plateItem() {
        return new Item(plate.mark(), plate.solid(), platePlace.placement());
    }
}
