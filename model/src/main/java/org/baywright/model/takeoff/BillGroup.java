package org.baywright.model.takeoff;

/** The parts of a bill, in the order a merchant and a fabricator read them. */
public enum BillGroup {
    STOCK("Steel to buy, in stock lengths"),
    PIECES("Cut list: pieces cut from the steel above"),
    PLATES("Plates, cut and drilled"),
    ANCHORS("Anchors");

    private final String title;

    BillGroup(String title) {
        this.title = title;
    }

    /** The heading. */
    public String title() {
        return title;
    }
}
