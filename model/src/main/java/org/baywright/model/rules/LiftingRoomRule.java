package org.baywright.model.rules;

import java.util.List;
import java.util.Set;
import org.baywright.model.definition.LiftingBeam;
import org.baywright.model.definition.Wall;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.OpeningPlace;

/**
 * A lifting beam with what carries it stays inside the end string lines, out of openings and clear of all other steel:
 * looked up in the shed as it would be built.
 */
final class LiftingRoomRule implements Rule {
    /** From the wall in, for the roll of a roller door. Common practice, no source. */
    private static final double ROLL = 450;

    private static final Set<PartKind> END_WALL =
            Set.of(PartKind.MULLION, PartKind.JAMB, PartKind.HEADER, PartKind.SILL);

    @Override
    public void check(Asked asked) {
        asked.definition()
                .envelope()
                .liftingBeam()
                .filter(b -> asked.clad())
                .ifPresent(beam -> asked.shed().ifPresent(shed -> check(asked, beam, shed)));
    }

    private static void check(Asked asked, LiftingBeam beam, Shed shed) {
        List<StandingSteel> all = StandingSteel.of(shed).toList();
        List<StandingSteel> lifting = all.stream().filter(s -> isLifting(s)).toList();
        List<StandingSteel> others = all.stream().filter(s -> !isLifting(s)).toList();
        LiftingRemedy remedy = new LiftingRemedy(asked, beam, others);
        double before =
                -lifting.stream().mapToDouble(s -> s.least(Vec3::y)).min().orElse(0);
        double behind = lifting.stream().mapToDouble(s -> s.most(Vec3::y)).max().orElse(0)
                - asked.setOut().length();
        if (Math.max(before, behind) > StandingSteel.MEETS) {
            past(asked, before >= behind, Math.max(before, behind), remedy);
            return;
        }
        asked.openings().stream().filter(o -> !o.isWholeBay()).forEach(o -> opening(asked, o, lifting, remedy));
        others.stream()
                .filter(other -> lifting.stream().anyMatch(other::runsInto))
                .findFirst()
                .ifPresent(other -> meets(asked, other, remedy));
    }

    private static boolean isLifting(StandingSteel steel) {
        return steel.part().kind().group() == PartKind.Group.LIFTING;
    }

    /** Past the outside of an end frame, where the girts and sheets of a closed wall are. */
    private static void past(Asked asked, boolean front, double past, LiftingRemedy remedy) {
        boolean closed = asked.covers().stream()
                .anyMatch(c -> c.face().isMain() && c.face().wall() == (front ? Wall.FRONT : Wall.REAR));
        int frame = front ? 1 : asked.setOut().frames();
        String message = "the lifting beam with its plates would stand " + Asked.mmUp(past)
                + " mm past the string line of frame " + frame + (closed ? ", into the end wall" : "");
        if (closed) {
            asked.error("lifting-beam-past-wall", "liftingBeam", message, remedy.otherFrames());
        } else {
            asked.advice("lifting-beam-past-wall", "liftingBeam", message, remedy.otherFrames());
        }
    }

    /** The clear size stays free; the roll of a roller door wants room over it. */
    private static void opening(Asked asked, OpeningPlace opening, List<StandingSteel> lifting, LiftingRemedy remedy) {
        double upright =
                asked.definition().envelope().walls().mullions().member().depth();
        String which = opening.tag() + " (" + opening.opening().type().label() + ")";
        String elsewhere = opening.face().wall().isEnd() ? remedy.inEndWall() : "set offset further from that wall";
        if (isBefore(opening, lifting, opening.head(), upright)) {
            asked.error(
                    "lifting-beam-in-opening",
                    "liftingBeam",
                    "the lifting beam would lie in the clear size of " + which,
                    elsewhere);
        } else if (OpeningRoomRule.rolls(opening)
                && isBefore(opening, lifting, opening.head() + OpeningRoomRule.ROLLER_HEAD, ROLL)) {
            asked.advice(
                    "lifting-beam-at-roll",
                    "liftingBeam",
                    "the lifting beam would lie where " + which + " may have its roll: " + Asked.mm(ROLL)
                            + " mm from the wall (common practice)",
                    "ask the door's maker, or " + elsewhere);
        }
    }

    private static boolean isBefore(OpeningPlace opening, List<StandingSteel> steel, double top, double inside) {
        Vec3 low = new Vec3(opening.left(), opening.sill(), -inside);
        Vec3 high = new Vec3(opening.right(), top, Double.POSITIVE_INFINITY);
        return steel.stream().anyMatch(s -> s.isWithin(opening.face().axes(), low, high));
    }

    private static void meets(Asked asked, StandingSteel other, LiftingRemedy remedy) {
        double x = (other.least(Vec3::x) + other.most(Vec3::x)) / 2;
        double y = (other.least(Vec3::y) + other.most(Vec3::y)) / 2;
        asked.error(
                "lifting-beam-meets-steel",
                "liftingBeam",
                "the lifting beam or what carries it would run into the "
                        + other.part().kind().label() + " " + other.part().mark() + ", " + Asked.mm(x)
                        + " mm from line A and " + Asked.mm(y) + " mm from frame 1",
                END_WALL.contains(other.part().kind()) ? remedy.inEndWall() : remedy.under(other));
    }
}
