package org.baywright.model.nesting;

/** The plane of a section that the blade swivels in. */
public enum SawPlane {
    /** The plane of the section's first dimension. */
    DEPTH("depth"),
    /** The plane of its second dimension; a bar must be rolled a quarter to be cut so. */
    WIDTH("width");

    private final String label;

    SawPlane(String label) {
        this.label = label;
    }

    /** In words. */
    public String label() {
        return label;
    }
}
