package org.baywright.model.definition;

/** The main roof: two slopes meeting at a ridge, or one slope rising from left to right. */
public enum RoofShape {
    GABLE,
    SKILLION
}
