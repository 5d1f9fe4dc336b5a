package org.baywright.model.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.baywright.model.cladding.Building;
import org.baywright.model.cladding.Flashing;
import org.baywright.model.definition.Definitions;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Runs of one folded section share stock lengths of 6000 that lap by 150; worked by hand. */
class FlashingLengthsTest {
    private static FlashingLengths lengths(double... runs) {
        List<Flashing.Run> all = Arrays.stream(runs)
                .mapToObj(r -> new Flashing.Run(new Vec3(0, 0, 0), new Vec3(r, 0, 0)))
                .toList();
        List<Vec2> fold = List.of(new Vec2(0, 0), new Vec2(50, 0), new Vec2(50, 50));
        return new FlashingLengths(new Flashing("F1", Flashing.Kind.JAMB, fold, 6000, 150, all));
    }

    /** 8000 is a whole length and 2150; 1850 and 2000 come off the other 3850 of that one, 2001 does not. */
    @ParameterizedTest
    @CsvSource({
        "2000 2000 2000, 1, 0",
        "2000 2000 2001, 2, 0",
        "3300 3300 820, 2, 0",
        "8000, 2, 1",
        "8000 1850 2000, 2, 1",
        "8000 1850 2001, 3, 1",
        "5000 5000 5000, 3, 0"
    })
    void shortRunsShareALength(String runs, int toBuy, int laps) {
        FlashingLengths lengths = lengths(
                Arrays.stream(runs.split(" ")).mapToDouble(Double::parseDouble).toArray());
        assertEquals(toBuy, lengths.toBuy());
        assertEquals(laps, lengths.laps());
    }

    /** Two doors and a window: their bill has no length that the others' off-cuts could have made. */
    @Test
    void headsAndJambsAreNotOrderedOneALength() {
        Building building = Building.of(Definitions.of(
                "span: 12000\nbays: 3\nbaySpacing: 6000\neaveHeight: 4200\nroofPitch: 10\nenvelope: full\nopenings:\n"
                        + "  - {type: door, wall: front}\n  - {type: door, wall: rear}\n"
                        + "  - {type: window, wall: left, bay: 2, width: 1800, height: 1000}\n"));
        for (String kind : List.of("head", "jamb")) {
            BillLine line = Bill.of(building).lines(BillGroup.FLASHINGS).stream()
                    .filter(l -> l.item().description().startsWith(kind))
                    .findFirst()
                    .orElseThrow();
            assertEquals((int) Math.ceil(line.net() / 6), line.quantity(), line.toString());
            assertEquals(6.0 * line.quantity(), line.order(), 1e-9);
            assertTrue(
                    line.item().note().contains(" cut from " + line.quantity() + " length"),
                    line.item().note());
        }
    }
}
