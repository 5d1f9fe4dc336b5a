package org.baywright.render.mark;

/** What a mark is about. */
public enum Layer {
    STEEL,
    CLADDING,
    PLATE,
    ANCHOR,
    CONCRETE,
    GROUND,
    GRID,
    DIMENSION,
    LABEL,
    TABLE,
    FRAME
}
