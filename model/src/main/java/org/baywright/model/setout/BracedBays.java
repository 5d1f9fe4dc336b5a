package org.baywright.model.setout;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.ToIntFunction;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Opening;
import org.baywright.model.setout.WallFace.WallBay;

/**
 * Which bays of a side wall are braced. Braces never pass an opening, and keep out of bays that machines come through:
 * the nearest bay that is sheeted to the floor and has no opening is braced, else the nearest left open that leads to no
 * opening of the wall before or behind it, else the nearest left open; where every bay has an opening, none is.
 *
 * @param used the bay that is braced for each that was asked for; none where there is no room
 * @param open those of them that are left open at the floor, so that the braces close a way in
 */
public record BracedBays(Map<Integer, Optional<Integer>> used, List<Integer> open) {
    /** Copies the list. */
    public BracedBays {
        open = List.copyOf(open);
    }

    /** The braced bays of a side wall. */
    public static BracedBays of(Definition definition, WallFace face, List<OpeningPlace> openings) {
        List<Integer> open = open(definition, face);
        List<Integer> free = baysOf(face).stream()
                .filter(bay -> openings.stream()
                        .noneMatch(o -> o.face().equals(face) && o.bay().bay() == bay))
                .toList();
        ToIntFunction<Integer> harm = bay -> !open.contains(bay) ? 0 : isOnAWay(openings, face, bay) ? 2 : 1;
        Map<Integer, Optional<Integer>> used = new TreeMap<>();
        for (int asked : definition.envelope().bracing().bays()) {
            if (baysOf(face).contains(asked)) {
                used.put(asked, least(free, harm, asked));
            }
        }
        return new BracedBays(
                used,
                used.values().stream()
                        .flatMap(Optional::stream)
                        .filter(open::contains)
                        .distinct()
                        .sorted()
                        .toList());
    }

    private static List<Integer> baysOf(WallFace face) {
        return face.bays().stream().map(WallBay::bay).toList();
    }

    /** The bays that are not sheeted down to the floor. */
    private static List<Integer> open(Definition definition, WallFace face) {
        List<WallCover> covers = WallCover.of(definition, SetOut.of(definition), List.of(face));
        return face.bays().stream()
                .filter(bay -> covers.stream().noneMatch(c -> c.bay().equals(bay) && c.low() == 0))
                .map(WallBay::bay)
                .toList();
    }

    /** Whether the wall before or behind, of the lean-to or of the main building, has a way in there. */
    private static boolean isOnAWay(List<OpeningPlace> openings, WallFace face, int bay) {
        return openings.stream()
                .filter(o -> o.opening().type() != Opening.Type.WINDOW)
                .anyMatch(o -> o.face().wall() == face.wall()
                        && !o.face().equals(face)
                        && o.bay().bay() == bay);
    }

    private static Optional<Integer> least(List<Integer> free, ToIntFunction<Integer> harm, int asked) {
        return free.stream()
                .min(Comparator.comparingInt(harm)
                        .thenComparingInt(bay -> Math.abs(bay - asked))
                        .thenComparingInt(bay -> bay));
    }

    /** The bays that are braced. */
    public List<Integer> bays() {
        return used.values().stream()
                .flatMap(Optional::stream)
                .distinct()
                .sorted()
                .toList();
    }
}
