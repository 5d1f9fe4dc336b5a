package org.baywright.model.definition;

import java.util.List;

/** The keys of what the shed stands on. Usual values are common practice, no source. */
public final class GroundKeys {
    /** {@code slab}: 125 mm for tractors, 600 x 600 x 300 under every base, 300 x 300 along the edge, joints at 6 m. */
    public static final KeyGroup SLAB = new KeyGroup(
            "slab",
            List.of(
                    Key.of("floor", "slab, or pads: concrete under the base plates only")
                            .usually("slab"),
                    Key.mm("thickness", 50, 1000, "of the slab").usually("125"),
                    Key.mm("beyond", 0, 5000, "from the columns' outside faces to the slab's edge")
                            .usually("150"),
                    Key.mm("padSide", 0, 5000, "square thickening or pad under a base plate; 0 for none")
                            .usually("600"),
                    Key.mm("padDepth", 0, 3000, "from the finished floor to the bottom of the thickening or pad")
                            .usually("300"),
                    Key.mm("edgeWidth", 0, 2000, "of the beam along the slab's edge; 0 for none")
                            .usually("300"),
                    Key.mm("edgeDepth", 0, 3000, "from the finished floor to the bottom of that beam")
                            .usually("300"),
                    Key.mm("joints", 0, 20_000, "most between sawn joints, and from them to string lines; 0 for none")
                            .usually("6000"),
                    Key.of("bars", "reinforcement on a grid; anchor holes are not checked against it when left out")));

    /** {@code slab.bars}: 40 cover and a gap of 10 to the drill are common practice, no source. */
    public static final KeyGroup BARS = new KeyGroup(
            "slab.bars",
            List.of(
                    Key.mm("diameter", 3, 40, "of the bars").must(),
                    Key.mm("spacing", 50, 1000, "middle to middle: one number, or [along, across] the building")
                            .must(),
                    Key.mm("offset", -5000, 5000, "first bar from the datum lines: one number, or [along, across]")
                            .must(),
                    Key.mm("cover", 10, 1000, "from the top of the slab to the upper bars")
                            .usually("40"),
                    Key.mm("close", 0, 100, "least clear gap between a hole and a bar")
                            .usually("10")));

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

    /** All of them. */
    static final List<KeyGroup> ALL = List.of(SLAB, BARS, SITE);

    private GroundKeys() {}
}
