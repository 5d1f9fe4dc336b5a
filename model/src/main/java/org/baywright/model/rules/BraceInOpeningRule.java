package org.baywright.model.rules;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import org.baywright.model.setout.BracedBays;
import org.baywright.model.setout.WallFace;

/**
 * Advice: a brace never crosses an opening and keeps out of bays left open, so a wall is braced in another bay, or not
 * at all; and where only an open bay is left to brace, nothing drives through there any more.
 */
final class BraceInOpeningRule implements Rule {
    @Override
    public void check(Asked asked) {
        Map<WallFace, BracedBays> walls = new LinkedHashMap<>();
        if (asked.clad()) {
            asked.walls().stream()
                    .filter(face -> !face.wall().isEnd())
                    .forEach(face -> walls.put(face, BracedBays.of(asked.definition(), face, asked.openings())));
        }
        List<String> moved = told(walls, BraceInOpeningRule::moved);
        if (!moved.isEmpty()) {
            asked.advice(
                    "brace-at-opening",
                    "bracing.bays",
                    "braces keep clear of openings and open bays: " + String.join("; ", moved),
                    "choose other bays, leave a bay of that wall without an opening, or ask the engineer how it is held;"
                            + " the roof is braced where bracing.bays says");
        }
        List<String> closing = told(walls, BraceInOpeningRule::closing);
        if (!closing.isEmpty()) {
            asked.advice(
                    "brace-in-open-bay",
                    "bracing.bays",
                    "no machine passes between the crossed braces of these bays, which are open at the floor: "
                            + String.join("; ", closing),
                    "name the bays that need no way through in bracing.bays, close a bay with wallSheets, or ask the"
                            + " engineer for a frame in place of the braces");
        }
    }

    private static List<String> told(
            Map<WallFace, BracedBays> walls, BiFunction<WallFace, BracedBays, Stream<String>> finding) {
        return walls.entrySet().stream()
                .flatMap(wall -> finding.apply(wall.getKey(), wall.getValue()))
                .toList();
    }

    private static Stream<String> moved(WallFace face, BracedBays braced) {
        return braced.used().entrySet().stream()
                .filter(e -> !e.getValue().equals(Optional.of(e.getKey())))
                .map(e -> "in the " + name(face) + " " + told(e.getKey(), e.getValue()));
    }

    private static Stream<String> closing(WallFace face, BracedBays braced) {
        return braced.open().stream().map(bay -> "bay " + bay + " of the " + name(face));
    }

    private static String told(int asked, Optional<Integer> used) {
        return used.map(bay -> "bay " + bay + " is braced in place of bay " + asked)
                .orElse("neither bay " + asked + " nor any other is free to be braced");
    }

    private static String name(WallFace face) {
        return face.wall().name().toLowerCase(Locale.ROOT) + " wall" + (face.isMain() ? "" : " of the lean-to");
    }
}
