package org.baywright.model.takeoff;

/** The parts of a bill, in the order a merchant and a fabricator read them. */
public enum BillGroup {
    STOCK("Steel to buy, in stock lengths"),
    PIECES("Cut list: pieces cut from the steel above"),
    PLATES("Plates, cut and drilled"),
    ANCHORS("Anchors"),
    ROWS("Purlins and girts, rolled to length"),
    SHEETS("Sheets, longest first"),
    FLASHINGS("Flashings"),
    ROOF_WATER("Gutters and downpipes"),
    FIXINGS("Fixings"),
    OPENINGS("Doors and windows"),
    INSULATION("Insulation"),
    CONCRETE("Concrete"),
    CONSUMABLES("Consumables");

    private final String title;

    BillGroup(String title) {
        this.title = title;
    }

    /** The heading. */
    public String title() {
        return title;
    }

    /** Whether its lines are paid for; the pieces of the cut list are paid for as the bars they come from. */
    public boolean isBought() {
        return this != PIECES;
    }
}
