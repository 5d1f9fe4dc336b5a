package org.baywright.model.catalogue;

/**
 * A chemical anchor: a threaded rod glued into a drilled hole. Example product figures; the user's product rules.
 *
 * @param size thread, such as {@code M16}
 * @param rodDiameter mm
 * @param holeDiameter drill bit in the concrete, mm
 * @param embedment depth of the hole, mm
 * @param minimumEdge least distance from hole centre to concrete edge, mm
 * @param minimumConcrete least concrete thickness, mm
 * @param plateHole hole in the base plate, mm
 * @param source where the row comes from
 */
public record AnchorType(
        String size,
        double rodDiameter,
        double holeDiameter,
        double embedment,
        double minimumEdge,
        double minimumConcrete,
        double plateHole,
        String source) {}
