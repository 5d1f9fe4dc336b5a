package org.baywright.model.parts;

/** What a part is in the building. Marks begin with the letters of the kind. */
public enum PartKind {
    COLUMN("column", "C"),
    RAFTER("rafter", "R"),
    LEAN_TO_COLUMN("lean-to column", "LC"),
    LEAN_TO_RAFTER("lean-to rafter", "LR"),
    BASE_PLATE("base plate", "BP"),
    CAP_PLATE("cap plate", "CP"),
    KNEE_PLATE("knee plate", "KP"),
    APEX_PLATE("apex plate", "AP"),
    LEAN_TO_PLATE("lean-to plate", "EP");

    private final String label;
    private final String letters;

    PartKind(String label, String letters) {
        this.label = label;
        this.letters = letters;
    }

    /** The trade's word. */
    public String label() {
        return label;
    }

    /** What its marks begin with. */
    public String letters() {
        return letters;
    }

    /** True for a length of section, false for a plate. */
    public boolean isMember() {
        return ordinal() < BASE_PLATE.ordinal();
    }
}
