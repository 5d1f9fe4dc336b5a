package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;
import org.baywright.model.catalogue.SheetProfile;
import org.baywright.model.cladding.Building;
import org.baywright.model.cladding.Flashing;
import org.baywright.model.cladding.GutterRun;
import org.baywright.model.cladding.Surface;
import org.baywright.model.definition.RoofWater;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Profile;
import org.baywright.model.geometry.Solid;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Place;
import org.baywright.model.parts.Shed;
import org.baywright.render.view.Item;
import org.baywright.render.view.ThinLine;

/** Puts a building together as it is seen from outside. */
final class Envelopes {
    /** Ribs closer than this on paper run together. Millimetres. */
    private static final double LEAST_RIBS = 1.1;

    /** A barge and a corner flashing cover so much of the wall. */
    private static final double FLASHED = 100;

    private static final double PIPE_OFF = 20;

    private Envelopes() {}

    /**
     * A building with its envelope, or its bare frame.
     *
     * @param scale building millimetres to a millimetre of paper, for the ribs
     * @param shown the steel to show
     */
    static Scene scene(Building building, double scale, BiPredicate<Part, Place> shown) {
        Shed shed = building.shed();
        if (!shed.definition().envelope().isFull()) {
            return new Scene(Steelwork.items(shed, shown), List.of(), List.of());
        }
        List<Item> items =
                new ArrayList<>(Steelwork.items(shed, (part, place) -> isSeen(part) && shown.test(part, place)));
        List<Item> blinds = new ArrayList<>();
        List<ThinLine> lines = new ArrayList<>();
        boolean open = isOpen(shed);
        for (Surface surface : building.cladding().surfaces()) {
            SheetedPlane plane = new SheetedPlane(surface);
            blinds.addAll(plane.blinds());
            lines.addAll(plane.edges());
            lines.addAll(plane.ribs(every(surface.profile(), scale)));
            if (open && surface.role() == Surface.Role.WALL) {
                lines.addAll(plane.ribsInside(every(surface.profile(), scale)));
            }
        }
        leaves(shed, open, blinds, lines);
        building.cladding().gutters().forEach(g -> gutter(building, g, items));
        building.cladding().flashings().forEach(f -> flashing(building, f, lines));
        return new Scene(items, blinds, lines);
    }

    /** Whether a bay of some wall is left open, so that the inside of others may be seen. */
    private static boolean isOpen(Shed shed) {
        return shed.wallCovers().size()
                < shed.walls().stream().mapToInt(wall -> wall.bays().size()).sum();
    }

    /** One rib in so many is drawn at a scale. */
    static int every(SheetProfile profile, double scale) {
        return (int) Math.max(1, Math.ceil(LEAST_RIBS * scale / profile.ribPitch()));
    }

    /** What of the steel can be seen from outside, through open bays and under open roofs. */
    private static boolean isSeen(Part part) {
        return switch (part.kind().group()) {
            case FRAME, WALL, LIFTING -> true;
            case PLATES -> part.kind() == PartKind.BASE_PLATE || part.kind() == PartKind.CAP_PLATE;
            case BRACING -> part.kind() == PartKind.BRACE;
            case ROWS -> part.kind() == PartKind.PURLIN;
            case CLEATS -> false;
        };
    }

    private static void leaves(Shed shed, boolean open, List<Item> blinds, List<ThinLine> lines) {
        var walls = shed.definition().envelope().walls();
        double girts = walls.girts().flush() ? 0 : walls.girts().member().depth();
        double out = girts
                + shed.definition().envelope().sheeting().walls().profile().depth();
        shed.openings().stream()
                .filter(o -> !o.isWholeBay())
                .map(o -> new Leaf(o, out))
                .forEach(leaf -> {
                    blinds.addAll(leaf.blinds());
                    lines.addAll(leaf.lines());
                    if (open) {
                        lines.addAll(leaf.linesInside());
                    }
                });
    }

    private static void gutter(Building building, GutterRun run, List<Item> items) {
        RoofWater water = building.shed().definition().envelope().roofWater();
        double depth = water.gutter().depth();
        double width = water.gutter().width();
        int out = -run.slope().line().inward();
        Vec3 middle = run.from().plus(new Vec3(out * width / 2, 0, -depth / 2));
        Solid box = Solid.square(Profile.rectangle(depth, width), 0, run.length());
        items.add(new Item(Scene.SKIN, box, Placement.of(middle, run.to().minus(run.from()), Vec3.UP)));
        double side = Math.sqrt(water.downpipe().areaMm2());
        for (Vec3 pipe : run.downpipes()) {
            double x = pipe.x() + out * (PIPE_OFF + side / 2);
            double foot = run.foot(building.shed(), pipe);
            double length = pipe.z() - depth - foot;
            if (length > 1) {
                Placement at = Placement.of(new Vec3(x, pipe.y(), foot), Vec3.UP, Vec3.ACROSS);
                items.add(new Item(Scene.SKIN, Solid.square(Profile.rectangle(side, side), 0, length), at));
            }
        }
    }

    /** The free edges of barges and corners, just outside the sheets they cover. */
    private static void flashing(Building building, Flashing flashing, List<ThinLine> lines) {
        double length = building.shed().setOut().length();
        double span = building.shed().setOut().span();
        double rib = building.shed()
                        .definition()
                        .envelope()
                        .sheeting()
                        .walls()
                        .profile()
                        .depth()
                + 3;
        for (Flashing.Run run : flashing.runs()) {
            Vec3 from = run.from();
            Vec3 to = run.to();
            double outY = from.y() < length / 2 ? -1 : 1;
            double outX = from.x() < span / 2 ? -1 : 1;
            switch (flashing.kind()) {
                case BARGE -> add(from, to, new Vec3(0, outY, -FLASHED), lines);
                case CORNER -> {
                    add(from, to, new Vec3(-outX * FLASHED, outY * rib, 0), lines);
                    add(from, to, new Vec3(outX * rib, -outY * FLASHED, 0), lines);
                }
                default -> {}
            }
        }
    }

    private static void add(Vec3 from, Vec3 to, Vec3 step, List<ThinLine> lines) {
        lines.add(new ThinLine(from.plus(step), to.plus(step), Scene.SKIN));
    }
}
