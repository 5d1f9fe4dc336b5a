package org.baywright.render.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Definitions;
import org.baywright.model.definition.Seeds;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Shed;
import org.junit.jupiter.api.Test;

/** {@code setout.csv} against the anchors that the model drilled and the string lines it stands on. */
class SetOutTableTest {
    @Provide
    Arbitrary<Definition> sheds() {
        return Definitions.clad();
    }

    private static List<String[]> rows(Shed shed) throws IOException {
        StringBuilder out = new StringBuilder();
        SetOutTable.write(shed, out);
        List<String[]> rows = out.toString().lines().map(l -> l.split(",", -1)).toList();
        assertEquals("along_mm", rows.get(0)[5]);
        return rows.subList(1, rows.size());
    }

    private static String at(double along, double across) {
        return String.format(Locale.ROOT, "%.0f %.0f", along * 10, across * 10);
    }

    @Property(tries = 25, seed = Seeds.SHEDS)
    void everyAnchorHasOneRow(@ForAll("sheds") Definition definition) throws IOException {
        Shed shed = Shed.of(definition);
        List<String[]> rows = rows(shed);
        List<String> listed = rows.stream()
                .filter(r -> r[3].equals("hole"))
                .map(r -> at(Double.parseDouble(r[5]), Double.parseDouble(r[6])))
                .sorted()
                .toList();
        List<String> drilled = shed.anchorHoles().stream()
                .map(h -> at(CellRounding.tenth(h.y()), CellRounding.tenth(h.x())))
                .sorted()
                .toList();
        assertEquals(drilled, listed);
        long plates = rows.stream().filter(r -> r[3].equals("centre")).count();
        assertEquals(shed.count(PartKind.BASE_PLATE), plates);
    }

    /** Rounded as the table rounds: half a last place away from zero. */
    private static final class CellRounding {
        static double tenth(double value) {
            return Double.parseDouble(Cell.of(value, 1).text());
        }
    }

    /** Posts of the end wall stand nearer to line 1 than the columns' middles, yet the datum's plate heads the list. */
    @Test
    void thePlateAtTheDatumComesFirst() throws IOException {
        Shed shed = Shed.of(Definitions.of("span: 12000\nbays: 4\nbaySpacing: 6000\neaveHeight: 4200\nroofPitch: 10\n"
                + "column: 200UB25.4\nrafter: 310UB40.4\n"));
        assertTrue(shed.count(PartKind.MULLION) > 0);
        assertEquals("A/1", rows(shed).get(0)[0]);
    }

    /** The plate under a column stands half the column inside its string line, turned by its side. */
    @Property(tries = 25, seed = Seeds.SHEDS)
    void platesStandBehindTheirLines(@ForAll("sheds") Definition definition) throws IOException {
        Shed shed = Shed.of(definition);
        for (String[] row : rows(shed)) {
            String[] grid = row[0].split("/");
            boolean column = shed.parts().stream()
                    .anyMatch(p -> p.mark().equals(row[2])
                            && (p.kind() == PartKind.COLUMN || p.kind() == PartKind.LEAN_TO_COLUMN));
            if (column && row[3].equals("centre")) {
                int frame = Integer.parseInt(grid[1]);
                double along = Double.parseDouble(row[5]);
                double across = Double.parseDouble(row[6]);
                boolean stands = shed.setOut().columnLines().stream()
                        .filter(l -> l.letter().equals(grid[0]) && l.has(frame))
                        .anyMatch(l -> Math.abs(l.x()
                                                + l.inward()
                                                        * l.column(definition, frame)
                                                                .depth()
                                                        / 2
                                                - across)
                                        < 0.051
                                && row[7].equals(l.inward() > 0 ? "0" : "180")
                                && Math.abs(shed.setOut()
                                                        .middle(
                                                                frame,
                                                                l.column(definition, frame)
                                                                        .width())
                                                - along)
                                        < 0.051);
                assertTrue(stands, () -> List.of(row).stream().collect(Collectors.joining(",")));
            }
        }
    }
}
