package org.baywright.model.definition;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** Reads the openings. Whether their wall has room for them is the rules' to say. */
record OpeningReader(GroupReader file) {
    /**
     * Usual clear sizes. Common practice, no source: a personnel leaf of 820 x 2040; a door that a tractor passes; a
     * window whose head is level with a door's.
     */
    private static Opening.Size usual(Opening.Type type) {
        return switch (type) {
            case DOOR -> new Opening.Size(820, 2040, 0);
            case WINDOW -> new Opening.Size(1500, 1200, 900);
            case ROLLER_DOOR, SLIDING_DOOR, OPEN -> new Opening.Size(3600, 3300, 0);
        };
    }

    List<Opening> read() {
        return file.list("openings", "openings, each {type, wall, ...}").stream()
                .map(e -> opening(GroupReader.of(e, EnvelopeKeys.OPENINGS, file.values())))
                .toList();
    }

    private static Opening opening(GroupReader group) {
        Opening.Type type = group.choice("type", Opening.Type.class);
        return new Opening(
                type,
                group.choice("wall", Wall.class),
                group.choiceIfGiven("leanTo", Side.class),
                group.wholeIfGiven("bay"),
                isWholeBay(group, type) ? Optional.empty() : Optional.of(size(group, usual(type))),
                group.numberIfGiven("offset"));
    }

    /** Only what is left open may fill a bay; anything that closes it needs jambs. */
    private static boolean isWholeBay(GroupReader group, Opening.Type type) {
        if (type != Opening.Type.OPEN) {
            return false;
        }
        boolean sized =
                group.given("width").isPresent() && group.given("height").isPresent();
        Optional<String> part = Stream.of("width", "height", "sill", "offset")
                .filter(k -> group.given(k).isPresent())
                .findFirst();
        if (!sized && part.isPresent()) {
            String message =
                    "'" + part.get() + "' without both width and height; without any of them the whole bay is open";
            group.findings()
                    .error("opening-size", group.where(part.get()), message, "give width and height, or neither");
        }
        return !sized;
    }

    private static Opening.Size size(GroupReader group, Opening.Size usual) {
        return new Opening.Size(
                or(group, "width", usual.width()),
                or(group, "height", usual.height()),
                or(group, "sill", usual.sill()));
    }

    private static double or(GroupReader group, String key, double usual) {
        OptionalDouble given = group.numberIfGiven(key);
        return given.orElse(usual);
    }
}
