package org.baywright.model.takeoff;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.baywright.model.catalogue.BarSection;
import org.baywright.model.catalogue.BeamSection;
import org.baywright.model.catalogue.ColdFormedSection;
import org.baywright.model.definition.Member;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.parts.Hole;
import org.baywright.model.parts.Material;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Place;
import org.baywright.model.parts.Shed;

/**
 * Bolts with nut and washers, as long as what they hold together asks.
 *
 * <p>M12 4.6/S for purlins and girts, M16 8.8/S for plates and braces: common practice, no source; or as engineer.
 */
final class BoltOrder {
    private static final double SPARE = 0.05;
    private static final int BOX = 25;

    /** A hole is so much larger than its bolt in a plate. Common practice: 18 for M16. */
    private static final double CLEARANCE = 2;

    /** Thickness of a plate washer. @source at least 8 over a long slot: AS 4100 14.3.5 (from memory) */
    private static final double WASHER = 8;

    /** Holes no further apart along a row are one, and so far beside its middle they lie in it. */
    private static final double SAME_HOLE = 1;

    private static final double IN_ROW = 160;

    private static final String ROWS = "M12 4.6/S";
    private static final String FRAMES = "M16 8.8/S";

    /** A bolt with its length, and what it holds together. */
    private record Bolt(String name, double grip) {}

    private final List<BoltUse> uses = new ArrayList<>();
    private final Shed shed;

    /** Holes of the ends of bridging. */
    private final Cells bridged = new Cells();

    private BoltOrder(Shed shed) {
        this.shed = shed;
        for (Part plate : shed.parts(PartKind.BRIDGING_CLEAT)) {
            Vec2 hole = plate.holes().get(0).at();
            plate.places().forEach(p -> bridged.add(p.placement().toWorld(0, hole.x(), hole.y())));
        }
    }

    static List<BillLine> lines(Shed shed) {
        BoltOrder order = filled(shed);
        List<BillLine> lines = new ArrayList<>(order.lines());
        lines.addAll(order.washers());
        return lines;
    }

    static List<BoltUse> uses(Shed shed) {
        return filled(shed).uses;
    }

    private static BoltOrder filled(Shed shed) {
        BoltOrder order = new BoltOrder(shed);
        order.rows(PartKind.PURLIN, PartKind.PURLIN_CLEAT);
        order.rows(PartKind.GIRT, PartKind.GIRT_CLEAT);
        order.bridging();
        order.flyBraces();
        order.apex();
        order.braces();
        order.mullions();
        return order;
    }

    private List<BillLine> lines() {
        Map<String, Integer> count = new LinkedHashMap<>();
        Map<String, Set<String>> marks = new HashMap<>();
        for (BoltUse use : uses) {
            count.merge(use.bolt(), use.count(), Integer::sum);
            marks.computeIfAbsent(use.bolt(), k -> new LinkedHashSet<>()).addAll(use.marks());
        }
        List<BillLine> lines = new ArrayList<>();
        count.forEach((bolt, net) -> {
            int order = Packs.count(net, SPARE, BOX);
            lines.add(BillLine.counted(
                    BillGroup.FIXINGS,
                    BillItem.of(
                            "bolt " + bolt,
                            "galvanised, with nut and washer",
                            List.copyOf(marks.get(bolt)),
                            order / BOX + (order == BOX ? " box of " : " boxes of ") + BOX),
                    net,
                    order));
        });
        return lines;
    }

    private void add(Bolt bolt, int n, List<Part> parts) {
        if (n > 0) {
            List<String> marks = parts.stream().map(Part::mark).toList();
            uses.add(new BoltUse(bolt.name, parts.get(0).kind(), marks, bolt.grip, n));
        }
    }

    /** Two bolts at every place where rows are punched, lapped lengths sharing them; else one at each cleat's hole. */
    private void rows(PartKind kind, PartKind cleat) {
        List<Part> rows = shed.parts(kind);
        List<Part> punched = rows.stream().filter(p -> !p.punched().isEmpty()).toList();
        double plate = thickest(cleat);
        if (punched.isEmpty()) {
            add(size(ROWS, 12, plate + thickness(rows)), holes(shed.parts(cleat)), shed.parts(cleat));
            return;
        }
        Spots spots = new Spots();
        for (Part part : punched) {
            part.places()
                    .forEach(place -> part.punched().stream()
                            .filter(at -> !isForBridging(place.placement(), at))
                            .forEach(at -> spots.add(place.placement().toWorld(at, 0, 0))));
        }
        add(size(ROWS, 12, plate + 2 * thickness(punched)), 2 * spots.count(), punched);
    }

    /** Whether a pair of holes is there for bridging, whose plate lies on that web and takes one bolt. */
    private boolean isForBridging(Placement row, double at) {
        return bridged.near(row.toWorld(at, 0, 0)).anyMatch(hole -> {
            Vec3 off = row.toLocal(hole);
            return Math.abs(off.x() - at) < SAME_HOLE && Math.hypot(off.y(), off.z()) < IN_ROW;
        });
    }

    /** One bolt through each end plate and the web; where bridging goes on past the row, both plates share it. */
    private void bridging() {
        List<Part> plates = shed.parts(PartKind.BRIDGING_CLEAT);
        List<Part> rows = new ArrayList<>(shed.parts(PartKind.PURLIN));
        rows.addAll(shed.parts(PartKind.GIRT));
        Spots bolts = new Spots();
        int holes = 0;
        for (Part plate : plates) {
            for (Place place : plate.places()) {
                Vec2 hole = plate.holes().get(0).at();
                bolts.add(place.placement().toWorld(plate.solid().axisLength() / 2, hole.x(), hole.y()));
                holes++;
            }
        }
        int shared = holes - bolts.count();
        double plate = thickest(PartKind.BRIDGING_CLEAT);
        add(size(ROWS, 12, 2 * plate + thickness(rows)), shared, plates);
        add(size(ROWS, 12, plate + thickness(rows)), bolts.count() - shared, plates);
    }

    private void flyBraces() {
        List<Part> braces = shed.parts(PartKind.FLY_BRACE);
        int each = braces.stream().mapToInt(Part::quantity).sum();
        add(size(ROWS, 12, thickness(braces) + thickness(shed.parts(PartKind.PURLIN))), each, braces);
        add(size(ROWS, 12, thickness(braces) + thickest(PartKind.FLY_BRACE_LUG)), each, braces);
    }

    /** A bolt at every pair of holes: two such plates are bolted together. */
    private void apex() {
        for (Part part : shed.parts(PartKind.APEX_PLATE)) {
            int holes = part.holes().size() * part.quantity();
            bolts(part, holes / 2, 2 * part.solid().axisLength());
        }
    }

    /**
     * A strut's end takes one bolt of a roof's cleat, right through the strut; every other hole takes a brace or its lug.
     * A wall's cleat has one hole.
     */
    private void braces() {
        double brace = thickness(shed.parts(lugged() ? PartKind.BRACE_LUG : PartKind.BRACE));
        for (Part cleat : shed.parts(PartKind.BRACE_CLEAT)) {
            int struts = cleat.holes().size() > 1 ? 1 : 0;
            double plate = cleat.solid().axisLength();
            double strut = plate + deepest(PartKind.STRUT);
            bolts(cleat, struts * cleat.quantity(), strut);
            bolts(cleat, (cleat.holes().size() - struts) * cleat.quantity(), plate + brace);
        }
    }

    private boolean lugged() {
        return !shed.parts(PartKind.BRACE_LUG).isEmpty();
    }

    private double deepest(PartKind kind) {
        return shed.parts(kind).stream()
                .mapToDouble(p -> p.solid().profile().depth())
                .max()
                .orElse(0);
    }

    /** Cleat, plate washer over its slot, and the mullion: a hollow one right through. */
    private void mullions() {
        Member upright = shed.definition().envelope().walls().mullions().member();
        for (Part cleat : shed.parts(PartKind.MULLION_CLEAT)) {
            double grip = cleat.solid().axisLength() + (isSlotted(cleat) ? WASHER : 0) + held(upright);
            bolts(cleat, cleat.holes().size() * cleat.quantity(), grip);
        }
    }

    private static double held(Member upright) {
        if (upright.section() instanceof BeamSection beam) {
            return beam.flangeThickness();
        }
        return upright.section() instanceof ColdFormedSection folded ? folded.thickness() : upright.depth();
    }

    private static boolean isSlotted(Part cleat) {
        return cleat.holes().stream().anyMatch(Hole::isSlot);
    }

    /** One over every slot, past its ends by half a bolt. @source covers the slot: AS 4100 14.3.5 (from memory) */
    private List<BillLine> washers() {
        List<BillLine> lines = new ArrayList<>();
        for (Part cleat : shed.parts(PartKind.MULLION_CLEAT)) {
            for (Hole slot :
                    cleat.holes().stream().filter(Hole::isSlot).limit(1).toList()) {
                int net = cleat.holes().size() * cleat.quantity();
                long length = Math.round(slot.length() + 2 * WASHER);
                lines.add(BillLine.counted(
                        BillGroup.FIXINGS,
                        BillItem.of(
                                "plate washer " + Math.round(WASHER) + "x40x" + length + ", hole "
                                        + Math.round(slot.diameter()),
                                "250 galvanised",
                                List.of(cleat.mark()),
                                "over the slot, hole in its middle"),
                        net,
                        net));
            }
        }
        return lines;
    }

    private void bolts(Part plate, int count, double grip) {
        double diameter = plate.holes().isEmpty() ? 16 : plate.holes().get(0).diameter() - CLEARANCE;
        String grade = diameter == 16 ? FRAMES : "M" + Math.round(diameter) + " 8.8/S";
        add(size(grade, diameter, grip), count, List.of(plate));
    }

    private static int holes(List<Part> plates) {
        return plates.stream().mapToInt(p -> p.holes().size() * p.quantity()).sum();
    }

    private double thickest(PartKind plates) {
        return shed.parts(plates).stream()
                .mapToDouble(p -> p.solid().axisLength())
                .max()
                .orElse(0);
    }

    private static double thickness(List<Part> parts) {
        return parts.stream().mapToDouble(BoltOrder::thickness).max().orElse(0);
    }

    private static double thickness(Part part) {
        if (part.material() instanceof Material.Bar bar) {
            if (bar.section() instanceof ColdFormedSection folded) {
                return folded.thickness();
            }
            // A bolt goes right through a hollow row.
            return bar.section() instanceof BarSection flat
                    ? flat.thickness()
                    : bar.section().width();
        }
        return part.solid().axisLength();
    }

    /**
     * Grip, washer, nut and two threads, up to the next 5 mm.
     *
     * @source nut 0.9 d high, washer 0.2 d, thread pitch about d/7: rounded from ISO 4032 and ISO 7089 (from memory)
     */
    static int length(double diameter, double grip) {
        double needed = grip + 0.2 * diameter + 0.9 * diameter + 2 * diameter / 7;
        return (int) Math.ceil(needed / 5 - 1e-9) * 5;
    }

    private static Bolt size(String grade, double diameter, double grip) {
        int space = grade.indexOf(' ');
        return new Bolt(grade.substring(0, space) + "x" + length(diameter, grip) + grade.substring(space), grip);
    }

    /** Places by the cube that they lie in. */
    private static final class Cells {
        private final Map<Vec3, List<Vec3>> cubes = new HashMap<>();

        private static Vec3 cube(Vec3 at) {
            // Adding zero makes a negative zero, which is another key, a plain one.
            return new Vec3(Math.floor(at.x() / IN_ROW), Math.floor(at.y() / IN_ROW), Math.floor(at.z() / IN_ROW))
                    .plus(Vec3.ZERO);
        }

        void add(Vec3 at) {
            cubes.computeIfAbsent(cube(at), k -> new ArrayList<>()).add(at);
        }

        Stream<Vec3> near(Vec3 at) {
            return IntStream.range(0, 27)
                    .mapToObj(i -> cube(at).plus(new Vec3(i % 3 - 1, i / 3 % 3 - 1, i / 9 - 1)))
                    .flatMap(c -> cubes.getOrDefault(c, List.of()).stream());
        }
    }

    /** Counts places that are not the same. */
    private static final class Spots {
        private static final double SAME = 20;
        private final Map<Vec3, List<Vec3>> cells = new HashMap<>();
        private int count;

        void add(Vec3 at) {
            // Adding zero makes a negative zero, which is another key, a plain one.
            Vec3 cell = new Vec3(Math.floor(at.x() / SAME), Math.floor(at.y() / SAME), Math.floor(at.z() / SAME))
                    .plus(Vec3.ZERO);
            for (int i = 0; i < 27; i++) {
                Vec3 near = cell.plus(new Vec3(i % 3 - 1, i / 3 % 3 - 1, i / 9 - 1));
                if (cells.getOrDefault(near, List.of()).stream().anyMatch(p -> p.distance(at) < SAME)) {
                    return;
                }
            }
            cells.computeIfAbsent(cell, k -> new ArrayList<>()).add(at);
            count++;
        }

        int count() {
            return count;
        }
    }
}
