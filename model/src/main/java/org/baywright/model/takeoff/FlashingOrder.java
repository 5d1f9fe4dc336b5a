package org.baywright.model.takeoff;

import java.util.List;
import java.util.Locale;
import org.baywright.model.cladding.Building;
import org.baywright.model.cladding.Flashing;

/** Flashings by mark, in stock lengths that its runs share. */
final class FlashingOrder {
    private FlashingOrder() {}

    static List<BillLine> lines(Building building) {
        return building.cladding().flashings().stream()
                .filter(f -> !f.runs().isEmpty())
                .map(FlashingOrder::line)
                .toList();
    }

    private static String runs(Flashing flashing) {
        int runs = flashing.runs().size();
        return String.format(
                Locale.ROOT, "%d %s of %.2f m in all", runs, runs == 1 ? "run" : "runs", flashing.length() / 1000);
    }

    private static BillLine line(Flashing flashing) {
        int lengths = new FlashingLengths(flashing).toBuy();
        double order = lengths * flashing.stockLength() / 1000;
        BillItem item = new BillItem(
                flashing.kind().label() + " flashing, girth " + Math.round(flashing.girth()) + ", " + flashing.folds()
                        + (flashing.folds() == 1 ? " fold" : " folds"),
                "0.55 BMT, colour as the sheets beside it",
                flashing.stockLength(),
                List.of(flashing.mark()),
                "to the sketch of " + flashing.mark() + "; " + runs(flashing) + " cut from " + lengths
                        + (lengths == 1 ? " length" : " lengths") + "; laps " + Math.round(flashing.lap())
                        + ", sealed and riveted");
        return BillLine.measured(
                BillGroup.FLASHINGS, item, lengths, BillLine.Unit.METRES, flashing.length() / 1000, order);
    }
}
