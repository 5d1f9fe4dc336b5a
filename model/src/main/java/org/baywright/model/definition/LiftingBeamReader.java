package org.baywright.model.definition;

import org.baywright.model.catalogue.Section;

/**
 * Reads the beam for a hoist.
 *
 * @param group its keys
 * @param members reader of sections
 */
record LiftingBeamReader(GroupReader group, MemberReader members) {
    private enum Run {
        ACROSS,
        ALONG
    }

    LiftingBeam read(double span) {
        Section section = members.section(group, "section", SectionUse.BEAM, "250UB31.4");
        boolean along = group.choice("run", Run.class) == Run.ALONG;
        int from = (int) group.number("fromFrame");
        int to = along ? group.wholeIfGiven("toFrame").orElse(from + 1) : from;
        if (along && to <= from) {
            String message = "toFrame " + to + " does not come after fromFrame " + from;
            group.findings().error("frame-order", group.where("toFrame"), message, "count frames from 1");
        }
        return new LiftingBeam(
                new Member(section, false),
                new Member(members.section(group, "bracket", SectionUse.BEAM, "SHS 75x75x4"), false),
                along,
                from,
                Math.max(from, to),
                group.numberIfGiven("offset").orElse(span / 2),
                group.number("underside"),
                group.number("hookDrop"));
    }
}
