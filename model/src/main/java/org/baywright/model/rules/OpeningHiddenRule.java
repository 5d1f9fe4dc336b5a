package org.baywright.model.rules;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.baywright.model.setout.ColumnLine;
import org.baywright.model.setout.OpeningPlace;
import org.baywright.model.setout.WallCover;

/** An opening is in a wall that is sheeted; one behind a lean-to leads into the lean-to. */
final class OpeningHiddenRule implements Rule {
    @Override
    public void check(Asked asked) {
        List<WallCover> covers = asked.covers();
        asked.openings().stream().filter(p -> !p.isWholeBay()).forEach(place -> check(asked, covers, place));
    }

    private static void check(Asked asked, List<WallCover> covers, OpeningPlace place) {
        boolean sheeted = covers.stream()
                .anyMatch(c -> c.face().equals(place.face()) && c.bay().equals(place.bay()) && c.low() <= place.sill());
        Optional<ColumnLine> before = place.face().isMain()
                ? WallCover.leanToBefore(asked.setOut(), place.face(), place.bay())
                : Optional.empty();
        if (before.isPresent() && place.sill() < roof(asked, place, before.get())) {
            behind(asked, place, before.get(), sheeted);
        } else if (!sheeted && !place.face().isMain()) {
            asked.error(
                    "opening-in-open-wall",
                    Asked.key(place),
                    "the walls of the lean-to are open, so there is nothing for it to be in",
                    "set wallSheets.leanToWalls to true, or delete the opening");
        }
    }

    /** Top of the lean-to's purlins where they meet the wall. */
    private static double roof(Asked asked, OpeningPlace place, ColumnLine lean) {
        double purlin = asked.definition().envelope().purlins().member().depth();
        return lean.roof().heightAt(place.face().axes().origin().x())
                + lean.roof().plumb(purlin);
    }

    private static void behind(Asked asked, OpeningPlace place, ColumnLine lean, boolean sheeted) {
        String side = lean.side().name().toLowerCase(Locale.ROOT);
        String label = "the " + place.opening().type().label();
        if (sheeted) {
            asked.advice(
                    "opening-into-lean-to",
                    Asked.key(place),
                    label + " leads under the lean-to on the " + side,
                    "add leanTo: " + side + " to put it into the lean-to's outer wall instead");
        } else {
            asked.error(
                    "opening-behind-lean-to",
                    Asked.key(place),
                    label + " is in a wall that is left open below the lean-to on the " + side,
                    "add leanTo: " + side + " to put it into the lean-to's outer wall, set wallSheets.behindLeanTos to"
                            + " true to close the wall behind, or delete it");
        }
    }
}
