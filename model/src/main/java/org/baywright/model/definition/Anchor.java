package org.baywright.model.definition;

/**
 * The anchor at every hole of a base plate, with the user's product figures or our example's.
 *
 * @param size thread, such as {@code M16}
 * @param rodDiameter mm
 * @param holeDiameter of the hole in the concrete: the drill bit
 * @param embedment depth of the hole
 * @param minimumEdge least distance from hole centre to concrete edge
 * @param minimumSpacing least distance between two holes
 * @param minimumConcrete least concrete thickness
 * @param plateHole hole in the plate for this anchor
 * @param cartridge the adhesive that bonds it
 */
public record Anchor(
        String size,
        double rodDiameter,
        double holeDiameter,
        double embedment,
        double minimumEdge,
        double minimumSpacing,
        double minimumConcrete,
        double plateHole,
        Cartridge cartridge) {}
