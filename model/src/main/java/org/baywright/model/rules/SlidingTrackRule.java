package org.baywright.model.rules;

import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.OpeningPlace;
import org.baywright.model.setout.TrackGirt;

/**
 * Advice: a sliding door's track with no steel behind it past the door, found from where the girts stand: where another
 * opening, a lean-to's roof, a bay left open or the roof leaves no room for one.
 */
final class SlidingTrackRule implements Rule {
    /** Between girts there is a post or column no wider, and a track may pass its last fixing as far. */
    private static final double UPRIGHT = 350;

    /** How far inside the string line, and outside of it, girts stand. */
    private static final double NEAR = 350;

    private record Stretch(double from, double to) {}

    @Override
    public void check(Asked asked) {
        List<TrackGirt> tracks = TrackGirt.of(asked.definition(), asked.openings());
        if (!tracks.isEmpty()) {
            asked.shed().ifPresent(shed -> tracks.forEach(track -> check(asked, shed, track)));
        }
    }

    private static void check(Asked asked, Shed shed, TrackGirt track) {
        OpeningPlace door = track.door();
        double bare = bare(shed, track);
        if (bare > 0) {
            asked.advice(
                    "sliding-track-unbacked",
                    Asked.key(door),
                    "its track runs "
                            + Asked.mm(track.leaf().trackTo() - track.leaf().trackFrom())
                            + " mm along the wall, and no girt can stand behind " + Asked.mm(bare) + " mm of it at "
                            + Asked.mm(door.head()) + " to " + Asked.mm(door.head() + TrackGirt.BAND) + " mm",
                    "lower the door, or keep other openings and open bays out of its way; or the engineer shows what"
                            + " carries the track there");
        }
    }

    /** How much of a track has neither a girt nor the door itself behind it, uprights left out. */
    private static double bare(Shed shed, TrackGirt track) {
        double bare = 0;
        double at = track.leaf().trackFrom();
        for (Stretch held : held(shed, track)) {
            bare += counted(Math.min(held.from, track.leaf().trackTo()) - at);
            at = Math.max(at, held.to);
        }
        return bare + counted(track.leaf().trackTo() - at);
    }

    private static double counted(double gap) {
        return gap > UPRIGHT ? gap : 0;
    }

    /** What holds a track, from its left end on. */
    private static List<Stretch> held(Shed shed, TrackGirt track) {
        OpeningPlace door = track.door();
        Placement wall = door.face().axes();
        Stream<Stretch> girts = StandingSteel.of(shed)
                .filter(s -> s.part().kind() == PartKind.GIRT && isBehind(s, door))
                .map(s -> new Stretch(
                        s.least(p -> wall.toLocal(p).x()),
                        s.most(p -> wall.toLocal(p).x())));
        return Stream.concat(Stream.of(new Stretch(door.left(), door.right())), girts)
                .sorted(Comparator.comparingDouble(Stretch::from))
                .toList();
    }

    /** Whether the middle of a girt's steel lies where the track is, and in its wall. */
    private static boolean isBehind(StandingSteel girt, OpeningPlace door) {
        Placement wall = door.face().axes();
        ToDoubleFunction<Vec3> up = p -> wall.toLocal(p).y();
        ToDoubleFunction<Vec3> out = p -> wall.toLocal(p).z();
        double middle = (girt.least(up) + girt.most(up)) / 2;
        return girt.least(out) > -NEAR
                && girt.most(out) < NEAR
                && middle > door.head() - StandingSteel.MEETS
                && middle < door.head() + TrackGirt.BAND + StandingSteel.MEETS;
    }
}
