package org.baywright.model.definition;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Reads the frames that have other sections.
 *
 * @param file the top of the file
 * @param frames how many frames, or the most allowed when that is not known
 * @param roof whether a frame has one rafter or two
 * @param members reader of members
 * @param ordinary the members they take the place of
 */
record HeavierReader(GroupReader file, int frames, RoofShape roof, MemberReader members, Steel ordinary) {
    private static final List<String> WORDS = List.of("ends", "interior", "all");
    private static final String FRAMES = "frame numbers, or one of ends, interior, all";

    private enum Sides {
        LEFT,
        RIGHT,
        BOTH;

        Set<Side> sides() {
            return this == BOTH ? Set.of(Side.LEFT, Side.RIGHT) : Set.of(this == LEFT ? Side.LEFT : Side.RIGHT);
        }
    }

    List<Heavier> read() {
        return file.list("heavier", "entries, each {frames, column, ...}").stream()
                .map(e -> heavier(GroupReader.of(e, Keys.HEAVIER, file.values())))
                .toList();
    }

    private Heavier heavier(GroupReader group) {
        long before = group.findings().errors();
        Sides sides = group.choiceIfGiven("side", Sides.class).orElse(Sides.BOTH);
        if (roof == RoofShape.SKILLION
                && sides != Sides.BOTH
                && group.given("rafter").isPresent()) {
            String message = "a skillion frame has one rafter from side to side; 'side' cannot choose half of it";
            group.findings()
                    .error(
                            "skillion-rafter-side",
                            group.where("rafter"),
                            message,
                            "leave side out, or split the entry");
        }
        Heavier heavier = new Heavier(
                group.value("frames").map(f -> frames(group, f)).orElse(List.of()),
                sides.sides(),
                members.instead(group, "column", ordinary.column()),
                members.instead(group, "rafter", ordinary.rafter()),
                members.instead(group, "leanToColumn", ordinary.leanToColumn()),
                members.instead(group, "leanToRafter", ordinary.leanToRafter()));
        if (group.findings().errors() == before) {
            tellIdle(group, heavier);
        }
        return heavier;
    }

    private static void tellIdle(GroupReader group, Heavier heavier) {
        boolean unnamed = Stream.of(heavier.column(), heavier.rafter(), heavier.leanToColumn(), heavier.leanToRafter())
                .allMatch(Optional::isEmpty);
        if (unnamed || heavier.frames().isEmpty()) {
            String message = "this entry changes nothing: it names no " + (unnamed ? "section" : "frame of this shed");
            group.findings().advice("heavier-idle", group.where(), message, "complete it or delete it");
        }
    }

    private List<Integer> frames(GroupReader group, Located found) {
        if (found instanceof Located.Sequence list) {
            return list.items().stream()
                    .flatMap(i -> frame(group, i))
                    .distinct()
                    .toList();
        }
        if (found instanceof Located.Scalar scalar
                && !NumberText.read(scalar.text()).isPresent()) {
            return group.values().word(found, WORDS).map(this::named).orElse(List.of());
        }
        return frame(group, found).toList();
    }

    private List<Integer> named(String word) {
        return switch (word) {
            case "ends" -> List.of(1, frames);
            case "interior" -> IntStream.range(2, frames).boxed().toList();
            default -> IntStream.rangeClosed(1, frames).boxed().toList();
        };
    }

    private Stream<Integer> frame(GroupReader group, Located found) {
        if (!(found instanceof Located.Scalar scalar)) {
            group.values().wrongType(found, FRAMES);
            return Stream.empty();
        }
        OptionalDouble number = NumberText.read(scalar.text());
        boolean exists = number.isPresent()
                && number.getAsDouble() == Math.rint(number.getAsDouble())
                && number.getAsDouble() >= 1
                && number.getAsDouble() <= frames;
        if (!exists) {
            String message = scalar.kind() + " was read; the frames are 1 to " + frames;
            group.findings().error("no-such-frame", found.where(), message, "write " + FRAMES);
        }
        return exists ? Stream.of((int) number.getAsDouble()) : Stream.empty();
    }
}
