package org.baywright.model.takeoff;

import java.util.EnumMap;
import java.util.Map;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Shed;

/**
 * One coat of primer on all steel that does not come galvanised from the mill.
 *
 * @source L = area · film / (10 · solids %) · (1 + loss); loss 10 to 20 % by brush: theoretical coverage rates of a
 *     paint supplier; film and solids: common practice, no source, the tin's label rules
 * @param areaM2 to be painted
 */
public record Paint(double areaM2) {
    /** Dry. */
    public static final double FILM_MICRON = 75;

    /** By volume. */
    public static final double SOLIDS_PERCENT = 50;

    /** By brush. */
    public static final double LOSS = 0.2;

    /** Tins it is sold in. Common practice, no source. */
    public static final double TIN_L = 4;

    /** Of a shed. */
    public static Paint of(Shed shed) {
        return new Paint(
                byKind(shed).values().stream().mapToDouble(Paint::areaM2).sum());
    }

    /** Of a shed, each kind of part that is painted by itself. */
    public static Map<PartKind, Paint> byKind(Shed shed) {
        Map<PartKind, Paint> kinds = new EnumMap<>(PartKind.class);
        shed.parts().stream()
                .filter(Paint::covers)
                .forEach(p -> kinds.merge(p.kind(), new Paint(p.surfaceM2() * p.quantity()), Paint::and));
        return kinds;
    }

    private Paint and(Paint other) {
        return new Paint(areaM2 + other.areaM2);
    }

    /** Whether a part is painted. */
    static boolean covers(Part part) {
        return !RowOrder.isRolled(part);
    }

    /** Tins to buy. */
    public int tins() {
        return Packs.holding(litres(), TIN_L);
    }

    /** Litres of it. */
    public double litres() {
        return areaM2 * FILM_MICRON / (10 * SOLIDS_PERCENT) * (1 + LOSS);
    }
}
