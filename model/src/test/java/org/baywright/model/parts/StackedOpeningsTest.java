package org.baywright.model.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Definitions;
import org.baywright.model.problem.Problem;
import org.baywright.model.problem.Where;
import org.baywright.model.rules.ShedRules;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A window over a door, and openings lower than the rows' spacing. */
class StackedOpeningsTest {
    private static final String SHED = """
            span: 7000
            bays: 1
            baySpacing: 6000
            eaveHeight: 4500
            roofPitch: 10
            mullions: {section: SHS 50x50x3}
            girts: {section: %s, place: %s}
            openings:
              - {type: door, wall: left, bay: 1, width: 3300, height: %s}
              - {type: window, wall: left, bay: 1, width: 3300, height: 600, sill: %s}
            """;

    private final WallPropertyTest wall = new WallPropertyTest();

    /** Heads and sills at many heights past the rows, from the least room between them up. */
    @ParameterizedTest
    @ValueSource(strings = {"C150-15", "TH64-10", "RHS 100x50x3"})
    void steelBetweenThemKeepsApartAndOutOfBoth(String girt) {
        for (int head = 1800; head <= 2400; head += 150) {
            for (int gap = 100; gap <= 340; gap += 60) {
                keepsApart(Definitions.of(SHED.formatted(girt, "outside", head, head + gap)));
            }
        }
        keepsApart(Definitions.of(SHED.formatted("RHS 100x50x3", "flush", 2000, 2400)));
    }

    private void keepsApart(Definition shed) {
        List<Problem> errors = ShedRules.check(shed, Where::whole).stream()
                .filter(Problem::isError)
                .toList();
        assertEquals(List.of(), errors);
        wall.nothingPassesThroughAnOpening(shed);
        wall.wallSteelRunsIntoNothing(shed);
    }

    @Test
    void theyShareTheirJambs() {
        Shed shed = Shed.of(Definitions.of(SHED.formatted("C150-15", "outside", 2000, 2400)));
        assertEquals(2, places(shed, PartKind.JAMB));
        assertEquals(2, places(shed, PartKind.HEADER));
        assertEquals(1, places(shed, PartKind.SILL));
    }

    private static int places(Shed shed, PartKind kind) {
        return shed.parts(kind).stream().mapToInt(p -> p.places().size()).sum();
    }

    /** Rows at 150 and 1238 pass below and over it, both long enough to be bridged. */
    @Test
    void bridgingStopsAtAnOpeningBetweenTwoRows() {
        String low = SHED.formatted("C150-15", "outside", 2000, 2400);
        low = low.substring(0, low.indexOf("openings:"))
                + "openings: [{type: window, wall: left, bay: 1, width: 4000, height: 700, sill: 350}]\n";
        keepsApart(Definitions.of(low));
    }
}
