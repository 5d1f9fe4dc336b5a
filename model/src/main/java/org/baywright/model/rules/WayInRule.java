package org.baywright.model.rules;

import java.util.List;
import org.baywright.model.definition.Opening;
import org.baywright.model.setout.WallCover;

/** Advice: a closed shed needs a way in, and a bare frame has no use for openings. */
final class WayInRule implements Rule {
    @Override
    public void check(Asked asked) {
        List<Opening> openings = asked.definition().envelope().openings();
        if (!asked.clad() && !openings.isEmpty()) {
            asked.advice(
                    "openings-unused",
                    "openings",
                    "envelope is none: no wall is built for the openings to be in",
                    "set envelope to full, or delete the openings");
        }
        boolean door = openings.stream().anyMatch(o -> o.type() != Opening.Type.WINDOW);
        if (asked.clad() && !door && closed(asked)) {
            asked.advice(
                    "no-way-in",
                    "openings",
                    "every wall is closed and there is no door",
                    "add a door under openings, such as {type: rollerDoor, wall: front}");
        }
    }

    private static boolean closed(Asked asked) {
        List<WallCover> toTheFloor =
                asked.covers().stream().filter(c -> c.low() == 0).toList();
        return asked.walls().stream()
                .filter(face -> face.isMain())
                .allMatch(face -> face.bays().stream()
                        .allMatch(bay -> toTheFloor.stream()
                                .anyMatch(c -> c.face().equals(face) && c.bay().equals(bay))));
    }
}
