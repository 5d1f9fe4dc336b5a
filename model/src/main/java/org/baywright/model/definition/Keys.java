package org.baywright.model.definition;

import java.util.List;
import java.util.stream.Stream;

/**
 * Every key of the definition file with its meaning, range and usual value. Reading, spelling and documentation all
 * come from these lists. The usual sections are a place to start from, not a design.
 */
public final class Keys {
    /** A member: a section's name alone, or these. */
    public static final KeyGroup MEMBER = new KeyGroup(
            "column, rafter, leanToColumn, leanToRafter",
            List.of(
                    Key.of("section", "name of a section from the catalogue or from sections"),
                    Key.of("turned", "true when its second dimension lies in the plane of the frame")
                            .usually("false")));

    /** An entry of {@code leanTos}. */
    public static final KeyGroup LEAN_TO = new KeyGroup(
            "leanTos",
            List.of(
                    Key.of("side", "left or right").must(),
                    Key.mm("width", 500, 30_000, "main column's outside face to outer column's outside face")
                            .must(),
                    Key.degrees("pitch", 0, 60, "its roof from level, falling away from the building")
                            .usually("5"),
                    Key.mm("drop", 0, 20_000, "its top of steel below the main eave line; 0 continues the roof")
                            .usually("300"),
                    Key.count("fromBay", 1, 200, "first bay it stands along; the first when left out"),
                    Key.count("toBay", 1, 200, "last bay it stands along; the last when left out")));

    /** An entry of {@code sections}. */
    public static final KeyGroup SECTION = new KeyGroup(
            "sections",
            List.of(
                    Key.of("name", "what members call it").must(),
                    Key.of("shape", "hollow, beam, c, z or topHat").must(),
                    Key.mm("depth", 20, 1500, "first dimension, in the plane of the frame")
                            .must(),
                    Key.mm("width", 20, 1500, "second dimension; flange of a C or Z, crown of a top hat")
                            .must(),
                    Key.mm("thickness", 0.4, 50, "wall of a hollow section; strip of a C, Z or top hat"),
                    Key.mm("lip", 2, 200, "of a C or Z; width of each foot of a top hat"),
                    Key.mm("flangeThickness", 1, 100, "flanges of a beam"),
                    Key.mm("webThickness", 1, 100, "web of a beam"),
                    Key.mm("rootRadius", 0, 50, "fillets of a beam").usually("0"),
                    Key.of("grade", "grade and standard it is ordered to").usually("as engineer")));

    /** An entry of {@code heavier}. */
    public static final KeyGroup HEAVIER = new KeyGroup(
            "heavier",
            List.of(
                    Key.of("frames", "frame numbers from 1, such as [2, 3]; or ends, interior or all")
                            .must(),
                    Key.of("side", "left, right or both").usually("both"),
                    Key.of("column", "column at these frames"),
                    Key.of("rafter", "rafter at these frames"),
                    Key.of("leanToColumn", "lean-to column at these frames"),
                    Key.of("leanToRafter", "lean-to rafter at these frames")));

    /** {@code basePlate} and {@code leanToBasePlate}. */
    public static final KeyGroup BASE_PLATE = new KeyGroup(
            "basePlate, leanToBasePlate",
            List.of(
                    Key.mm("width", 40, 2000, "across the building; by the column when left out"),
                    Key.mm("depth", 40, 2000, "along the building; by the column when left out"),
                    Key.mm("thickness", 6, 100, "of the plate; by the column when left out"),
                    Key.count("holes", 2, 8, "2, 4, 6 or 8; 4 when left out"),
                    Key.mm("gaugeX", 20, 2000, "between hole lines across the building; by the column when left out"),
                    Key.mm("gaugeY", 20, 2000, "between hole lines along the building; by the column when left out"),
                    Key.mm("holeDiameter", 6, 100, "holes in the plate; by the anchor when left out")));

    /** {@code capPlate}, {@code kneePlate} and {@code apexPlate}. */
    public static final KeyGroup THIN_PLATE = new KeyGroup(
            "capPlate, kneePlate, apexPlate",
            List.of(Key.mm("thickness", 0, 100, "of the plate; 0 leaves it out").usually("12")));

    /** {@code anchor}. */
    public static final KeyGroup ANCHOR = new KeyGroup(
            "anchor",
            List.of(
                    Key.of("size", "thread; one from the catalogue, or any when every figure is given")
                            .usually("M16"),
                    Key.mm("rodDiameter", 6, 64, "of the rod"),
                    Key.mm("holeDiameter", 6, 100, "of the hole in the concrete: the drill bit"),
                    Key.mm("embedment", 20, 2000, "depth of the hole in the concrete"),
                    Key.mm("minimumEdge", 0, 2000, "least distance from hole centre to concrete edge"),
                    Key.mm(
                            "minimumSpacing",
                            0,
                            2000,
                            "least distance between two holes; as minimumEdge when not known"),
                    Key.mm("minimumConcrete", 20, 3000, "least concrete thickness"),
                    Key.mm("plateHole", 6, 100, "hole in the plate for this anchor"),
                    Key.of(
                            "adhesive",
                            "the cartridge and its label's times; an example of one product when left out")));

    /** {@code anchor.adhesive}. Usual values are common practice, no source. */
    public static final KeyGroup ADHESIVE = new KeyGroup(
            "anchor.adhesive",
            List.of(
                    Key.number("cartridge", 50, 5000, Range.Unit.ML, "what one holds")
                            .usually("500"),
                    Key.number("priming", 0, 200, Range.Unit.ML, "what each new nozzle takes")
                            .usually("15"),
                    Key.of("cure", "list of the label's times by temperature of the concrete")));

    /** An entry of {@code anchor.adhesive.cure}. */
    public static final KeyGroup CURE = new KeyGroup(
            "anchor.adhesive.cure",
            List.of(
                    Key.number("concrete", -40, 60, Range.Unit.CELSIUS, "temperature of the concrete")
                            .must(),
                    Key.number("workable", 0.5, 1000, Range.Unit.MINUTES, "until the rod may not be moved")
                            .must(),
                    Key.number("dry", 0.05, 1000, Range.Unit.HOURS, "until it is cured in a dry hole")
                            .must(),
                    Key.number("wet", 0.05, 1000, Range.Unit.HOURS, "until it is cured in a wet hole")
                            .must()));

    /** {@code project}. */
    public static final KeyGroup PROJECT = new KeyGroup(
            "project",
            List.of(
                    Key.of("owner", "for the title block").usually(""),
                    Key.of("site", "address").usually(""),
                    Key.of("legalDescription", "lot and plan").usually(""),
                    Key.of("drawnBy", "who drew it").usually(""),
                    Key.of("date", "as it is to be printed").usually(""),
                    Key.of("revision", "letter or number").usually("A")));

    /** The top of the file. */
    public static final KeyGroup FILE = new KeyGroup(
            "",
            List.of(
                    Key.of("name", "what the shed is called").usually("Farm shed"),
                    Key.of("project", "what the title block says"),
                    Key.mm("span", 1000, 60_000, "out to out of columns, across the building")
                            .must(),
                    Key.count("bays", 1, 200, "how many bays; there is one frame more")
                            .must(),
                    Key.mm("baySpacing", 500, 20_000, "length of a bay: one number, or a list with one per bay")
                            .must(),
                    Key.mm("eaveHeight", 500, 20_000, "floor to top of rafter steel at the column's outside face")
                            .must(),
                    Key.degrees("roofPitch", 0, 60, "main roof from level").must(),
                    Key.of("roofShape", "gable or skillion; a skillion's low side is on the left")
                            .usually("gable"),
                    Key.of("kneeJoint", "seated or butted").usually("seated"),
                    Key.of("leanTos", "list of none, one or two lean-tos"),
                    Key.of("column", "main column").usually("SHS 100x100x5"),
                    Key.of("rafter", "main rafter").usually("RHS 200x100x5"),
                    Key.of("leanToColumn", "lean-to column").usually("SHS 100x100x4"),
                    Key.of("leanToRafter", "lean-to rafter").usually("RHS 150x100x4"),
                    Key.of("sections", "list of your own sections"),
                    Key.of("heavier", "list of frames with other sections"),
                    Key.of("basePlate", "under the main columns"),
                    Key.of("leanToBasePlate", "under the lean-to columns; as basePlate when left out"),
                    Key.of("capPlate", "on top of a column"),
                    Key.of("kneePlate", "between a butted rafter and its column"),
                    Key.of("apexPlate", "each, at the ridge"),
                    Key.mm("groutGap", 0, 100, "under the base plate").usually("20"),
                    Key.mm("rafterOverhang", 0, 2000, "of a seated rafter past the column's outside face, level")
                            .usually("0"),
                    Key.mm("leanToGap", 0, 100, "between main column and lean-to rafter, level")
                            .usually("10"),
                    Key.of("anchor", "at every hole of every base plate"),
                    Key.of("envelope", "full, or none for the bare frame").usually("full"),
                    Key.of("purlins", "roof rows"),
                    Key.of("girts", "wall rows"),
                    Key.of("mullions", "uprights of the end walls, and beside doors"),
                    Key.of("bracing", "crossed braces of roof and walls, and fly braces"),
                    Key.mm("longestSheet", 1000, 30_000, "longest sheet that is carried to the site")
                            .usually("12000"),
                    Key.of("roofSheets", "sheets of the roof"),
                    Key.of("wallSheets", "sheets of the walls"),
                    Key.of("roofWater", "gutters and downpipes"),
                    Key.of("openings", "list of doors, windows and open bays"),
                    Key.of("liftingBeam", "a beam for a hoist; none when left out"),
                    Key.of("slab", "the concrete, for quantities and drawings"),
                    Key.of("site", "the land around the shed; none when left out"),
                    Key.of("saw", "what the saw takes, and what bars come in")));

    /** Every group, the top of the file first. */
    public static final List<KeyGroup> ALL = Stream.of(
                    List.of(FILE, PROJECT, LEAN_TO, MEMBER, SECTION, HEAVIER, BASE_PLATE, THIN_PLATE),
                    List.of(ANCHOR, ADHESIVE, CURE),
                    EnvelopeKeys.ALL,
                    GroundKeys.ALL,
                    SawKeys.ALL)
            .flatMap(List::stream)
            .toList();

    private Keys() {}
}
