package org.baywright.model.definition;

import java.util.OptionalDouble;

/**
 * A base plate as asked for; a dimension left out is chosen by the column that stands on it.
 *
 * @param width across the building
 * @param depth along the building
 * @param thickness of the plate
 * @param holes how many: 2, 4, 6 or 8
 * @param gaugeX between hole lines across the building
 * @param gaugeY between hole lines along the building
 * @param holeDiameter of the holes in the plate
 */
public record BasePlate(
        OptionalDouble width,
        OptionalDouble depth,
        OptionalDouble thickness,
        int holes,
        OptionalDouble gaugeX,
        OptionalDouble gaugeY,
        OptionalDouble holeDiameter) {}
