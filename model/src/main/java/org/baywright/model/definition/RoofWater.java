package org.baywright.model.definition;

/**
 * Gutters and downpipes.
 *
 * @param rainfallMmPerH five-minute intensity that the eaves gutters are to carry
 * @param gutter name and section
 * @param fallOneIn the gutter falls one in so many
 * @param downpipe its clear section
 */
public record RoofWater(double rainfallMmPerH, Gutter gutter, double fallOneIn, Downpipe downpipe) {
    /** An eaves gutter: depth, width and the area that water may fill. */
    public record Gutter(String name, double depth, double width, double areaMm2) {}

    /** A downpipe: diameter, or the sides of a rectangle. */
    public record Downpipe(String name, double areaMm2) {}
}
