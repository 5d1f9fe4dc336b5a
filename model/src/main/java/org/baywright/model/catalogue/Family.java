package org.baywright.model.catalogue;

/** Sections that are bought in the same lengths. */
public enum Family {
    /** Square and rectangular hollow sections. */
    HOLLOW,
    /** Universal beams and columns. */
    BEAM,
    /** Purlins and girts; rolled to any length up to the longest. */
    PURLIN,
    /** Round rod. */
    ROD,
    /** Flat bar. */
    FLAT,
    /** Angle. */
    ANGLE;

    /** The family of a section. */
    public static Family of(Section section) {
        if (section instanceof HollowSection) {
            return HOLLOW;
        }
        if (section instanceof ColdFormedSection) {
            return PURLIN;
        }
        return section instanceof BarSection bar ? of(bar.form()) : BEAM;
    }

    private static Family of(BarSection.Form form) {
        return switch (form) {
            case ROUND -> ROD;
            case FLAT -> FLAT;
            case ANGLE -> ANGLE;
        };
    }
}
