package org.baywright.model.takeoff;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.baywright.model.geometry.Solid;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Place;
import org.baywright.model.parts.Shed;

/**
 * Fillet welds of the shed: 6 mm all round the member on each of its end plates and
 * round the brackets of a lifting beam, 5 mm on both sides of each cleat, or
 * as engineer. Common practice, no source.
 *
 * @param sixM metres of 6 mm fillet
 * @param fiveM metres of 5 mm fillet
 */
public record Welds(double sixM, double fiveM) {
    /**
     * Deposit to electrode: 1.15 for the rounded bead, 0.60 of a stick reaches the weld, 15 % for tacks and repairs.
     *
     * @source calculating filler metal consumption: stick 0.59 to 0.66, stub included; tacks: common practice
     */
    private static final double ELECTRODE = 1.15 / 0.60 * 1.15;

    /** Plates that stand on the end of a member. */
    private static final Set<PartKind> END_PLATES = EnumSet.of(
            PartKind.BASE_PLATE, PartKind.CAP_PLATE, PartKind.KNEE_PLATE, PartKind.APEX_PLATE, PartKind.LEAN_TO_PLATE);

    private static final Set<PartKind> CLEATS = EnumSet.of(
            PartKind.PURLIN_CLEAT,
            PartKind.GIRT_CLEAT,
            PartKind.BRACE_CLEAT,
            PartKind.MULLION_CLEAT,
            PartKind.LIFTING_PLATE);

    /** Members that end on a plate. */
    private static final Set<PartKind.Group> ENDED = EnumSet.of(PartKind.Group.FRAME, PartKind.Group.WALL);

    /** Of a shed. */
    public static Welds of(Shed shed) {
        List<End> ends = new ArrayList<>();
        shed.parts().stream()
                .filter(p -> p.kind().isMember() && ENDED.contains(p.kind().group()))
                .forEach(p -> p.places().forEach(place -> add(p.solid(), place, ends)));
        double six = 0;
        double five = 0;
        for (Part part : shed.parts()) {
            if (part.kind() == PartKind.LIFTING_BRACKET) {
                six += part.places().stream().mapToDouble(p -> bracket(part, p)).sum();
            } else if (END_PLATES.contains(part.kind())) {
                six += part.places().stream().mapToDouble(p -> nearest(p, ends)).sum();
            } else if (CLEATS.contains(part.kind())) {
                five += 2 * foot(part) * part.quantity();
            }
        }
        return new Welds(six / 1000, five / 1000);
    }

    /** A member's end in the building, and how far it is round the cut. */
    private record End(Vec3 at, double round) {}

    private static void add(Solid solid, Place place, List<End> ends) {
        Vec2 axis = new Vec2(0, 0);
        ends.add(new End(
                place.placement().toWorld(solid.startStation(axis), 0, 0),
                round(solid.startRing(solid.profile().outline()))));
        ends.add(new End(
                place.placement().toWorld(solid.endStation(axis), 0, 0),
                round(solid.endRing(solid.profile().outline()))));
    }

    private static double round(List<Vec3> ring) {
        double sum = 0;
        for (int i = 0; i < ring.size(); i++) {
            sum += ring.get(i).distance(ring.get((i + 1) % ring.size()));
        }
        return sum;
    }

    /** A bracket on a column is welded at its root, one that hangs from a rafter at both ends. */
    private static double bracket(Part part, Place place) {
        double root = round(part.solid().startRing(part.solid().profile().outline()));
        double top = round(part.solid().endRing(part.solid().profile().outline()));
        return place.placement().along().z() > 0.5 ? root + top : root;
    }

    private static double nearest(Place plate, List<End> ends) {
        Vec3 at = plate.placement().origin();
        return ends.stream()
                .min(Comparator.comparingDouble(e -> e.at().distance(at)))
                .map(End::round)
                .orElse(0.0);
    }

    /** A cleat is welded along its shorter side. */
    private static double foot(Part cleat) {
        return Math.min(cleat.solid().profile().depth(), cleat.solid().profile().width());
    }

    /**
     * Steel in a metre of fillet, kg: half of the leg squared.
     *
     * @source calculating filler metal consumption: area = leg²/2
     */
    public static double depositKgPerM(double leg) {
        return leg * leg / 2 * 7.85e-3;
    }

    /** Electrodes to weld it all by hand. */
    public double electrodeKg() {
        return (sixM * depositKgPerM(6) + fiveM * depositKgPerM(5)) * ELECTRODE;
    }
}
