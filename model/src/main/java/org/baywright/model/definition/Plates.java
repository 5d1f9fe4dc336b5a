package org.baywright.model.definition;

/**
 * Plates and gaps. A thickness of zero leaves the plate out.
 *
 * @param base under the main columns
 * @param leanToBase under the lean-to columns
 * @param capThickness on top of a column
 * @param kneeThickness between a butted rafter and its column
 * @param apexThickness each, at the ridge
 * @param groutGap under the base plate
 * @param rafterOverhang of a seated rafter past the column's outside face, level
 * @param leanToGap between main column and lean-to rafter, level
 */
public record Plates(
        BasePlate base,
        BasePlate leanToBase,
        double capThickness,
        double kneeThickness,
        double apexThickness,
        double groutGap,
        double rafterOverhang,
        double leanToGap) {}
