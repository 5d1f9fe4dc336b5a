package org.baywright.render.dimension;

/**
 * A height shown on an elevation or section.
 *
 * @param name what lies there, such as {@code EAVE (TOP OF RAFTER STEEL)}
 * @param height above the finished floor, which is the view's zero, mm
 */
public record Level(String name, double height) {}
