package org.baywright.model.takeoff;

import java.util.List;
import org.baywright.model.definition.Opening;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.OpeningPlace;

/** Doors and windows, one line each, since each has its own clear size and place. */
final class OpeningOrder {
    private OpeningOrder() {}

    static List<BillLine> lines(Shed shed) {
        return shed.openings().stream()
                .filter(o -> o.opening().type() != Opening.Type.OPEN)
                .map(OpeningOrder::line)
                .toList();
    }

    /** What bills call an opening. */
    static String mark(OpeningPlace place) {
        return place.tag();
    }

    private static BillLine line(OpeningPlace place) {
        String size = Math.round(place.width()) + "x" + Math.round(place.head() - place.sill());
        BillItem item = BillItem.of(
                place.opening().type().label() + " " + size + " clear",
                "wind rating by the engineer",
                List.of(mark(place)),
                note(place.opening().type()));
        return BillLine.counted(BillGroup.OPENINGS, item, 1, 1);
    }

    /** @source side room 150, head room 450: common practice; frame allowances of doors and windows from memory */
    private static String note(Opening.Type type) {
        return switch (type) {
            case ROLLER_DOOR ->
                "clear size between jambs and under the header: the curtain is larger; wind locks where rated; confirm"
                        + " side and head room with the maker";
            case SLIDING_DOOR -> "clear size: the leaf is larger; with track, hangers, floor guide and stops";
            case DOOR -> "clear size: with frame, hinges and lock";
            case WINDOW -> "clear size: with frame, and flashings by the sheets' list";
            case OPEN -> "";
        };
    }
}
