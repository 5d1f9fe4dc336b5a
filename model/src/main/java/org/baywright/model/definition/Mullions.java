package org.baywright.model.definition;

/**
 * Upright members in the end walls, and beside doors.
 *
 * @param member section
 * @param spacing most between uprights of an end wall
 * @param slipGap under the rafter
 */
public record Mullions(Member member, double spacing, double slipGap) {}
