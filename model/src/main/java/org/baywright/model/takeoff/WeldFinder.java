package org.baywright.model.takeoff;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.baywright.model.geometry.Profile;
import org.baywright.model.geometry.Solid;
import org.baywright.model.parts.Assemblies;
import org.baywright.model.parts.Assembly;
import org.baywright.model.parts.Attached;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.PlateRoom;
import org.baywright.model.parts.Shed;
import org.baywright.model.parts.SiteJoints;

/** Measures the welds of a shed: round the cut end that a plate closes, along both sides of a cleat, and those on site. */
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
            if (part.kind().isWeldedOn()) {
                loose(part, assemblies.loose(part));
            } else {
                assemblies.of(part).forEach(this::shop);
            }
        }
        SiteJoints.of(shed).forEach(this::site);
        return counts.entrySet().stream()
                .map(e -> counted(e.getKey(), e.getValue()))
                .sorted(Comparator.comparing((Weld w) -> w.joint().group() == PartKind.Group.LIFTING)
                        .thenComparing(Weld::joint)
                        .thenComparing(Weld::seam)
                        .thenComparing(Comparator.comparingDouble(Weld::length).reversed()))
                .toList();
    }

    private static Weld counted(Weld one, int count) {
        return new Weld(one.joint(), one.plate(), one.member(), count, one.length(), one.leg(), one.seam());
    }

    private void add(Part piece, String to, int count, double length, double leg, Weld.Seam seam) {
        counts.merge(new Weld(piece.kind(), piece.mark(), to, 1, length, leg, seam), count, Integer::sum);
    }

    private void shop(Assembly assembly) {
        for (Attached piece : assembly.welded()) {
            if (piece.isOnABracket()) {
                onBracket(assembly, piece);
            } else {
                add(
                        piece.plate(),
                        piece.seat().orElse(assembly.member()).mark(),
                        assembly.quantity(),
                        length(assembly.member(), piece),
                        piece.weldLeg(),
                        piece.isOnAnEnd()
                                ? Weld.Seam.CUT_END
                                : piece.isWeldedRound() ? Weld.Seam.ROUND : Weld.Seam.SIDES);
            }
        }
    }

    private static double length(Part member, Attached piece) {
        if (piece.plate().kind() == PartKind.LIFTING_BRACKET) {
            return bracketRound(piece);
        }
        return piece.isOnAnEnd() ? round(member, piece) : sides(piece.plate());
    }

    private static double round(Part member, Attached plate) {
        boolean first = plate.middle().x() < member.solid().axisLength() / 2;
        return first ? member.solid().startRound() : member.solid().endRound();
    }

    /** A bracket lies on a column with its first end, and hangs from a rafter by its last. */
    private static double bracketRound(Attached bracket) {
        Solid solid = bracket.plate().solid();
        return bracket.isHung() ? solid.endRound() : solid.startRound();
    }

    /** The plate of a lifting beam: round the end of the bracket that hangs on it, or along the bracket that it lies on. */
    private void onBracket(Assembly assembly, Attached plate) {
        Part bracket = assembly.bracketUnder(plate).plate();
        boolean round = plate.isWeldedRound();
        double length = round
                ? bracket.solid().startRound()
                : 2 * plate.plate().solid().profile().depth();
        Weld.Seam seam = round ? Weld.Seam.ROUND : Weld.Seam.SIDES;
        add(plate.plate(), bracket.mark(), assembly.quantity(), length, plate.weldLeg(), seam);
    }

    /** A cleat is welded along both faces of its shorter side, one that carries others along its longer. */
    private static double sides(Part cleat) {
        Profile face = cleat.solid().profile();
        return 2 * (cleat.isSeat() ? Math.max(face.depth(), face.width()) : Math.min(face.depth(), face.width()));
    }

    /** What touches no member that carries such plates is counted as a cleat on whatever the engineer shows. */
    private void loose(Part plate, int count) {
        if (count > 0) {
            add(plate, Weld.NO_MEMBER, count, sides(plate), 5, Weld.Seam.SIDES);
        }
    }

    private void site(SiteJoints.Joint joint) {
        Weld.Seam seam = joint.allRound() ? Weld.Seam.SITE_ROUND : Weld.Seam.SITE_SIDES;
        add(joint.piece(), joint.to().mark(), 1, joint.length(), PlateRoom.WELD_LEG, seam);
    }
}
