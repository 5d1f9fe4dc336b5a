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
        Optional<Wall> wall = group.choiceIfGiven("wall", Wall.class);
        Optional<Side> leanTo = group.choiceIfGiven("leanTo", Side.class);
        wall.ifPresent(w -> {
            tellBay(group, w);
            leanTo.filter(l -> !w.isEnd() && w != Wall.of(l)).ifPresent(l -> tellInner(group, l));
        });
        return new Opening(
                type,
                wall.orElse(Wall.FRONT),
                leanTo,
                group.wholeIfGiven("bay"),
                isWholeBay(group, type) ? Optional.empty() : Optional.of(size(group, usual(type))),
                group.numberIfGiven("offset"));
    }

    private static void tellBay(GroupReader group, Wall wall) {
        if (wall.isEnd() && group.given("bay").isPresent()) {
            String message = "a front or rear wall has no bays";
            group.findings().error("bay-in-end-wall", group.where("bay"), message, "remove it; offset says where");
        }
    }

    private static void tellInner(GroupReader group, Side leanTo) {
        String side = leanTo == Side.LEFT ? "left" : "right";
        String message = "a lean-to on the " + side + " has the walls front, rear and " + side;
        group.findings().error("no-such-wall", group.where("wall"), message, "write one of them, or leave leanTo out");
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
