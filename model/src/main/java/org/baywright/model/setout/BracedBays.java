package org.baywright.model.setout;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.baywright.model.definition.Definition;
import org.baywright.model.setout.WallFace.WallBay;

/**
 * Which bays of a side wall are braced. Braces never pass an opening: where the bay asked for has one, the nearest bay
 * of that wall without an opening is braced instead, and where there is none, no bay is. A bay left open can be braced.
 *
 * @param used the bay that is braced for each that was asked for; none where there is no room
 */
public record BracedBays(Map<Integer, Optional<Integer>> used) {
    /** The braced bays of a side wall. */
    public static BracedBays of(Definition definition, WallFace face, List<OpeningPlace> openings) {
        List<Integer> free = face.bays().stream()
                .map(WallBay::bay)
                .filter(bay -> openings.stream()
                        .noneMatch(o -> o.face().equals(face) && o.bay().bay() == bay))
                .toList();
        Map<Integer, Optional<Integer>> used = new TreeMap<>();
        for (int asked : definition.envelope().bracing().bays()) {
            boolean here = face.bays().stream().anyMatch(b -> b.bay() == asked);
            if (here) {
                used.put(asked, nearest(free, asked));
            }
        }
        return new BracedBays(used);
    }

    private static Optional<Integer> nearest(List<Integer> free, int asked) {
        return free.stream()
                .min(Comparator.comparingInt((Integer bay) -> Math.abs(bay - asked))
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
