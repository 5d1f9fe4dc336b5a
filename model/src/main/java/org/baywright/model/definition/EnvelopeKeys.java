package org.baywright.model.definition;

import java.util.List;

/**
 * The keys of what goes on the frame. Where no other source is named, usual values are common practice without a
 * source; usual sections are a place to start from, not a design.
 */
public final class EnvelopeKeys {
    /** {@code purlins}. */
    public static final KeyGroup PURLINS = new KeyGroup(
            "purlins",
            List.of(
                    Key.of("section", "C, Z, top hat or hollow; by the longest bay when left out"),
                    Key.mm("spacing", 200, 3000, "most between rows").usually("1200"),
                    Key.mm("endSpacing", 200, 3000, "most in the first and last space of a slope; 900 when left out"),
                    Key.of("endRule", "asGiven, or twoThirds: the end spaces at most two thirds of spacing")
                            .usually("asGiven"),
                    Key.mm("fromRidge", 20, 1000, "from the ridge along the slope to the first row")
                            .usually("150"),
                    Key.mm("fromEave", 0, 500, "from the sheet's lower end to the last row")
                            .usually("75"),
                    Key.number("lap", 0, 50, Range.Unit.PERCENT, "of a bay that a Z laps over a frame, both sides")
                            .usually("15"),
                    Key.count("bridging", 0, 5, "rows of bridging in a bay; by its length when left out")));

    /** {@code girts}. */
    public static final KeyGroup GIRTS = new KeyGroup(
            "girts",
            List.of(
                    Key.of("section", "C, Z, top hat or hollow; by the longest bay when left out"),
                    Key.mm("spacing", 200, 3000, "most between rows").usually("1500"),
                    Key.mm("fromFloor", 0, 1000, "height of the lowest row").usually("150"),
                    Key.of("place", "outside the columns, or flush with their outside face")
                            .usually("outside")));

    /** {@code mullions}. */
    public static final KeyGroup MULLIONS = new KeyGroup(
            "mullions",
            List.of(
                    Key.of("section", "hollow, beam or C").usually("SHS 100x100x4"),
                    Key.of("turned", "true when its second dimension stands square to the wall")
                            .usually("false"),
                    Key.mm("spacing", 500, 10_000, "most between uprights of an end wall")
                            .usually("4000"),
                    Key.mm("slipGap", 0, 100, "under the rafter").usually("25")));

    /** {@code bracing}. */
    public static final KeyGroup BRACING = new KeyGroup(
            "bracing",
            List.of(
                    Key.of("section", "rod, flat or angle").usually("ROD 16"),
                    Key.of("bays", "braced bays, such as [1, 5], or none; an end bay and every fifth when left out"),
                    Key.of("flyBraces", "angle or flat").usually("EA 50x50x5"),
                    Key.count(
                            "flyBraceEvery",
                            0,
                            20,
                            "at every how many purlins; 0 for none; 2 on a beam and 0 on a hollow rafter when left out")));

    /** {@code roofSheets}. */
    public static final KeyGroup ROOF_SHEETS = new KeyGroup(
            "roofSheets",
            List.of(
                    Key.of("profile", "a sheet of the catalogue").usually("corrugated 0.42"),
                    Key.of("colour", "finish, in words").usually(""),
                    Key.mm("intoGutter", 0, 200, "past the outer face of the gutter's support")
                            .usually("50"),
                    Key.mm("ridgeGap", 0, 200, "from the ridge line to the end of each sheet")
                            .usually("25"),
                    Key.count("translucentEvery", 0, 100, "one sheet in so many lets light in; 0 for none")
                            .usually("0"),
                    Key.of("blanket", "true for insulation blanket on safety mesh")
                            .usually("false")));

    /** {@code wallSheets}. */
    public static final KeyGroup WALL_SHEETS = new KeyGroup(
            "wallSheets",
            List.of(
                    Key.of("profile", "a sheet of the catalogue").usually("corrugated 0.42"),
                    Key.of("colour", "finish, in words").usually(""),
                    Key.mm("belowFloor", 0, 300, "how far sheets run below the floor")
                            .usually("50"),
                    Key.of("rake", "stepped: each sheet its own length; banded: at most four lengths")
                            .usually("stepped"),
                    Key.of("leanToWalls", "true when the outer and end walls of lean-tos are sheeted")
                            .usually("false"),
                    Key.of("behindLeanTos", "true when a main wall is sheeted below a lean-to's roof")
                            .usually("false")));

    /** {@code roofWater}. */
    public static final KeyGroup ROOF_WATER = new KeyGroup(
            "roofWater",
            List.of(
                    Key.number("rainfall", 10, 500, Range.Unit.MM_PER_H, "five-minute intensity, once in 20 years")
                            .usually("150"),
                    Key.of("gutter", "name; one of the catalogue, or any with its dimensions")
                            .usually("box gutter 125x100"),
                    Key.mm("gutterDepth", 30, 500, "of a gutter of your own"),
                    Key.mm("gutterWidth", 30, 1000, "of a gutter of your own"),
                    Key.number(
                            "gutterArea",
                            500,
                            500_000,
                            Range.Unit.MM2,
                            "that water may fill; depth by width when left out"),
                    Key.number("fall", 50, 2000, Range.Unit.NUMBER, "the gutter falls one in so many")
                            .usually("500"),
                    Key.of("downpipe", "name; one of the catalogue, or any with downpipeArea")
                            .usually("downpipe 100x75"),
                    Key.number("downpipeArea", 500, 500_000, Range.Unit.MM2, "clear area of a downpipe of your own")));

    /** An entry of {@code openings}. */
    public static final KeyGroup OPENINGS = new KeyGroup(
            "openings",
            List.of(
                    Key.of("type", "rollerDoor, slidingDoor, door, window or open")
                            .must(),
                    Key.of("wall", "front, rear, left or right, seen from frame 1")
                            .must(),
                    Key.of("leanTo", "left or right: in a wall of the lean-to on that side"),
                    Key.count(
                            "bay",
                            1,
                            200,
                            "bay of a side wall; in an end wall of a lean-to any bay of it, to tell two on one side"),
                    Key.mm("width", 200, 30_000, "clear; by the type when left out"),
                    Key.mm("height", 200, 20_000, "clear; by the type when left out"),
                    Key.mm("sill", 0, 10_000, "above the floor; 900 for a window, else 0, when left out"),
                    Key.mm(
                            "offset",
                            0,
                            60_000,
                            "from the bay's lower frame line, or the end wall's left line; centred when left out")));

    /** {@code liftingBeam}. */
    public static final KeyGroup LIFTING_BEAM = new KeyGroup(
            "liftingBeam",
            List.of(
                    Key.of("section", "beam or hollow").usually("250UB31.4"),
                    Key.of("bracket", "of the brackets that carry it, beam or hollow")
                            .usually("SHS 75x75x4"),
                    Key.of("run", "across: from column to column of one frame; along: under several frames")
                            .usually("across"),
                    Key.count("fromFrame", 1, 201, "the frame it spans at, or the first of several")
                            .must(),
                    Key.count("toFrame", 1, 201, "the last frame of a beam along; the next one when left out"),
                    Key.mm("offset", 0, 60_000, "from line A, of a beam along; the middle when left out"),
                    Key.mm("underside", 500, 20_000, "of the beam, above the floor")
                            .must(),
                    Key.mm("hookDrop", 0, 5000, "from the underside to the hook at its highest")
                            .usually("600")));

    /** Every group. */
    static final List<KeyGroup> ALL =
            List.of(PURLINS, GIRTS, MULLIONS, BRACING, ROOF_SHEETS, WALL_SHEETS, ROOF_WATER, OPENINGS, LIFTING_BEAM);

    private EnvelopeKeys() {}
}
