package org.baywright.model.setout;

import org.baywright.model.catalogue.ColdFormedSection;
import org.baywright.model.definition.Member;
import org.baywright.model.geometry.Profile;

/**
 * How the section of a roof row stands on the line of its row: the face that its cleats bear on.
 *
 * <pre>
 *    Z   ____            C    ____          C turned  ____          up the slope -->
 *           || |            ||    |            |    ||
 *        ___||[] cleat   []||____           ___     ||[]
 *           line          line                     line
 * </pre>
 *
 * <p>Common practice, no source: the open face of a C and the top flange of a Z look up the slope; a C has its cleat
 * at its back, a Z above its lower flange. A C past the rafter's end turns its back to the bracket that reaches it.
 *
 * @param member section of the row
 * @param turned a C with its open face down the slope
 * @param centroidHeight from the rafter's top to the section's centroid, square to the slope
 * @param centroidUp from the row's line to the section's centroid, up the slope
 */
public record RowStand(Member member, boolean turned, double centroidHeight, double centroidUp) {
    /** A section and the way it stands. */
    public static RowStand of(Member member, boolean turned) {
        RowStand loose = new RowStand(member, turned, 0, 0);
        Profile profile = member.profile();
        double foot = -profile.outline().stream().mapToDouble(p -> p.x()).min().orElseThrow();
        return new RowStand(member, turned, foot, loose.centroidUp(profile));
    }

    private double centroidUp(Profile profile) {
        if (isLapped()) {
            return -web() / 2;
        }
        double back = -profile.outline().stream().mapToDouble(p -> p.y()).min().orElseThrow();
        return isCleatAbove() ? isChannel() ? -back : -profile.width() / 2 : back;
    }

    private boolean is(ColdFormedSection.Form form) {
        return member.section() instanceof ColdFormedSection folded && folded.form() == form;
    }

    /** Whether lengths of it lap over a frame; otherwise they butt. */
    public boolean isLapped() {
        return is(ColdFormedSection.Form.Z);
    }

    /** Whether it is a lipped channel. */
    public boolean isChannel() {
        return is(ColdFormedSection.Form.C);
    }

    /** Whether it is a top hat, wider at its feet than at its crown. */
    public boolean isHat() {
        return is(ColdFormedSection.Form.TOP_HAT);
    }

    /** Whether its cleats stand on the high side of the row's line; otherwise on the low side. */
    public boolean isCleatAbove() {
        return !isChannel() || turned;
    }

    /** Thickness of the web that laps and bridging bear on; nothing for a section without one. */
    public double web() {
        return (isLapped() || isChannel()) && member.section() instanceof ColdFormedSection folded
                ? folded.thickness()
                : 0;
    }

    /** How far a plumb plane at the eave must lie down the slope from the row's line, at the rafter's top, to clear it. */
    double roomBelow(double rise) {
        return member.profile().outline().stream()
                .mapToDouble(p -> (p.x() + centroidHeight) * rise - up(p.y()))
                .max()
                .orElseThrow();
    }

    /** How far a plumb plane at the top must lie up the slope from the row's line, at the rafter's top, to clear it. */
    double roomAbove(double rise) {
        return member.profile().outline().stream()
                .mapToDouble(p -> up(p.y()) - (p.x() + centroidHeight) * rise)
                .max()
                .orElseThrow();
    }

    /** How far the section reaches above its line, up the slope or the wall. */
    public double reachUp() {
        return member.profile().outline().stream()
                .mapToDouble(p -> up(p.y()))
                .max()
                .orElseThrow();
    }

    /** How far the section reaches below its line. */
    public double reachDown() {
        return -member.profile().outline().stream()
                .mapToDouble(p -> up(p.y()))
                .min()
                .orElseThrow();
    }

    private double up(double width) {
        return centroidUp + (turned ? -width : width);
    }
}
