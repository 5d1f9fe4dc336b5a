package org.baywright.model.definition;

import java.util.List;

/** The keys of what the shed stands on. Usual values are common practice, no source. */
public final class GroundKeys {
    /** {@code slab}: 125 mm for tractors, 600 x 600 x 300 under every base. */
    public static final KeyGroup SLAB = new KeyGroup(
            "slab",
            List.of(
                    Key.mm("thickness", 50, 1000, "of the slab").usually("125"),
                    Key.mm("beyond", 0, 5000, "from the columns' outside faces to the slab's edge")
                            .usually("150"),
                    Key.mm("padSide", 0, 5000, "square thickening under a base plate; 0 for none")
                            .usually("600"),
                    Key.mm("padDepth", 0, 3000, "from the top of the slab to the bottom of the thickening")
                            .usually("300")));

    /** {@code site}: millimetres east and north of any point of reference, like every other length of the file. */
    public static final KeyGroup SITE = new KeyGroup(
            "site",
            List.of(
                    Key.mm("boundary", -10e6, 10e6, "corners in order, each [east, north] in millimetres")
                            .must(),
                    Key.mm("corner", -10e6, 10e6, "where line A meets frame 1, as [east, north] in millimetres")
                            .must(),
                    Key.degrees("turn", 0, 360, "bearing of the shed's length, from frame 1, clockwise from north")
                            .usually("0"),
                    Key.degrees("north", 0, 360, "of true north on paper, clockwise from up the sheet")
                            .usually("0"),
                    Key.mm("neighbours", -10e6, 10e6, "other buildings, each a list of corners")));

    /** Both groups. */
    static final List<KeyGroup> ALL = List.of(SLAB, SITE);

    private GroundKeys() {}
}
