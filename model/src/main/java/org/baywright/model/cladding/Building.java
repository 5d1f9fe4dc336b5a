package org.baywright.model.cladding;

import org.baywright.model.definition.Definition;
import org.baywright.model.parts.Shed;

/**
 * A shed and all that closes it: what drawings, bills and orders are read off.
 *
 * @param shed steel and anchors
 * @param cladding sheets, flashings, gutters
 */
public record Building(Shed shed, Cladding cladding) {
    /** The building of a definition that the rules have passed. */
    public static Building of(Definition definition) {
        Shed shed = Shed.of(definition);
        return new Building(shed, Cladding.of(shed));
    }
}
