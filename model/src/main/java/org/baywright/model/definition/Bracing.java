package org.baywright.model.definition;

import java.util.List;
import org.baywright.model.catalogue.Section;

/**
 * Crossed braces in roof and walls, and what holds the rafters' inner flanges.
 *
 * @param section rod, flat or angle; empty braces are left out by an empty list of bays
 * @param bays braced bays, from 1
 * @param flyBraceSection angle of the fly braces
 * @param flyBraceEvery at every how many purlins a rafter has them; 0 for none
 */
public record Bracing(Section section, List<Integer> bays, Section flyBraceSection, int flyBraceEvery) {
    /** Copies the list. */
    public Bracing {
        bays = List.copyOf(bays);
    }
}
