package org.baywright.render.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Definitions;
import org.baywright.model.definition.Seeds;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Shed;
import org.baywright.render.dimension.Row;
import org.junit.jupiter.api.Test;

/** The order of erection stands every member once, from a braced bay outwards. */
class ErectionSheetTest {
    private static final int WHAT = 1;
    private static final int PIECES = 3;

    @Provide
    Arbitrary<Definition> clad() {
        return Definitions.clad();
    }

    @Property(tries = 40, seed = Seeds.SHEDS)
    void everyMemberIsStoodOnce(@ForAll("clad") Definition definition) {
        Shed shed = Shed.of(definition);
        int told = ErectionSheet.rows(shed).stream()
                .map(row -> row.cells().get(PIECES))
                .filter(cell -> !cell.isEmpty())
                .mapToInt(Integer::parseInt)
                .sum();
        int members = shed.parts().stream()
                .filter(p -> p.kind().isMember() && p.kind() != PartKind.LIFTING_BRACKET)
                .mapToInt(Part::quantity)
                .sum();
        assertEquals(members, told);
    }

    @Test
    void startsInTheBracedBay() {
        List<String> what = ErectionSheet.rows(Shed.of(Definitions.of(Sheds.FULL + "bracing: {bays: [3]}\n"))).stream()
                .map(row -> row.cells().get(WHAT))
                .toList();
        assertEquals(
                List.of(
                        "frame 3",
                        "frame 4",
                        "purlins and braces of bay 3-4",
                        "frame 5",
                        "purlins and braces of those bays",
                        "frames 2 to 1, one by one",
                        "purlins and braces of those bays"),
                what.subList(0, 7));
    }

    @Test
    void oneBayHasNothingToGoOnTo() {
        List<Row> rows = ErectionSheet.rows(Shed.of(Definitions.of(
                "span: 6000\nbays: 1\nbaySpacing: 4000\neaveHeight: 3000\nroofPitch: 10\nenvelope: none\n")));
        assertTrue(rows.stream().noneMatch(r -> r.cells().get(WHAT).contains("one by one")));
        assertEquals("frame 2", rows.get(1).cells().get(WHAT));
    }
}
