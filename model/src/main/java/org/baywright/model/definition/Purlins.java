package org.baywright.model.definition;

import java.util.OptionalInt;

/**
 * The rows that carry the roof sheets.
 *
 * @param member section; a Z is lapped, any other butts on its cleats
 * @param spacing most between rows
 * @param endSpacing most in the first and last space of a slope
 * @param fromRidge along the slope from the ridge, or from the upper edge, to the first row
 * @param fromEave from the lower end of the sheet to the last row
 * @param lapShare of a bay that a Z laps over a frame, both sides together
 * @param bridging rows in a bay; by its length when empty
 */
public record Purlins(
        Member member,
        double spacing,
        double endSpacing,
        double fromRidge,
        double fromEave,
        double lapShare,
        OptionalInt bridging) {}
