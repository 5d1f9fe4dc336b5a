package org.baywright.model.takeoff;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.baywright.model.geometry.Profile;
import org.baywright.model.geometry.Solid;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.parts.Assemblies;
import org.baywright.model.parts.Assembly;
import org.baywright.model.parts.Attached;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Place;
import org.baywright.model.parts.PlateRoom;
import org.baywright.model.parts.Shed;

/** Measures the welds of a shed: round the cut end that a plate closes, along both sides of a cleat. */
final class WeldFinder {
    private final Shed shed;
    private final Map<Weld, Integer> counts = new LinkedHashMap<>();

    WeldFinder(Shed shed) {
        this.shed = shed;
    }

    /** Joint by joint, the longest first. */
    List<Weld> welds() {
        Assemblies assemblies = Assemblies.of(shed);
        for (Part part : shed.parts()) {
            if (part.kind().isMember()) {
                assemblies.of(part).forEach(this::plates);
            } else {
                loose(part, assemblies.loose(part));
            }
        }
        shed.parts(PartKind.LIFTING_BRACKET).forEach(this::bracket);
        return counts.entrySet().stream()
                .map(e -> counted(e.getKey(), e.getValue()))
                .sorted(Comparator.comparing(Weld::joint)
                        .thenComparing(Comparator.comparingDouble(Weld::length).reversed()))
                .toList();
    }

    private static Weld counted(Weld one, int count) {
        return new Weld(one.joint(), one.plate(), one.member(), count, one.length(), one.leg());
    }

    private void plates(Assembly assembly) {
        for (Attached plate : assembly.welded()) {
            double length = plate.isOnAnEnd() ? round(assembly.member(), plate) : sides(plate.plate());
            add(plate.plate(), assembly.member().mark(), assembly.quantity(), length, plate.weldLeg());
        }
    }

    private void add(Part plate, String member, int count, double length, double leg) {
        counts.merge(new Weld(plate.kind(), plate.mark(), member, 1, length, leg), count, Integer::sum);
    }

    private static double round(Part member, Attached plate) {
        boolean first = plate.middle().x() < member.solid().axisLength() / 2;
        return first ? startRound(member.solid()) : endRound(member.solid());
    }

    private static double startRound(Solid solid) {
        return round(solid.startRing(solid.profile().outline()));
    }

    private static double endRound(Solid solid) {
        return round(solid.endRing(solid.profile().outline()));
    }

    private static double round(List<Vec3> ring) {
        double sum = 0;
        for (int i = 0; i < ring.size(); i++) {
            sum += ring.get(i).distance(ring.get((i + 1) % ring.size()));
        }
        return sum;
    }

    /** A cleat is welded along both faces of its shorter side. */
    private static double sides(Part cleat) {
        Profile face = cleat.solid().profile();
        return 2 * Math.min(face.depth(), face.width());
    }

    /** What touches no member that carries such plates is counted as a cleat on whatever the engineer shows. */
    private void loose(Part plate, int count) {
        if (count > 0) {
            add(plate, Weld.NO_MEMBER, count, sides(plate), 5);
        }
    }

    /** A bracket on a column is welded at its root, one that hangs from a rafter at both ends. */
    private void bracket(Part bracket) {
        for (Place place : bracket.places()) {
            boolean hung = place.placement().along().z() > 0.5;
            double root = startRound(bracket.solid());
            double length = hung ? root + endRound(bracket.solid()) : root;
            add(bracket, carrier(place, hung ? PartKind.RAFTER : PartKind.COLUMN), 1, length, PlateRoom.WELD_LEG);
        }
    }

    /** The member of a kind on the bracket's side of its frame; a skillion's one rafter lies over both. */
    private String carrier(Place bracket, PartKind kind) {
        Comparator<Part> nearer = Comparator.comparingInt(p ->
                p.places().stream().anyMatch(q -> q.frame() == bracket.frame() && q.side() == bracket.side()) ? 0 : 1);
        return shed.parts(kind).stream()
                .filter(p -> p.places().stream().anyMatch(q -> q.frame() == bracket.frame()))
                .min(nearer)
                .map(Part::mark)
                .orElse(Weld.NO_MEMBER);
    }
}
