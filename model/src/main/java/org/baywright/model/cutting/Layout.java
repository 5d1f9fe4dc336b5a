package org.baywright.model.cutting;

import java.util.List;
import java.util.Objects;

/**
 * Bars that are all cut alike.
 *
 * @param stock what they are cut from
 * @param cuts the pieces on each bar, longest first, pieces of one mitre together
 * @param times how many bars
 * @param saw what each cut and the ends take
 */
public record Layout(Stock stock, List<Cut> cuts, int times, Saw saw) {
    /** Copies the list; a bar is cut into something that fits. */
    public Layout {
        Objects.requireNonNull(stock);
        Objects.requireNonNull(saw);
        cuts = List.copyOf(cuts);
        if (cuts.isEmpty() || times < 1) {
            throw new IllegalArgumentException("a layout needs pieces and bars");
        }
    }

    /** How many pieces each bar gives. */
    public int pieces() {
        return cuts.stream().mapToInt(Cut::count).sum();
    }

    /** The length of the pieces of one bar. */
    public double piecesMm() {
        return cuts.stream().mapToDouble(c -> c.lengthMm() * c.count()).sum();
    }

    /** The length of one bar that mitred runs lose at their slanted ends. */
    public double overlapsMm() {
        return cuts.stream()
                .map(Cut::mitre)
                .distinct()
                .mapToDouble(Mitre::overlapMm)
                .sum();
    }

    /** The length of one bar turned to dust; the last cut takes at most what is left. */
    public double kerfMm() {
        double all = cuts.stream()
                .mapToDouble(c -> c.count() * c.mitre().kerfMm(saw.kerfMm()))
                .sum();
        return Math.max(0, Math.min(all, stock.lengthMm() - saw.endTrimMm() - piecesMm() - overlapsMm()));
    }

    /** The length left over from one bar. */
    public double offcutMm() {
        return Math.max(0, stock.lengthMm() - saw.endTrimMm() - piecesMm() - overlapsMm() - kerfMm());
    }
}
