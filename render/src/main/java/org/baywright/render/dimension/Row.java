package org.baywright.render.dimension;

import java.util.List;

/**
 * A row of a table.
 *
 * @param cells one a column; a heading has one cell that runs over all columns
 */
public record Row(List<String> cells, Kind kind) {
    /** How a row is set. */
    public enum Kind {
        BODY,
        /** Bold, over the rows it names, never last on a page. */
        HEADING,
        /** Bold under a wide rule. */
        TOTAL
    }

    /** Copies the cells. */
    public Row {
        cells = List.copyOf(cells);
    }

    /** An ordinary row. */
    public static Row of(String... cells) {
        return new Row(List.of(cells), Kind.BODY);
    }

    /** A heading over all columns. */
    public static Row heading(String words) {
        return new Row(List.of(words), Kind.HEADING);
    }

    /** A total. */
    public static Row total(String... cells) {
        return new Row(List.of(cells), Kind.TOTAL);
    }
}
