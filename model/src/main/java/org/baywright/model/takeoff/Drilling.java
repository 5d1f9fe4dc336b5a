package org.baywright.model.takeoff;

import java.util.List;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Shed;

/**
 * The holes of one mark of base plate, and where the bit carries its mark.
 *
 * @param plate the plate
 * @param depth of the hole in the concrete, mm: the mark when the hole is drilled with the plate taken away
 * @param packed height that packers and grout hold the plate off the concrete, mm
 */
public record Drilling(Part plate, double depth, double packed) {
    /** Every mark of base plate in a shed. */
    public static List<Drilling> of(Shed shed) {
        double depth = shed.definition().anchor().embedment();
        double packed = shed.definition().plates().groutGap();
        return shed.parts(PartKind.BASE_PLATE).stream()
                .map(plate -> new Drilling(plate, depth, packed))
                .toList();
    }

    /** Holes under all plates of the mark. */
    public int holes() {
        return plate.holes().size() * plate.quantity();
    }

    /** All of them together. */
    public double metres() {
        return holes() * depth / 1000;
    }

    /** The mark on the bit when the plate lies flat on the concrete as the template. */
    public double markThroughPlate() {
        return depth + plate.solid().axisLength();
    }

    /** The mark on the bit when the plate stands packed at its level; the rod's mark is the same. */
    public double markThroughPackedPlate() {
        return markThroughPlate() + packed;
    }
}
