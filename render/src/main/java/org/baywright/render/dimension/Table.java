package org.baywright.render.dimension;

import java.util.ArrayList;
import java.util.List;
import org.baywright.render.paper.Face;

/**
 * A schedule or bill on a sheet.
 *
 * @param width the most it may take, paper mm
 * @param fills whether it takes all of that even when its words need less
 * @param tight whether its rows stand closer, so that a few more go on a sheet
 */
public record Table(List<Column> columns, List<Row> rows, double width, boolean fills, boolean tight) {
    static final double TEXT = Drafting.TEXT;

    /** Room left and right of a cell's words. */
    static final double PAD = 1.8;

    /** Room above and below a cell's words, beyond the line of text itself. */
    private static final double LEAD = 0.7;

    /** The same in a table that is set tight: the letters of two rows are still a millimetre apart. */
    private static final double TIGHT_LEAD = 0.45;

    /** Checks that every row fits the columns. */
    public Table {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
        int n = columns.size();
        if (n == 0 || !(width > n * 4 * PAD)) {
            throw new IllegalArgumentException("a table needs columns and room for them");
        }
        for (Row row : rows) {
            if (row.cells().size() != (row.kind() == Row.Kind.HEADING ? 1 : n)) {
                throw new IllegalArgumentException("a row needs one cell a column: " + row.cells());
            }
        }
    }

    /** A table as wide as its words need. */
    public Table(List<Column> columns, List<Row> rows, double width) {
        this(columns, rows, width, false);
    }

    /** A table whose rows stand as usual. */
    public Table(List<Column> columns, List<Row> rows, double width, boolean fills) {
        this(columns, rows, width, fills, false);
    }

    /** The same table over the whole width, so that tables under each other line up. */
    public Table filling() {
        return new Table(columns, rows, width, true, tight);
    }

    /** The same table with less room between its rows. */
    public Table tightly() {
        return new Table(columns, rows, width, fills, true);
    }

    static Face face(Row row) {
        return row.kind() == Row.Kind.BODY ? Face.REGULAR : Face.BOLD;
    }

    /** The parts of the table that each fit a room of this height, header repeated; at least one. */
    public List<TablePart> pages(double roomHeight) {
        return pages(roomHeight, roomHeight);
    }

    /** The same when the first part stands under something else and has another height. */
    public List<TablePart> pages(double firstHeight, double roomHeight) {
        double[] widths = new ColumnWidths(this).widths();
        double lead = tight ? TIGHT_LEAD : LEAD;
        SetRow header = SetRow.header(columns, widths, lead);
        double first = firstHeight - header.height();
        double room = roomHeight - header.height();
        double least = Math.min(first, room);
        if (least < SetRow.height(1, lead)) {
            throw new IllegalArgumentException("a table needs room for its header and one line");
        }
        List<SetRow> waiting = new ArrayList<>();
        rows.forEach(row -> waiting.addAll(SetRow.of(row, columns, widths, lead).pieces(least)));
        return dealt(waiting, header, widths, first, room);
    }

    private List<TablePart> dealt(List<SetRow> waiting, SetRow header, double[] widths, double first, double others) {
        List<TablePart> parts = new ArrayList<>();
        List<SetRow> page = new ArrayList<>();
        double used = 0;
        for (int i = 0; i < waiting.size(); i++) {
            SetRow row = waiting.get(i);
            double room = parts.isEmpty() ? first : others;
            // A heading goes over to the next page together with the row it stands on.
            boolean keepsNext = row.kind() == Row.Kind.HEADING && i + 1 < waiting.size();
            double next = keepsNext ? waiting.get(i + 1).height() : 0;
            boolean full = used + row.height() + (row.height() + next <= room ? next : 0) > room + 1e-9;
            if (full && !page.isEmpty()) {
                parts.add(new TablePart(columns, widths, header, page));
                page = new ArrayList<>();
                used = 0;
            }
            page.add(row);
            used += row.height();
        }
        parts.add(new TablePart(columns, widths, header, page));
        return parts;
    }
}
