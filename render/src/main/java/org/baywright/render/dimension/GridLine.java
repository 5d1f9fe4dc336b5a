package org.baywright.render.dimension;

/**
 * A line of the grid.
 *
 * @param name in its bubble
 * @param at where it crosses the side it is named on, view mm
 */
public record GridLine(String name, double at) {}
