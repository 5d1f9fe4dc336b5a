package org.baywright.render.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.baywright.render.dimension.Column;
import org.baywright.render.dimension.Row;
import org.baywright.render.dimension.Table;
import org.baywright.render.mark.Text;
import org.junit.jupiter.api.Test;

/** Sheets of drawings and of tables: no more than needed, the last not nearly empty, titles true. */
class FillingTest {
    private static final double WIDTH = SheetFrame.room().getWidth();
    private static final double HEIGHT = SheetFrame.room().getHeight();

    private static Block block(String name, double share) {
        return new Block(name, WIDTH, share * HEIGHT, List.of());
    }

    private static List<String> titles(Block... blocks) {
        return new BlockFlow(List.of(blocks))
                .drafts("F", "Pieces").stream().map(Draft::title).toList();
    }

    /** A small piece fills the sheet before a large one; the title takes in no piece of another sheet. */
    @Test
    void aSmallDrawingGoesBeforeALargeOneThatNoLongerFits() {
        assertEquals(
                List.of("Pieces A, C", "Pieces B, D"),
                titles(block("A", 0.6), block("B", 0.6), block("C", 0.3), block("D", 0.3)));
        assertEquals(
                List.of("Pieces A to B", "Pieces C to D"),
                titles(block("A", 0.4), block("B", 0.4), block("C", 0.5), block("D", 0.4)));
    }

    /** Three and one of alike pieces become two and two. */
    @Test
    void theLastSheetGetsItsShare() {
        assertEquals(
                List.of("Pieces A to B", "Pieces C to D"),
                titles(block("A", 0.29), block("B", 0.29), block("C", 0.29), block("D", 0.29)));
    }

    private static List<Draft> table(int rows) {
        SheetFlow flow = new SheetFlow();
        List<Row> all =
                IntStream.range(0, rows).mapToObj(i -> Row.of("r" + i, "words")).toList();
        flow.table("Table", new Table(List.of(Column.words("Row"), Column.words("What")), all, WIDTH).filling());
        return flow.drafts("T", "Table");
    }

    private static long rows(Draft draft) {
        return Sheds.texts(draft).filter(t -> t.content().matches("r[0-9]+")).count();
    }

    /** As many rows as a sheet holds and two more: closer on one sheet; many more than it holds: on two, evenly. */
    @Test
    void fewRowsOverStandCloserAndMoreAreSharedOut() {
        int fit = 1;
        while (table(fit + 1).size() == 1 && pitch(table(fit + 1).get(0)) > pitch(table(2).get(0)) - 1e-6) {
            fit++;
        }
        Draft tight = table(fit + 2).get(0);
        assertEquals(1, table(fit + 2).size());
        assertTrue(pitch(tight) < pitch(table(fit).get(0)) - 0.1, "rows stand closer");
        List<Draft> two = table(fit + 9);
        assertEquals(2, two.size());
        assertEquals(fit + 9, rows(two.get(0)) + rows(two.get(1)));
        assertTrue(rows(two.get(1)) > fit / 3, () -> "on the last sheet: " + rows(two.get(1)));
    }

    private static double pitch(Draft draft) {
        List<Text> rows = new ArrayList<>(
                Sheds.texts(draft).filter(t -> t.content().matches("r[01]")).toList());
        return rows.get(0).at().y() - rows.get(1).at().y();
    }
}
