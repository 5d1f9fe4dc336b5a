package org.baywright.model.parts;

import java.util.ArrayList;
import java.util.List;
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

    private final STRtree index = new STRtree();
    private final List<Joint> joints = new ArrayList<>();

    private SiteJoints(Shed shed) {
        shed.parts().stream()
                .filter(p -> p.kind().group() == PartKind.Group.LIFTING || p.kind() == PartKind.JAMB)
                .flatMap(p -> p.places().stream().map(place -> Standing.of(p, place)))
                .forEach(s -> index.insert(s.plan(), s));
        index.build();
        each(shed, PartKind.HEADER).forEach(this::trim);
        each(shed, PartKind.SILL).forEach(this::trim);
        each(shed, PartKind.LIFTING_PLATE).forEach(this::lifting);
    }

    /** The joints of a shed, one by one. */
    public static List<Joint> of(Shed shed) {
        return List.copyOf(new SiteJoints(shed).joints);
    }

    private static Stream<Standing> each(Shed shed, PartKind kind) {
        return shed.parts(kind).stream().flatMap(p -> p.places().stream().map(place -> Standing.of(p, place)));
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
