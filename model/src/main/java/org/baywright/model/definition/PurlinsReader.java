package org.baywright.model.definition;

import java.util.OptionalDouble;
import org.baywright.model.catalogue.Section;

/**
 * Reads the purlins.
 *
 * @param group their keys
 * @param members reader of sections
 */
record PurlinsReader(GroupReader group, MemberReader members) {
    private static final double USUAL_END = 900;

    private enum EndRule {
        AS_GIVEN,
        TWO_THIRDS
    }

    Purlins read(double longestBay) {
        Section section = members.section(group, "section", SectionUse.ROW, usual(longestBay));
        double spacing = group.number("spacing");
        return new Purlins(
                new Member(section, false),
                spacing,
                endSpacing(spacing),
                group.number("fromRidge"),
                group.number("fromEave"),
                group.number("lap") / 100,
                group.wholeIfGiven("bridging"));
    }

    /** A place to start from, not a design. From memory. */
    private static String usual(double bay) {
        return bay <= 6500 ? "Z150-15" : bay <= 8000 ? "Z200-19" : "Z250-24";
    }

    /**
     * Wind lifts the edges of a roof most, so the end spaces are closer than the others.
     *
     * <p>@source twoThirds: the metal roofing code of practice of New Zealand, end span at most two thirds of the
     * interior span
     */
    private double endSpacing(double spacing) {
        OptionalDouble given = group.numberIfGiven("endSpacing");
        boolean ruled = group.choice("endRule", EndRule.class) == EndRule.TWO_THIRDS;
        double most = ruled ? Math.floor(spacing * 2 / 3) : spacing;
        if (given.isPresent() && given.getAsDouble() > most) {
            String message = NumberText.plain(given.getAsDouble()) + " was read; with spacing "
                    + NumberText.plain(spacing) + (ruled ? " and endRule twoThirds" : "") + " at most "
                    + NumberText.plain(most) + " is allowed";
            group.findings().error("end-spacing", group.where("endSpacing"), message, "lessen it or leave it out");
        }
        return Math.min(given.orElse(USUAL_END), most);
    }
}
