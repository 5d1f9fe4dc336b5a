package org.baywright.model.rules;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.baywright.model.setout.BracedBays;
import org.baywright.model.setout.WallFace;

/** Advice: a brace never crosses an opening, so a wall is braced in another bay, or not at all. */
final class BraceInOpeningRule implements Rule {
    @Override
    public void check(Asked asked) {
        List<String> moved = asked.clad()
                ? asked.walls().stream()
                        .filter(f -> !f.wall().isEnd())
                        .flatMap(face -> moved(asked, face))
                        .toList()
                : List.of();
        if (!moved.isEmpty()) {
            asked.advice(
                    "brace-at-opening",
                    "bracing.bays",
                    "braces do not cross openings: " + String.join("; ", moved),
                    "choose other bays, move the openings, or ask the engineer; the roof is braced where"
                            + " bracing.bays says");
        }
    }

    private static Stream<String> moved(Asked asked, WallFace face) {
        return BracedBays.of(asked.definition(), face, asked.openings()).used().entrySet().stream()
                .filter(e -> !e.getValue().equals(Optional.of(e.getKey())))
                .map(e -> "in the " + name(face) + " " + told(e.getKey(), e.getValue()));
    }

    private static String told(int asked, Optional<Integer> used) {
        return used.map(bay -> "bay " + bay + " is braced in place of bay " + asked)
                .orElse("neither bay " + asked + " nor any other is free to be braced");
    }

    private static String name(WallFace face) {
        return face.wall().name().toLowerCase(Locale.ROOT) + " wall" + (face.isMain() ? "" : " of the lean-to");
    }
}
