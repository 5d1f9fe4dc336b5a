package org.baywright.model.catalogue;

/**
 * A chemical anchor: a threaded rod glued into a drilled hole. Example product figures; the user's product rules.
 *
 * @param size thread, such as {@code M16}
 * @param rodDiameter mm
 * @param holeDiameter drill bit in the concrete, mm
 * @param embedment depth of the hole, mm
 * @param minimumEdge least distance from hole centre to concrete edge, mm
 * @param minimumSpacing least distance between two holes, mm
 * @param minimumConcrete least concrete thickness, mm
 * @param plateHole hole in the base plate, mm
 * @param stressAreaMm2 tensile stress area of the threaded rod, what it takes up of the hole
 * @param source where the row comes from
 */
public record AnchorType(
        String size,
        double rodDiameter,
        double holeDiameter,
        double embedment,
        double minimumEdge,
        double minimumSpacing,
        double minimumConcrete,
        double plateHole,
        double stressAreaMm2,
        String source) {
    /** Checks that the rod goes through both holes and that the concrete is deeper than the hole. */
    public AnchorType {
        if (!(rodDiameter > 0) || !(holeDiameter > rodDiameter) || !(plateHole > rodDiameter)) {
            throw new IllegalArgumentException("an anchor's rod must go through both holes");
        }
        if (!(embedment > 0) || !(minimumConcrete > embedment) || !(minimumEdge > 0) || !(minimumSpacing > 0)) {
            throw new IllegalArgumentException("an anchor needs an embedment, deeper concrete, an edge and a spacing");
        }
        if (!(stressAreaMm2 > 0) || !(stressAreaMm2 < Math.PI / 4 * rodDiameter * rodDiameter)) {
            throw new IllegalArgumentException("a thread's stress area is less than the area of the plain rod");
        }
    }
}
