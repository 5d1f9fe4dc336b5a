package org.baywright.model.takeoff;

import java.util.List;
import org.baywright.model.cladding.Flashing;
import org.baywright.model.cutting.Cutter;
import org.baywright.model.cutting.CuttingJob;
import org.baywright.model.cutting.Deadline;
import org.baywright.model.cutting.Piece;
import org.baywright.model.cutting.Saw;
import org.baywright.model.cutting.Stock;

/**
 * The stock lengths that a flashing's runs are cut from: short runs share one, and what is left of a long run's last.
 *
 * @param flashing the folded section and its runs
 */
public record FlashingLengths(Flashing flashing) {
    /** How many lengths to buy, by the first plan. */
    public int toBuy() {
        List<Piece> pieces = flashing.runs().stream()
                .flatMap(r -> r.strips(flashing.stockLength(), flashing.lap()).stream())
                .map(strip -> Piece.square(strip, 1))
                .toList();
        CuttingJob job = new CuttingJob(pieces, List.of(Stock.length(flashing.stockLength())), Saw.NONE);
        return Cutter.plan(job, Deadline.after(0)).barCount();
    }

    /** Laps along the runs. */
    int laps() {
        return flashing.pieces() - flashing.runs().size();
    }
}
