package org.baywright.model.catalogue;

/** Sections that are bought in the same stock lengths. */
public enum Family {
    /** Square and rectangular hollow sections. */
    HOLLOW,
    /** Universal beams and columns. */
    BEAM;

    /** The family of a section. */
    public static Family of(Section section) {
        return section instanceof HollowSection ? HOLLOW : BEAM;
    }
}
