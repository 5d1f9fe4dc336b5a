package org.baywright.render.view;

import java.util.ArrayList;
import java.util.List;
import org.baywright.model.catalogue.BeamSection;
import org.baywright.model.catalogue.HollowSection;
import org.baywright.model.definition.Side;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Plane;
import org.baywright.model.geometry.Profile;
import org.baywright.model.geometry.Solid;
import org.baywright.model.geometry.Vec3;

/** A gable shed with a lean-to on the left, made up for measuring and looking: not the model's. */
final class LongShed {
    private static final Profile COLUMN = HollowSection.asNzs1163("SHS 100x100x5", 100, 100, 5, "C350", "test")
            .profile();
    private static final Profile RAFTER = HollowSection.asNzs1163("RHS 150x100x4", 150, 100, 4, "C350", "test")
            .profile();
    private static final Profile BEAM = new BeamSection("200UB", 203, 133, 7.8, 5.8, 8.9, "300", "test").profile();
    private static final double SPAN = 9000;
    private static final double BAY = 4500;
    private static final double EAVE = 4000;
    private static final double SLOPE = Math.tan(Math.toRadians(15));
    private static final double LEAN_TO = 4000;

    private final List<Item> items = new ArrayList<>();

    static List<Item> of(int bays) {
        LongShed shed = new LongShed();
        for (int frame = 0; frame <= bays; frame++) {
            shed.addFrame(frame * BAY);
        }
        return shed.items;
    }

    private void addFrame(double y) {
        addColumn("C1", 50, y, EAVE - 200);
        addColumn("C1", SPAN - 50, y, EAVE - 200);
        addColumn("C2", -LEAN_TO + 50, y, 2500);
        addRafter("R1", RAFTER, 0, SPAN / 2, y, EAVE, SLOPE);
        addRafter("R2", RAFTER, SPAN / 2, SPAN, y, EAVE + SLOPE * SPAN / 2, -SLOPE);
        addRafter("R3", BEAM, -LEAN_TO, 0, y, 2800, 0.15);
        addPlate("P2", SPAN / 2, y, EAVE + SLOPE * SPAN / 2 - 260);
    }

    private void addColumn(String part, double x, double y, double height) {
        items.add(new Item(
                part, Solid.square(COLUMN, 10, height), Placement.of(new Vec3(x, y, 0), Vec3.UP, Vec3.ACROSS)));
        addPlate("P1", x, y, 0);
    }

    private void addPlate(String part, double x, double y, double z) {
        items.add(new Item(
                part,
                Solid.square(Profile.rectangle(250, 250), 0, 10),
                Placement.of(new Vec3(x, y, z), Vec3.UP, Vec3.ACROSS)));
    }

    /** Plumb cut at both ends, from one distance across to another. */
    private void addRafter(
            String part, Profile profile, double from, double to, double y, double height, double slope) {
        Placement place = Placement.of(new Vec3(from, y, height), new Vec3(1, 0, slope), new Vec3(-slope, 0, 1));
        double cos = place.along().x();
        double sin = -place.depth().x();
        Solid solid =
                new Solid(profile, new Plane(new Vec3(-cos, sin, 0), 0), new Plane(new Vec3(cos, -sin, 0), to - from));
        items.add(new Item(part, solid, place));
    }

    /** Times each view three times and prints the last: {@code LongShed [bays]}. */
    public static void main(String[] args) {
        List<Item> items = of(args.length > 0 ? Integer.parseInt(args[0]) : 200);
        System.out.printf("%d items%n", items.size());
        time("front", items, Projection.front());
        time("side", items, Projection.leftSide());
        time("plan", items, Projection.above());
        time("isometric", items, Pictorial.isometric(Side.LEFT));
        time("dimetric", items, Pictorial.dimetric(Side.LEFT));
    }

    private static void time(String name, List<Item> items, Projection view) {
        for (int run = 1; run <= 3; run++) {
            long start = System.nanoTime();
            int lines = HiddenLines.visible(items, view).size();
            long middle = System.nanoTime();
            ViewLines all = HiddenLines.all(items, view);
            long end = System.nanoTime();
            System.out.printf(
                    "%-10s run %d: visible %5d ms, with hidden %5d ms; %d and %d lines%n",
                    name,
                    run,
                    (middle - start) / 1_000_000,
                    (end - middle) / 1_000_000,
                    lines,
                    all.hidden().size());
        }
    }
}
