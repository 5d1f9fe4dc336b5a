package org.baywright.model.rules;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.baywright.model.definition.LeanTo;
import org.baywright.model.definition.Opening;
import org.baywright.model.definition.Side;
import org.baywright.model.definition.Wall;
import org.baywright.model.setout.WallFace;
import org.baywright.model.setout.WallFace.WallBay;

/** Every opening names a wall that the shed has, and a bay of it. */
final class OpeningWallRule implements Rule {
    @Override
    public void check(Asked asked) {
        List<Opening> openings = asked.definition().envelope().openings();
        for (int i = 0; i < openings.size(); i++) {
            Opening opening = openings.get(i);
            String key = "openings[" + i + "]";
            if (named(asked, key, opening)) {
                bay(asked, key, opening);
            }
        }
    }

    private static boolean named(Asked asked, String key, Opening opening) {
        if (opening.leanTo().isEmpty()) {
            return true;
        }
        Side side = opening.leanTo().get();
        List<LeanTo> leanTos = asked.definition().leanTos();
        if (leanTos.stream().noneMatch(l -> l.side() == side)) {
            asked.error(
                    "no-such-lean-to",
                    key + ".leanTo",
                    "there is no lean-to on the " + word(side),
                    "leave leanTo out for a wall of the main building, or add the lean-to");
            return false;
        }
        if (!opening.wall().isEnd() && opening.wall() != Wall.of(side)) {
            asked.error(
                    "no-such-wall",
                    key + ".wall",
                    "a lean-to on the " + word(side) + " has the walls front, rear and " + word(side),
                    "write one of them, or leave leanTo out");
            return false;
        }
        return true;
    }

    private static void bay(Asked asked, String key, Opening opening) {
        if (opening.wall().isEnd()) {
            endWall(asked, key, opening);
            return;
        }
        List<Integer> bays = asked.walls().stream()
                .filter(f -> f.wall() == opening.wall())
                .filter(f -> f.leanTo().map(l -> l.side()).equals(opening.leanTo()))
                .map(WallFace::bays)
                .flatMap(List::stream)
                .map(WallBay::bay)
                .sorted()
                .toList();
        String there = bays.stream().map(String::valueOf).collect(Collectors.joining(", "));
        if (opening.bay().isEmpty()) {
            asked.error(
                    "bay-missing",
                    key + ".bay",
                    "an opening in a side wall needs its bay; the wall has " + there,
                    "add bay, counted from frame 1");
        } else if (!bays.contains(opening.bay().getAsInt())) {
            asked.error(
                    "no-such-bay",
                    key + ".bay",
                    "bay " + opening.bay().getAsInt() + " was read; the wall has " + there,
                    "write one of its bays");
        }
    }

    /** A bay in an end wall only tells one lean-to of a side from another. */
    private static void endWall(Asked asked, String key, Opening opening) {
        if (opening.bay().isPresent() && opening.leanTo().isEmpty()) {
            asked.error(
                    "bay-in-end-wall",
                    key + ".bay",
                    "a " + word(opening.wall()) + " wall has no bays",
                    "remove it; offset says where the opening is");
        } else if (opening.bay().isPresent() && asked.openings().stream().noneMatch(p -> p.opening() == opening)) {
            asked.error(
                    "no-such-bay",
                    key + ".bay",
                    "no lean-to on the " + word(opening.leanTo().get()) + " has bay "
                            + opening.bay().getAsInt(),
                    "write a bay that the lean-to spans");
        } else if (opening.bay().isEmpty() && leanTos(asked, opening) > 1) {
            asked.advice(
                    "lean-to-not-named",
                    key,
                    "there are " + leanTos(asked, opening) + " lean-tos on the "
                            + word(opening.leanTo().get()) + "; it is in the "
                            + word(opening.wall()) + " wall of the narrowest",
                    "add bay, any bay of the lean-to that is meant");
        }
    }

    private static long leanTos(Asked asked, Opening opening) {
        return asked.definition().leanTos().stream()
                .filter(l -> opening.leanTo().equals(Optional.of(l.side())))
                .count();
    }

    private static String word(Enum<?> choice) {
        return choice.name().toLowerCase(Locale.ROOT);
    }
}
