package org.baywright.model.definition;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.baywright.model.geometry.Vec2;

/** Reads what the shed stands on. */
record GroundReader(GroupReader file) {
    private static final int FEWEST = 3;
    private static final String POINT = "two numbers [east, north] in millimetres";

    Ground read() {
        return new Ground(
                slab(file.group("slab", GroundKeys.SLAB)),
                file.given("site").map(s -> site(GroupReader.of(s, GroundKeys.SITE, file.values()))));
    }

    private Slab slab(GroupReader group) {
        Slab slab = new Slab(
                group.choice("floor", Floor.class),
                group.number("thickness"),
                group.number("beyond"),
                group.number("padSide"),
                group.number("padDepth"),
                group.number("edgeWidth"),
                group.number("edgeDepth"),
                group.number("joints"),
                group.given("bars").map(b -> bars(GroupReader.of(b, GroundKeys.BARS, file.values()), group)));
        if (slab.isPads()) {
            tellPads(group, slab);
        }
        return slab;
    }

    private static void tellPads(GroupReader group, Slab slab) {
        if (slab.padSide() == 0 || slab.padDepth() == 0) {
            String key = slab.padSide() == 0 ? "padSide" : "padDepth";
            String message = "0 was read; without a slab every base plate needs a pad";
            group.findings().error("no-concrete", group.where(key), message, "give padSide and padDepth");
        }
        if (slab.bars().isPresent()) {
            String message = "bars on a grid were read; there is no slab for them to run through";
            group.findings()
                    .error("bars-in-pads", group.where("bars"), message, "leave out bars, or write floor: slab");
        }
    }

    private static SlabBars bars(GroupReader group, GroupReader slab) {
        double[] spacing = alongAndAcross(group, "spacing");
        double[] offset = alongAndAcross(group, "offset");
        SlabBars bars = new SlabBars(
                group.number("diameter"),
                new SlabBars.Row(spacing[0], offset[0]),
                new SlabBars.Row(spacing[1], offset[1]),
                group.number("cover"),
                group.number("close"));
        double lowest = bars.cover() + 2 * bars.diameter();
        double thickness = slab.number("thickness");
        if (lowest > thickness) {
            String message = "bars both ways under that cover reach " + NumberText.plain(lowest)
                    + " mm down; the slab is " + NumberText.plain(thickness) + " mm thick";
            group.findings().error("bars-below-slab", group.where("cover"), message, "lessen cover or diameter");
        }
        return bars;
    }

    /** A number for both ways, or one for each. */
    private static double[] alongAndAcross(GroupReader group, String key) {
        Range range = GroundKeys.BARS.key(key).range().orElseThrow();
        Optional<Located> found = group.value(key);
        if (found.isPresent() && found.get() instanceof Located.Sequence list) {
            if (list.items().size() != 2) {
                String message = "a list of " + list.items().size() + " was read; expected are two, [along, across]";
                group.findings().error("not-a-pair", list.where(), message, "write one number, or two in brackets");
                return new double[] {range.high(), range.high()};
            }
            return list.items().stream()
                    .mapToDouble(item -> group.values().number(item, range).orElse(range.high()))
                    .toArray();
        }
        double both = found.map(f -> group.values().number(f, range))
                .orElse(OptionalDouble.empty())
                .orElse(range.high());
        return new double[] {both, both};
    }

    private static Site site(GroupReader group) {
        Range range = GroundKeys.SITE.key("boundary").range().orElseThrow();
        List<Vec2> boundary =
                group.value("boundary").map(b -> ring(group, b, range)).orElse(List.of());
        Vec2 corner = group.value("corner").map(c -> point(group, c, range)).orElse(new Vec2(0, 0));
        List<List<Vec2>> neighbours = group.list("neighbours", "buildings, each a list of corners").stream()
                .map(n -> ring(group, n, range))
                .toList();
        return new Site(boundary, corner, group.number("turn"), group.number("north"), neighbours);
    }

    private static List<Vec2> ring(GroupReader group, Located found, Range range) {
        List<Located> corners = group.values().list(found, "corners, each " + POINT);
        if (found instanceof Located.Sequence && corners.size() < FEWEST) {
            String message = corners.size() + " corners were read; at least three are needed";
            group.findings().error("too-few-corners", found.where(), message, "give every corner in order");
        }
        return corners.stream().map(c -> point(group, c, range)).toList();
    }

    private static Vec2 point(GroupReader group, Located found, Range range) {
        List<Located> parts = group.values().list(found, POINT);
        if (found instanceof Located.Sequence && parts.size() != 2) {
            String message = "a list of " + parts.size() + " was read; expected are " + POINT;
            group.findings().error("not-a-point", found.where(), message, "write " + POINT);
        }
        if (parts.size() != 2) {
            return new Vec2(0, 0);
        }
        OptionalDouble east = group.values().number(parts.get(0), range);
        OptionalDouble north = group.values().number(parts.get(1), range);
        return new Vec2(east.orElse(0), north.orElse(0));
    }
}
