package org.baywright.model.takeoff;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Shed;

/**
 * Where bolts of one size go.
 *
 * @param bolt diameter, length and grade
 * @param joint the part that they hold
 * @param marks those parts
 * @param grip what lies between head and nut, washers apart, mm
 * @param count how many
 */
public record BoltUse(String bolt, PartKind joint, List<String> marks, double grip, int count) {
    /** Copies the list. */
    public BoltUse {
        marks = List.copyOf(marks);
    }

    /** Every bolt of a shed's steel, joint by joint, like ones together; anchors are not among them. */
    public static List<BoltUse> of(Shed shed) {
        return BoltOrder.uses(shed).stream()
                .collect(Collectors.groupingBy(
                        use -> List.of(use.joint, use.bolt, Math.round(use.grip * 10)),
                        LinkedHashMap::new,
                        Collectors.reducing(BoltUse::and)))
                .values()
                .stream()
                .flatMap(Optional::stream)
                .toList();
    }

    private BoltUse and(BoltUse other) {
        List<String> both =
                Stream.concat(marks.stream(), other.marks.stream()).distinct().toList();
        return new BoltUse(bolt, joint, both, grip, count + other.count);
    }
}
