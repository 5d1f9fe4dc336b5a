package org.baywright.model.takeoff;

/** The parts of a bill, in the order a merchant and a fabricator read them. */
public enum BillGroup {
    STOCK("Steel", "Steel to buy, in stock lengths"),
    PIECES("Cut list", "Cut list: pieces cut from the steel above"),
    PLATES("Plates", "Plates, cut and drilled"),
    ANCHORS("Anchors", "Anchors"),
    ROWS("Purlins and girts", "Purlins and girts, rolled to length"),
    SHEETS("Sheets", "Sheets, longest first"),
    FLASHINGS("Flashings", "Flashings"),
    ROOF_WATER("Roof water", "Gutters and downpipes"),
    FIXINGS("Fixings", "Fixings"),
    OPENINGS("Doors and windows", "Doors and windows"),
    INSULATION("Insulation", "Insulation"),
    CONCRETE("Concrete", "Concrete"),
    CONSUMABLES("Consumables", "Consumables");

    private final String name;
    private final String title;

    BillGroup(String name, String title) {
        this.name = name;
        this.title = title;
    }

    /** In a word or two, as a tab of a workbook. */
    public String shortTitle() {
        return name;
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
