package org.baywright.model.setout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Definitions;
import org.baywright.model.definition.Wall;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Braces close no way in while another bay of the wall can be braced: five bays, bay 2 or 1 asked for. */
class BracedBaysTest {
    private static final String SHED = """
            span: 12000
            bays: 5
            baySpacing: 6000
            eaveHeight: 4200
            roofPitch: 10
            """;

    /** Bays braced and those of them left open, of the main left wall and of the lean-to's outer wall. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                // All closed: the bay asked for.
                "width: 4000, fromBay: 1, toBay: 1 | {leanToWalls: true, behindLeanTos: true} | [] | 2 | [2] [] | none",
                // The main wall is open under the lean-to: it is braced beside it.
                "width: 4000, fromBay: 1, toBay: 3 | {} | [] | 1 | [4] [] | [1] [1]",
                // Under a lean-to along all of it every bay is open: still the one asked for, and told.
                "width: 4000 | {} | [] | 2 | [2] [2] | [2] [2]",
                // A bay of the lean-to left open for machines, and the wall behind it open too: not behind that bay.
                "width: 4000 | {leanToWalls: true} | [{type: open, wall: left, leanTo: left, bay: 2}] | 2 | [1] [1] | [1] []",
                // A door of the main wall behind an open lean-to: not before the door.
                "width: 4000 | {behindLeanTos: true} | [{type: rollerDoor, wall: left, bay: 2, width: 3000}] | 2 | [1] []"
                        + " | [1] [1]",
                // A window is no way in.
                "width: 4000 | {behindLeanTos: true} | [{type: window, wall: left, bay: 2, width: 900, height: 900,"
                        + " sill: 1000}] | 2 | [1] [] | [2] [2]",
            })
    void keepClearOfOpenBays(String leanTo, String sheets, String openings, int asked, String main, String outer) {
        Definition definition = Definitions.of(SHED + "leanTos: [{side: left, drop: 400, " + leanTo + "}]\nwallSheets: "
                + sheets + "\nopenings: " + openings + "\nbracing: {bays: [" + asked + "]}\n");
        List<WallFace> faces = WallFace.of(definition, SetOut.of(definition));
        assertEquals(main, braced(definition, faces, true));
        assertEquals(outer, braced(definition, faces, false));
    }

    private static String braced(Definition definition, List<WallFace> faces, boolean main) {
        WallFace face = faces.stream()
                .filter(f -> f.wall() == Wall.LEFT && f.isMain() == main)
                .findFirst()
                .orElseThrow();
        BracedBays braced = BracedBays.of(definition, face, OpeningPlace.of(definition, faces));
        assertTrue(braced.bays().containsAll(braced.open()));
        return braced.used().isEmpty() ? "none" : braced.bays() + " " + braced.open();
    }
}
