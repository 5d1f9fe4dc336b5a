package org.baywright.model.takeoff;

import java.util.List;
import org.baywright.model.cladding.Building;
import org.baywright.model.cladding.Flashing;

/** Flashings by mark, in pieces of stock length. */
final class FlashingOrder {
    private FlashingOrder() {}

    static List<BillLine> lines(Building building) {
        return building.cladding().flashings().stream()
                .filter(f -> !f.runs().isEmpty())
                .map(FlashingOrder::line)
                .toList();
    }

    private static BillLine line(Flashing flashing) {
        double order = flashing.pieces() * flashing.stockLength() / 1000;
        BillItem item = new BillItem(
                flashing.kind().label() + " flashing, girth " + Math.round(flashing.girth()) + ", " + flashing.folds()
                        + (flashing.folds() == 1 ? " fold" : " folds"),
                "0.55 BMT, colour as the sheets beside it",
                flashing.stockLength(),
                List.of(flashing.mark()),
                "to the sketch of " + flashing.mark() + "; laps " + Math.round(flashing.lap())
                        + ", sealed and riveted");
        return BillLine.measured(
                BillGroup.FLASHINGS, item, flashing.pieces(), BillLine.Unit.METRES, flashing.length() / 1000, order);
    }
}
