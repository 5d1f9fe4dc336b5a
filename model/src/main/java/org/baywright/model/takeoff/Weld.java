package org.baywright.model.takeoff;

import org.baywright.model.parts.PartKind;

/**
 * Fillet welds that are alike: of one plate or bracket to one member.
 *
 * @param joint what is welded on, which names the joint
 * @param plate its mark
 * @param member the mark of what it is welded to
 * @param count how many
 * @param length of each, mm
 * @param leg of the fillet, mm, or as the engineer says
 */
public record Weld(PartKind joint, String plate, String member, int count, double length, double leg) {
    /** In place of a member's mark, where no member meets the plate. */
    public static final String NO_MEMBER = "no member";

    /** A bead is rounder than its triangle. @source calculating filler metal consumption: 1.15 */
    private static final double BEAD = 1.15;

    /** Tacks and repairs. Common practice, no source. */
    private static final double TACKS = 1.15;

    /** All of them together. */
    public double metres() {
        return count * length / 1000;
    }

    /** Metal in all of them. */
    public double depositKg() {
        return metres() * Welds.depositKgPerM(leg) * BEAD;
    }

    /** Electrodes to weld them by hand, stubs, spatter, tacks and repairs counted. */
    public double electrodeKg() {
        return depositKg() / Electrode.USUAL.usable() * TACKS;
    }
}
