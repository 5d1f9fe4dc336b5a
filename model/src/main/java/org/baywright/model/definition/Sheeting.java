package org.baywright.model.definition;

import org.baywright.model.catalogue.SheetProfile;

/**
 * The sheets of roof and walls.
 *
 * @param roof on the roof
 * @param walls on the walls
 * @param longest sheet that is carried to the site
 * @param leanToWalls whether the outer and end walls of lean-tos are sheeted
 * @param behindLeanTos whether a main wall is sheeted below the roof of a lean-to
 */
public record Sheeting(Roof roof, Walls walls, double longest, boolean leanToWalls, boolean behindLeanTos) {
    /**
     * Roof sheets.
     *
     * @param profile the sheet
     * @param colour finish, in words
     * @param intoGutter how far a sheet runs past the outer face of the gutter's support
     * @param ridgeGap from the ridge line to the end of each sheet
     * @param translucentEvery one sheet in so many lets light in; 0 for none
     * @param blanket whether insulation blanket on safety mesh goes under the sheets
     */
    public record Roof(
            SheetProfile profile,
            String colour,
            double intoGutter,
            double ridgeGap,
            int translucentEvery,
            boolean blanket) {}

    /**
     * Wall sheets.
     *
     * @param profile the sheet
     * @param colour finish, in words
     * @param belowFloor how far a sheet runs below the finished floor
     * @param banded whether the sheets of a rake are cut from at most four lengths; otherwise each has its own
     */
    public record Walls(SheetProfile profile, String colour, double belowFloor, boolean banded) {}
}
