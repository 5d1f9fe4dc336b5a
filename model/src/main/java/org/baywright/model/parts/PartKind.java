package org.baywright.model.parts;

/** What a part is in the building. Marks begin with the letters of the kind. */
public enum PartKind {
    COLUMN("column", "C", Group.FRAME),
    RAFTER("rafter", "R", Group.FRAME),
    LEAN_TO_COLUMN("lean-to column", "LC", Group.FRAME),
    LEAN_TO_RAFTER("lean-to rafter", "LR", Group.FRAME),
    MULLION("mullion", "M", Group.WALL),
    JAMB("jamb", "J", Group.WALL),
    HEADER("header", "H", Group.WALL),
    SILL("sill", "SL", Group.WALL),
    LIFTING_BEAM("lifting beam", "LB", Group.LIFTING),
    LIFTING_BRACKET("lifting beam bracket", "LK", Group.LIFTING),
    STRUT("strut purlin", "SP", Group.BRACING),
    BRACE("brace", "BR", Group.BRACING),
    FLY_BRACE("fly brace", "FB", Group.BRACING),
    PURLIN("purlin", "P", Group.ROWS),
    GIRT("girt", "G", Group.ROWS),
    BRIDGING("bridging", "BG", Group.ROWS),
    BASE_PLATE("base plate", "BP", Group.PLATES),
    CAP_PLATE("cap plate", "CP", Group.PLATES),
    KNEE_PLATE("knee plate", "KP", Group.PLATES),
    APEX_PLATE("apex plate", "AP", Group.PLATES),
    LEAN_TO_PLATE("lean-to plate", "EP", Group.PLATES),
    PURLIN_CLEAT("purlin cleat", "CL", Group.CLEATS),
    GIRT_CLEAT("girt cleat", "GC", Group.CLEATS),
    BRACE_CLEAT("brace cleat", "BC", Group.CLEATS),
    BRACE_LUG("brace lug", "BL", Group.CLEATS),
    FLY_BRACE_LUG("fly brace lug", "FL", Group.CLEATS),
    BRIDGING_CLEAT("bridging end plate", "BE", Group.CLEATS),
    MULLION_CLEAT("mullion cleat", "MC", Group.CLEATS),
    JAMB_CLEAT("jamb cleat", "JC", Group.CLEATS),
    LIFTING_PLATE("lifting beam plate", "LP", Group.LIFTING);

    /** What belongs together on a drawing and in a bill. */
    public enum Group {
        /** Columns and rafters. */
        FRAME,
        /** Uprights and trimmers of the walls. */
        WALL,
        /** A beam for a hoist and what carries it. */
        LIFTING,
        /** What keeps the building square. */
        BRACING,
        /** What carries the sheets. */
        ROWS,
        /** Plates of frames and mullions. */
        PLATES,
        /** Plates that take a row or a brace. */
        CLEATS
    }

    private final String label;
    private final String letters;
    private final Group group;

    PartKind(String label, String letters, Group group) {
        this.label = label;
        this.letters = letters;
        this.group = group;
    }

    /** The trade's word. */
    public String label() {
        return label;
    }

    /** What its marks begin with. */
    public String letters() {
        return letters;
    }

    /** What it belongs with. */
    public Group group() {
        return group;
    }

    /** Whether frames differ by it: what only goes on a frame does not make another type of it. */
    public boolean isOfFrame() {
        return group == Group.FRAME || group == Group.PLATES || group == Group.LIFTING;
    }

    /** Whether it goes onto a member in the shop: plates and cleats, and the short lengths that carry a lifting beam. */
    public boolean isWeldedOn() {
        return !isMember() || this == LIFTING_BRACKET;
    }

    /** True for a length of section, false for a plate. */
    public boolean isMember() {
        return ordinal() < BASE_PLATE.ordinal();
    }
}
