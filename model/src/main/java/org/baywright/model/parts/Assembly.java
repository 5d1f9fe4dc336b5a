package org.baywright.model.parts;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A member with the plates that are welded to it: what leaves the shop in one piece. Members of one mark differ as
 * assemblies when their plates do.
 *
 * @param mark the member's mark and a letter, such as {@code C1-A}
 * @param member the member
 * @param places where the member stands with just these plates
 * @param welded the plates, from the member's marked end on
 */
public record Assembly(String mark, Part member, List<Place> places, List<Attached> welded) {
    /** Copies the lists and puts the plates in order. */
    public Assembly {
        places = List.copyOf(places);
        welded = welded.stream().sorted(ORDER).toList();
        if (places.isEmpty()) {
            throw new IllegalArgumentException("an assembly stands somewhere: " + mark);
        }
    }

    private static final Comparator<Attached> ORDER = Comparator.comparingDouble(
                    (Attached a) -> a.middle().x())
            .thenComparing(a -> a.plate().mark())
            .thenComparingDouble(a -> a.middle().z())
            .thenComparingDouble(a -> a.middle().y());

    /** How many. */
    public int quantity() {
        return places.size();
    }

    /** Mass of one with its plates, without welds. */
    public double massKg() {
        return member.massKg()
                + welded.stream().mapToDouble(a -> a.plate().massKg()).sum();
    }

    /** The bracket that a plate lies on. */
    public Attached bracketUnder(Attached plate) {
        return welded.stream()
                .filter(w -> w.plate().kind() == PartKind.LIFTING_BRACKET)
                .min(Comparator.comparingDouble(w -> w.middle().distance(plate.middle())))
                .orElseThrow();
    }

    /** How many plates of each mark, in order of their marks. */
    public Map<String, Integer> counts() {
        Map<String, Integer> counts =
                new TreeMap<>(Comparator.comparingInt(String::length).thenComparing(Comparator.naturalOrder()));
        welded.forEach(a -> counts.merge(a.plate().mark(), 1, Integer::sum));
        return counts;
    }
}
