package org.baywright.model.definition;

/** What concrete there is: a slab under the whole building, or pads under the base plates only. */
public enum Floor {
    SLAB,
    PADS
}
