package org.baywright.model.rules;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.baywright.model.setout.BracedBays;
import org.baywright.model.setout.WallFace;

/** Advice: a brace never crosses an opening, so a wall is braced in another bay, or not at all. */
final class BraceInOpeningRule implements Rule {
    @Override
    public void check(Asked asked) {
        if (asked.clad()) {
            asked.walls().stream().filter(f -> !f.wall().isEnd()).forEach(face -> check(asked, face));
        }
    }

    private static void check(Asked asked, WallFace face) {
        BracedBays braced = BracedBays.of(asked.definition(), face, asked.openings());
        String moved = braced.used().entrySet().stream()
                .filter(e -> !e.getValue().equals(Optional.of(e.getKey())))
                .map(e -> told(e.getKey(), e.getValue()))
                .collect(Collectors.joining("; "));
        if (!moved.isEmpty()) {
            asked.advice(
                    "brace-at-opening",
                    "bracing.bays",
                    "an opening of the " + name(face) + " takes a braced bay: " + moved,
                    braced.bays().isEmpty()
                            ? "free a bay of this wall, or have the engineer brace it as a portal"
                            : "ask the engineer whether that will do; the roof is braced as bracing.bays says");
        }
    }

    private static String told(int asked, Optional<Integer> used) {
        return used.map(bay -> "bay " + bay + " is braced in place of bay " + asked)
                .orElse("bay " + asked + " is not braced, and no other bay is free");
    }

    private static String name(WallFace face) {
        return face.wall().name().toLowerCase(Locale.ROOT) + " wall" + (face.isMain() ? "" : " of the lean-to");
    }
}
