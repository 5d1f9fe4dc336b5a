package org.baywright.model.takeoff;

import org.baywright.model.parts.Part;
import org.baywright.model.parts.Shed;

/**
 * One coat of primer on all steel that does not come galvanised from the mill.
 *
 * @source L = area · film / (10 · solids %) · (1 + loss); loss 10 to 20 % by brush: theoretical coverage rates of a
 *     paint supplier; film and solids: common practice, no source, the tin's label rules
 * @param areaM2 to be painted
 */
public record Paint(double areaM2) {
    private static final double FILM_MICRON = 75;
    private static final double SOLIDS_PERCENT = 50;
    private static final double LOSS = 0.2;

    /** Of a shed. */
    public static Paint of(Shed shed) {
        return new Paint(shed.parts().stream()
                .filter(Paint::covers)
                .mapToDouble(p -> p.surfaceM2() * p.quantity())
                .sum());
    }

    /** Whether a part is painted. */
    static boolean covers(Part part) {
        return !RowOrder.isRolled(part);
    }

    /** Litres of it. */
    public double litres() {
        return areaM2 * FILM_MICRON / (10 * SOLIDS_PERCENT) * (1 + LOSS);
    }
}
