package org.baywright.render.dimension;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Notes parted into columns. */
class NotesTest {
    private static Notes words(int... counts) {
        List<Paragraph> paragraphs = Arrays.stream(counts)
                .mapToObj(n -> Paragraph.of("word ".repeat(n).strip()))
                .toList();
        return Notes.of(paragraphs, 100);
    }

    /** The highest paragraph takes more than an even share: the foot of its column ran into the title block. */
    @Test
    void noColumnIsHigherThanIsSaid() {
        Notes notes = words(5, 200, 5, 5);
        Notes.Columns columns = notes.inColumns(3);
        assertTrue(notes.height() / 3 < words(200).height(), "the case is there");
        assertEquals(3, columns.notes().size());
        columns.notes().forEach(column -> assertTrue(column.height() <= columns.height() + 1e-9));
    }

    @Test
    void evenColumnsAreNoHigherThanTheyMust() {
        Notes.Columns columns = words(10, 10, 10, 10, 10, 10).inColumns(3);
        assertEquals(3, columns.notes().size());
        assertTrue(columns.height() <= words(10, 10).height() + 1);
    }
}
