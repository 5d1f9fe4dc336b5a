package org.baywright.model.definition;

/**
 * Reinforcement in the slab: straight bars both ways on a grid that runs right through.
 *
 * @param diameter of the bars
 * @param along between the bars that lie across the building
 * @param across between the bars that lie along the building
 * @param cover from the top of the slab to the upper bars
 * @param close the least clear gap between a hole and a bar that is still called clear
 */
public record SlabBars(double diameter, Row along, Row across, double cover, double close) {
    /**
     * Bars side by side.
     *
     * @param spacing middle to middle
     * @param offset of the middle of one of them from its datum line
     */
    public record Row(double spacing, double offset) {}
}
