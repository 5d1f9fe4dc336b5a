package org.baywright.render.sheet;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.baywright.model.cladding.Building;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Definitions;
import org.baywright.model.definition.Envelope;
import org.baywright.model.definition.Opening;
import org.baywright.model.definition.Wall;
import org.baywright.render.dimension.TurnedBox;
import org.baywright.render.mark.Bounds;
import org.baywright.render.mark.Text;

/** Closed sheds of the sheet tests. */
final class Sheds {
    static final String FULL = "name: Store\nspan: 12000\nbays: 4\nbaySpacing: 6000\neaveHeight: 4200\nroofPitch: 10\n"
            + "envelope: full\n";
    static final String LEAN = "leanTos:\n  - {side: right, width: 4000, pitch: 5, drop: 450, fromBay: 1, toBay: 2}\n";

    private Sheds() {}

    static Building closed(String yaml, Opening... openings) {
        Definition d = Definitions.of(yaml);
        Envelope e = d.envelope();
        Envelope opened = new Envelope(
                e.extent(),
                e.purlins(),
                e.walls(),
                e.bracing(),
                e.sheeting(),
                e.roofWater(),
                List.of(openings),
                e.liftingBeam());
        return Building.of(Definitions.with(d, opened));
    }

    static Opening[] openings() {
        return new Opening[] {
            opening(Opening.Type.ROLLER_DOOR, Wall.FRONT, OptionalInt.empty(), new Opening.Size(4000, 3600, 0)),
            opening(Opening.Type.DOOR, Wall.LEFT, OptionalInt.of(2), new Opening.Size(860, 2090, 0)),
            opening(Opening.Type.WINDOW, Wall.LEFT, OptionalInt.of(3), new Opening.Size(1800, 900, 1200)),
            new Opening(
                    Opening.Type.OPEN,
                    Wall.RIGHT,
                    Optional.empty(),
                    OptionalInt.of(4),
                    Optional.empty(),
                    OptionalDouble.empty())
        };
    }

    private static Opening opening(Opening.Type type, Wall wall, OptionalInt bay, Opening.Size size) {
        return new Opening(type, wall, Optional.empty(), bay, Optional.of(size), OptionalDouble.empty());
    }

    static Stream<Text> texts(Draft draft) {
        return draft.marks().stream().filter(Text.class::isInstance).map(Text.class::cast);
    }

    /** No words on words, everything above the band. */
    static void assertReadable(Draft draft) {
        draft.marks().forEach(m -> assertTrue(SheetFrame.aboveBand().covers(Bounds.of(m)), "runs out: " + m));
        List<Text> texts = texts(draft).toList();
        for (int i = 0; i < texts.size(); i++) {
            TurnedBox box = TurnedBox.of(texts.get(i));
            for (int j = 0; j < i; j++) {
                assertFalse(
                        box.overlaps(TurnedBox.of(texts.get(j))),
                        draft.number() + ": '" + texts.get(i).content() + "' on '"
                                + texts.get(j).content() + "'");
            }
        }
    }
}
