package org.baywright.model.definition;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Reads the bracing.
 *
 * @param group its keys
 * @param members reader of sections
 * @param shape of the main building
 */
record BracingReader(GroupReader group, MemberReader members, Shape shape) {
    private static final String BAYS = "bay numbers such as [1, 5], or none";

    Bracing read(List<Opening> openings, boolean beamRafters) {
        return new Bracing(
                members.section(group, "section", SectionUse.BRACE, "ROD 16"),
                group.given("bays").map(this::bays).orElseGet(() -> UsualBraces.usual(shape.baySpacings(), openings)),
                members.section(group, "flyBraces", SectionUse.FLY_BRACE, "EA 50x50x5"),
                group.wholeIfGiven("flyBraceEvery").orElse(beamRafters ? 2 : 0));
    }

    private List<Integer> bays(Located found) {
        if (found instanceof Located.Sequence list) {
            return list.items().stream().flatMap(this::bay).distinct().sorted().toList();
        }
        if (found instanceof Located.Scalar scalar && scalar.text().strip().equalsIgnoreCase("none")) {
            return List.of();
        }
        return bay(found).toList();
    }

    private Stream<Integer> bay(Located found) {
        Optional<Integer> bay = found instanceof Located.Scalar scalar
                ? NumberText.read(scalar.text()).stream()
                        .boxed()
                        .filter(n -> n == Math.rint(n) && n >= 1 && n <= shape.bays())
                        .map(Double::intValue)
                        .findFirst()
                : Optional.empty();
        if (bay.isEmpty()) {
            String message = found.kind() + " was read; the bays are 1 to " + shape.bays();
            group.findings().error("no-such-bay", found.where(), message, "write " + BAYS);
        }
        return bay.stream();
    }
}
