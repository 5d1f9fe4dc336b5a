package org.baywright.model.definition;

import org.baywright.model.catalogue.Section;
import org.baywright.model.geometry.Profile;

/**
 * A section chosen for a member.
 *
 * @param section from the catalogue or the user's own
 * @param turned true when its second dimension lies in the plane of the frame
 */
public record Member(Section section, boolean turned) {
    /** The profile as it stands in the frame. */
    public Profile profile() {
        return turned ? section.profile().turned() : section.profile();
    }

    /** The dimension in the plane of the frame. */
    public double depth() {
        return turned ? section.width() : section.depth();
    }

    /** The dimension along the building. */
    public double width() {
        return turned ? section.depth() : section.width();
    }
}
