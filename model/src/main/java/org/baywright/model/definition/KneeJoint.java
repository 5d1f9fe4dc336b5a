package org.baywright.model.definition;

/** Where column and rafter meet: the rafter sits on the column's cap, or butts against its inside face. */
public enum KneeJoint {
    SEATED,
    BUTTED
}
