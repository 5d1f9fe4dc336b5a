package org.baywright.model.definition;

import java.util.OptionalDouble;
import java.util.Set;

/**
 * Reads plates and gaps.
 *
 * @param file the top of the file
 * @param knee a butted rafter ends at its column and cannot pass it
 */
record PlatesReader(GroupReader file, KneeJoint knee) {
    private static final Set<Integer> HOLES = Set.of(2, 4, 6, 8);
    private static final BasePlate BY_COLUMN = new BasePlate(
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            4,
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty());

    Plates read() {
        BasePlate base = base("basePlate", BY_COLUMN);
        return new Plates(
                base,
                base("leanToBasePlate", base),
                thin("capPlate"),
                thin("kneePlate"),
                thin("apexPlate"),
                file.number("groutGap"),
                overhang(),
                file.number("leanToGap"));
    }

    private double thin(String key) {
        return file.group(key, Keys.THIN_PLATE).number("thickness");
    }

    private BasePlate base(String key, BasePlate usual) {
        GroupReader group = file.group(key, Keys.BASE_PLATE);
        return new BasePlate(
                or(group, "width", usual.width()),
                or(group, "depth", usual.depth()),
                or(group, "thickness", usual.thickness()),
                holes(group, usual.holes()),
                or(group, "gaugeX", usual.gaugeX()),
                or(group, "gaugeY", usual.gaugeY()),
                or(group, "holeDiameter", usual.holeDiameter()));
    }

    private static OptionalDouble or(GroupReader group, String key, OptionalDouble usual) {
        OptionalDouble given = group.numberIfGiven(key);
        return given.isPresent() ? given : usual;
    }

    private static int holes(GroupReader group, int usual) {
        int holes = (int) group.numberIfGiven("holes").orElse(usual);
        if (group.given("holes").isPresent() && !HOLES.contains(holes)) {
            String message = "'" + holes + "' was read; allowed: 2, 4, 6, 8";
            group.findings().error("not-a-choice", group.where("holes"), message, "write an even number from 2 to 8");
        }
        return holes;
    }

    private double overhang() {
        double overhang = file.number("rafterOverhang");
        if (overhang > 0 && knee == KneeJoint.BUTTED) {
            String message =
                    NumberText.plain(overhang) + " was read; a butted rafter ends at its column, so it must be 0";
            file.findings()
                    .error("overhang-butted", file.where("rafterOverhang"), message, "write 0, or kneeJoint: seated");
        }
        return overhang;
    }
}
