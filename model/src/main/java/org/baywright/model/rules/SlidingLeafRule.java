package org.baywright.model.rules;

import java.util.List;
import java.util.stream.Collectors;
import org.baywright.model.definition.Opening;
import org.baywright.model.setout.GirtRows;
import org.baywright.model.setout.OpeningPlace;
import org.baywright.model.setout.SlidingLeaf;

/**
 * Advice: a sliding leaf, when open, stands beside its door: it covers what else opens there, its way may be longer than
 * the wall, and its track wants steel behind it where no girt is.
 */
final class SlidingLeafRule implements Rule {
    @Override
    public void check(Asked asked) {
        asked.openings().stream()
                .filter(p -> p.opening().type() == Opening.Type.SLIDING_DOOR)
                .forEach(door -> {
                    check(asked, door);
                    length(asked, door);
                    backing(asked, door);
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

    /** The header ends at the jambs, and so does the girt before it; past them only a row of the wall can hold a track. */
    private static void backing(Asked asked, OpeningPlace door) {
        SlidingLeaf leaf = new SlidingLeaf(door);
        boolean held = asked.covers().stream()
                .filter(c -> c.face().equals(door.face()))
                .filter(c -> c.bay().to() > leaf.trackFrom() && c.bay().from() < leaf.trackTo())
                .allMatch(c -> GirtRows.of(asked.definition(), asked.setOut(), c).at().stream()
                        .anyMatch(row -> row >= door.head() && row <= door.head() + 2 * SlidingLeaf.LAP));
        if (!held) {
            asked.advice(
                    "sliding-track-unbacked",
                    Asked.key(door),
                    "its track runs " + Asked.mm(leaf.trackTo() - leaf.trackFrom()) + " mm along the wall, "
                            + Asked.mm(leaf.trackTo() - leaf.trackFrom() - door.width())
                            + " mm of it past the opening, where no girt stands behind it at " + Asked.mm(door.head())
                            + " to " + Asked.mm(door.head() + 2 * SlidingLeaf.LAP) + " mm",
                    "order a track girt with cleats for that length, which is not in the model, or set the door's height"
                            + " just below a row of girts");
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
