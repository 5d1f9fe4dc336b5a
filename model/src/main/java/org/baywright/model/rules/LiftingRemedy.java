package org.baywright.model.rules;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.baywright.model.definition.LiftingBeam;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.parts.PartKind;

/**
 * Where a lifting beam could go that meets an end wall.
 *
 * @param asked what is looked at
 * @param beam as it was asked for
 * @param others all steel but the beam and what carries it
 */
record LiftingRemedy(Asked asked, LiftingBeam beam, List<StandingSteel> others) {
    private static final Set<PartKind> IN_THE_WAY =
            Set.of(PartKind.MULLION, PartKind.JAMB, PartKind.HEADER, PartKind.SILL);

    /** From the beam's middle to the edge of its plates or flange, and room beside. Common practice, no source. */
    private static final double BESIDE = 25;

    /** Another offset where there is one, or other frames. */
    String inEndWall() {
        return offset().map(x -> "set offset to " + x + ", or ").orElse("") + otherFrames();
    }

    /** The frames between the end walls. */
    String otherFrames() {
        int last = asked.setOut().frames();
        int to = Math.min(last - 1, Math.max(beam.toFrame(), 3));
        int from = Math.min(to - 1, Math.max(2, beam.fromFrame()));
        if (beam.along() && from > 1) {
            return "run it from frame " + from + " to frame " + to;
        }
        if (!beam.along() && last > 2) {
            return "set fromFrame to " + (beam.fromFrame() == 1 ? 2 : last - 1);
        }
        return beam.along() ? "have more bays, so that it ends at frames between the end walls" : "leave it out";
    }

    /** Low enough to pass under what hangs into it. */
    String under(StandingSteel other) {
        double lower = Math.floor(other.least(Vec3::z) - LiftingBeamRule.height(beam));
        boolean hangs = lower > beam.underside() - beam.member().depth();
        String offset = beam.along() ? "change offset" + (hangs ? ", or " : "") : "";
        return offset
                + (hangs ? "set underside to " + Asked.mm(lower) + " or less" : beam.along() ? "" : otherFrames());
    }

    /** The nearest whole offset at which the beam passes beside the uprights and openings of its end walls. */
    private Optional<String> offset() {
        double half = Math.max(beam.member().width(), beam.bracket().depth()) / 2 + BESIDE;
        List<StandingSteel> taken = others.stream()
                .filter(s -> IN_THE_WAY.contains(s.part().kind()) && isAtItsEnd(s))
                .toList();
        return IntStream.rangeClosed(1, (int) asked.setOut().span())
                .boxed()
                .flatMap(step -> Stream.of(beam.offset() - step, beam.offset() + step))
                .map(Math::rint)
                .filter(x -> taken.stream().allMatch(t -> t.least(Vec3::x) > x + half || t.most(Vec3::x) < x - half))
                .filter(x -> beam.along() && LiftingBeamRule.fits(asked, beam.at(x)))
                .findFirst()
                .map(Asked::mm);
    }

    private boolean isAtItsEnd(StandingSteel steel) {
        double bay = asked.setOut().length() / (2 * (asked.setOut().frames() - 1));
        boolean front = beam.fromFrame() == 1 && steel.most(Vec3::y) < bay;
        boolean rear = beam.toFrame() == asked.setOut().frames()
                && steel.least(Vec3::y) > asked.setOut().length() - bay;
        return front || rear;
    }
}
