package org.baywright.model.parts;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.baywright.model.geometry.Vec3;

/**
 * Gives every side wall's jamb the head piece that fits where it stands, and punches the purlin for its bolts. A jamb is
 * left without one where none would bear on a purlin clear of everything else.
 */
final class JambHeads {
    /** From the end of a length, or a pair of holes, to the next pair. @source 2.5 d and more: AS 4100 9.5.1 (from memory) */
    private static final double APART = 45;

    private final List<Piece> pieces;
    private final List<RowBays> slopes;
    private final Neighbours all;
    private final List<Piece> made = new ArrayList<>();
    private Neighbours others = new Neighbours(Stream.empty());
    private final Map<Place, List<Double>> punched = new IdentityHashMap<>();

    JambHeads(List<Piece> pieces, List<RowBays> slopes) {
        this.pieces = pieces;
        this.slopes = slopes;
        this.all = new Neighbours(pieces.stream());
    }

    /** All pieces of a shed, with those that hold the heads. */
    List<Piece> held(List<JambHead> heads) {
        heads.forEach(head -> head.ways(slopes)
                .filter(this::isClear)
                .filter(this::bears)
                .findFirst()
                .ifPresent(this::add));
        return Stream.concat(pieces.stream().map(this::punched), made.stream()).toList();
    }

    private boolean isClear(JambHead.Hold hold) {
        return hold.pieces().stream()
                .allMatch(p -> all.isClear(p.standing(), p.place()) && others.isClear(p.standing(), p.place()));
    }

    /** The purlins that the bolts go through: the one that the cleat lies on, and one that laps over that. */
    private List<Standing> bolted(JambHead.Hold hold) {
        Standing cleat = hold.cleat().standing();
        return all.near(cleat)
                .filter(o -> o.part().kind() == PartKind.PURLIN && cleat.gap(o) <= JointHoles.THROUGH)
                .toList();
    }

    private boolean bears(JambHead.Hold hold) {
        List<Standing> bolted = bolted(hold);
        return !bolted.isEmpty() && bolted.stream().allMatch(purlin -> isFree(purlin, hold.bolts()));
    }

    private boolean isFree(Standing purlin, Vec3 bolts) {
        double at = station(purlin, bolts);
        List<Double> taken = new ArrayList<>(punched.getOrDefault(purlin.place(), List.of()));
        taken.addAll(purlin.part().punched());
        taken.addAll(List.of(0.0, purlin.part().solid().axisLength()));
        return at > 0
                && at < purlin.part().solid().axisLength()
                && taken.stream().allMatch(t -> Math.abs(t - at) >= APART);
    }

    private static double station(Standing purlin, Vec3 bolts) {
        return purlin.place().placement().toLocal(bolts).x();
    }

    private void add(JambHead.Hold hold) {
        made.addAll(hold.pieces());
        others = new Neighbours(made.stream());
        bolted(hold)
                .forEach(purlin -> punched.computeIfAbsent(purlin.place(), k -> new ArrayList<>())
                        .add(station(purlin, hold.bolts())));
    }

    private Piece punched(Piece piece) {
        List<Double> more = punched.getOrDefault(piece.place(), List.of());
        return more.isEmpty() ? piece : piece.punchedToo(more);
    }
}
