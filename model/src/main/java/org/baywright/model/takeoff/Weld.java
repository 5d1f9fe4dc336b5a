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
 * @param seam which edges, and whether on site
 */
public record Weld(PartKind joint, String plate, String member, int count, double length, double leg, Seam seam) {
    /** Which edges are welded. */
    public enum Seam {
        CUT_END("all round the cut end"),
        ROUND("all round"),
        SIDES("both sides"),
        SITE_ROUND("all round, on site"),
        SITE_SIDES("both sides, on site");

        private final String label;

        Seam(String label) {
            this.label = label;
        }

        /** In words. */
        public String label() {
            return label;
        }

        /** Whether it is made where the shed stands. */
        public boolean isOnSite() {
            return this == SITE_ROUND || this == SITE_SIDES;
        }
    }

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
