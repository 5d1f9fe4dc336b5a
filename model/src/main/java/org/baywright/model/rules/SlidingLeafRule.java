package org.baywright.model.rules;

import java.util.List;
import java.util.stream.Collectors;
import org.baywright.model.definition.Opening;
import org.baywright.model.setout.OpeningPlace;
import org.baywright.model.setout.SlidingLeaf;

/**
 * Advice: a sliding leaf, when open, stands beside its door: it covers what else opens there, and its way may be longer
 * than the wall.
 */
final class SlidingLeafRule implements Rule {
    @Override
    public void check(Asked asked) {
        asked.openings().stream()
                .filter(p -> p.opening().type() == Opening.Type.SLIDING_DOOR)
                .forEach(door -> {
                    check(asked, door);
                    length(asked, door);
                });
    }

    private static void length(Asked asked, OpeningPlace door) {
        double lacking = new SlidingLeaf(door).lacking();
        if (lacking > 1) {
            asked.advice(
                    "sliding-wall-short",
                    Asked.key(door),
                    "its leaves cannot slide clear: the wall beside it is " + Asked.mmUp(lacking) + " mm too short",
                    "narrow the door, move it towards the middle of the wall, or make it a rollerDoor");
        }
    }

    private static void check(Asked asked, OpeningPlace door) {
        List<OpeningPlace> covered = asked.openings().stream()
                .filter(o -> o != door && o.face().equals(door.face()) && isCovered(o, door))
                .toList();
        if (!covered.isEmpty()) {
            SlidingLeaf leaf = new SlidingLeaf(door);
            String names = covered.stream()
                    .map(o -> "the " + o.opening().type().label() + ", opening " + o.number())
                    .collect(Collectors.joining(" and "));
            asked.advice(
                    "sliding-leaf-over",
                    Asked.key(door),
                    (leaf.parts() ? "its two leaves slide" : "its leaf slides") + " over " + names
                            + ", which cannot be used while it is open",
                    "move one of them, or narrow the door");
        }
    }

    private static boolean isCovered(OpeningPlace other, OpeningPlace door) {
        SlidingLeaf leaf = new SlidingLeaf(door);
        return other.right() > leaf.trackFrom()
                && other.left() < leaf.trackTo()
                && other.sill() < door.head() + SlidingLeaf.LAP
                && other.head() > door.sill();
    }
}
