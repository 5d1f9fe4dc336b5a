package org.baywright.model.cutting;

/**
 * How the pieces of one section are cut.
 *
 * @param section its name; may be empty
 * @param plan the bars
 */
public record SectionPlan(String section, CuttingPlan plan) {}
