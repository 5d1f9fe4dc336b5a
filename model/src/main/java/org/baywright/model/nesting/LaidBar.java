package org.baywright.model.nesting;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.baywright.model.cutting.Bar;
import org.baywright.model.cutting.Cut;
import org.baywright.model.cutting.Layout;
import org.baywright.model.cutting.Saw;
import org.baywright.model.cutting.Stock;

/**
 * Bars that are cut alike, piece by piece from the left. The lengths add up: pieces, kerf, wedges, off-cut and end trim
 * are the bar.
 *
 * @param stock what they are cut from
 * @param pieces from the left; the first lies behind the end trim
 * @param times how many bars
 * @param saw what cuts and ends take
 */
public record LaidBar(Stock stock, List<Laid> pieces, int times, Saw saw) {
    private static final double FINE = 1e-6;

    /** Copies the list. */
    public LaidBar {
        Objects.requireNonNull(stock);
        Objects.requireNonNull(saw);
        pieces = List.copyOf(pieces);
        if (pieces.isEmpty() || times < 1) {
            throw new IllegalArgumentException("a bar is cut into something");
        }
    }

    /** Square pieces of a list behind each other; a depth of one is as good as any. */
    public static LaidBar of(Bar bar) {
        Layout layout = bar.layout();
        List<Blank> blanks = new ArrayList<>();
        for (Cut cut : layout.cuts()) {
            for (int n = 0; n < cut.count(); n++) {
                blanks.add(Blank.square(bar.marks().get(blanks.size()), cut.lengthMm(), 1));
            }
        }
        return new LaidBar(layout.stock(), Nest.inOrder(blanks, layout.saw()), layout.times(), layout.saw());
    }

    LaidBar times(int bars) {
        return new LaidBar(stock, pieces, bars, saw);
    }

    private Laid last() {
        return pieces.get(pieces.size() - 1);
    }

    /** Whether the last tip lies in the bar. */
    boolean fits() {
        return last().rightTipMm() <= stock.lengthMm() + FINE;
    }

    /** The length of its pieces along their middles: their steel. */
    public double piecesMm() {
        return pieces.stream().mapToDouble(p -> p.blank().middleMm()).sum();
    }

    /** Bar length turned to dust; the last cut takes at most what is left. */
    public double kerfMm() {
        double kerf = Math.min(last().right().kerfMm(saw.kerfMm()), stock.lengthMm() - last().rightTipMm());
        for (int i = 1; i < pieces.size(); i++) {
            End left = pieces.get(i - 1).right();
            End right = pieces.get(i).left();
            double both = left.kerfMm(saw.kerfMm()) + right.kerfMm(saw.kerfMm());
            double between = pieces.get(i).atMm() - pieces.get(i - 1).toMm();
            kerf += left.shares(right) ? between : Math.min(both, between);
        }
        return Math.max(0, kerf);
    }

    /** The length left over, its slanted end taken off. */
    public double offcutMm() {
        return Math.max(
                0, stock.lengthMm() - last().rightTipMm() - last().right().kerfMm(saw.kerfMm()));
    }

    /** Bar length lost in wedges between ends of different slope. */
    public double wedgesMm() {
        return stock.lengthMm() - saw.endTrimMm() - piecesMm() - kerfMm() - offcutMm();
    }

    /** How many of a mark each bar gives. */
    public long count(String mark) {
        return pieces.stream().filter(p -> p.blank().mark().equals(mark)).count();
    }
}
