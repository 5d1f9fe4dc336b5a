package org.baywright.model.definition;

/**
 * The rows that carry the wall sheets.
 *
 * @param member section
 * @param spacing most between rows
 * @param fromFloor height of the lowest row
 * @param flush between the columns, flush with their outside face; otherwise outside them
 */
public record Girts(Member member, double spacing, double fromFloor, boolean flush) {}
