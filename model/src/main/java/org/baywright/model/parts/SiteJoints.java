package org.baywright.model.parts;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.locationtech.jts.index.strtree.STRtree;

/** What is welded where the shed stands: pieces that meet there without bolts, found from where they stand. */
public final class SiteJoints {
    /**
     * Pieces of two marks that meet.
     *
     * @param piece what is welded
     * @param to what to
     * @param length of weld, mm
     * @param allRound whether it runs round the piece rather than along two sides
     */
    public record Joint(Part piece, Part to, double length, boolean allRound) {}

    private static final Set<PartKind> CARRIERS = EnumSet.of(
            PartKind.JAMB, PartKind.COLUMN, PartKind.LEAN_TO_COLUMN, PartKind.RAFTER, PartKind.LEAN_TO_RAFTER);

    private final STRtree index = new STRtree();
    private final List<Joint> joints = new ArrayList<>();

    private SiteJoints(Shed shed) {
        shed.parts().stream()
                .filter(p -> p.kind().group() == PartKind.Group.LIFTING || CARRIERS.contains(p.kind()))
                .flatMap(p -> p.places().stream().map(place -> Standing.of(p, place)))
                .forEach(s -> index.insert(s.plan(), s));
        index.build();
        each(shed, PartKind.HEADER).forEach(this::trim);
        each(shed, PartKind.SILL).forEach(this::trim);
        each(shed, PartKind.LIFTING_PLATE).forEach(this::lifting);
        each(shed, PartKind.CAP_PLATE).forEach(plate -> end(plate, PartKind.RAFTER, PartKind.LEAN_TO_RAFTER));
        each(shed, PartKind.KNEE_PLATE).forEach(plate -> end(plate, PartKind.COLUMN));
        each(shed, PartKind.LEAN_TO_PLATE).forEach(plate -> end(plate, PartKind.COLUMN));
    }

    /** The joints of a shed, one by one. */
    public static List<Joint> of(Shed shed) {
        return List.copyOf(new SiteJoints(shed).joints);
    }

    private static Stream<Standing> each(Shed shed, PartKind kind) {
        return shed.parts(kind).stream().flatMap(p -> p.places().stream().map(place -> Standing.of(p, place)));
    }

    /** An end plate without holes on what it bears against: along both sides, as far as they lie on each other. */
    private void end(Standing plate, PartKind... carriers) {
        for (PartKind carrier : carriers) {
            for (Standing member : met(plate, carrier)) {
                double along = plate.shared(member, member.place().placement().along());
                if (plate.part().holes().isEmpty() && along > 0) {
                    joints.add(new Joint(plate.part(), member.part(), 2 * along, false));
                }
            }
        }
    }

    /** A header or sill between its jambs, square at both ends. */
    private void trim(Standing trim) {
        double round = trim.part().solid().startRound();
        met(trim, PartKind.JAMB).forEach(jamb -> joints.add(new Joint(trim.part(), jamb.part(), round, true)));
    }

    /** The beam on its plate, and the other bracket of a pair, whose rafter comes apart from that of the first. */
    private void lifting(Standing plate) {
        for (Standing beam : met(plate, PartKind.LIFTING_BEAM)) {
            double along = plate.shared(beam, beam.place().placement().along());
            joints.add(new Joint(plate.part(), beam.part(), 2 * along, false));
        }
        met(plate, PartKind.LIFTING_BRACKET).stream()
                .skip(1)
                .forEach(bracket -> joints.add(new Joint(
                        plate.part(), bracket.part(), bracket.part().solid().startRound(), true)));
    }

    @SuppressWarnings("unchecked") // the index holds standing pieces only
    private List<Standing> met(Standing piece, PartKind kind) {
        List<Standing> near = index.query(piece.plan());
        return near.stream()
                .filter(other -> other.part().kind() == kind && piece.touches(other))
                .sorted(Standing.FROM_A1)
                .toList();
    }
}
