package org.baywright.render.dimension;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.baywright.render.paper.Face;

/**
 * A row whose words are broken into lines.
 *
 * @param cells the lines of each cell
 * @param lead room above and below the words
 */
record SetRow(List<List<String>> cells, Row.Kind kind, Face face, double lead) {
    private static final double ROUNDING = 1e-9;

    SetRow {
        cells = cells.stream().map(List::copyOf).toList();
    }

    static SetRow header(List<Column> columns, double[] widths, double lead) {
        return wrapped(columns.stream().map(Column::title).toList(), widths, Row.Kind.BODY, Face.BOLD, lead);
    }

    static SetRow of(Row row, List<Column> columns, double[] widths, double lead) {
        double[] room = row.kind() == Row.Kind.HEADING
                ? new double[] {Arrays.stream(widths).sum()}
                : widths;
        return wrapped(row.cells(), room, row.kind(), Table.face(row), lead);
    }

    private static SetRow wrapped(List<String> cells, double[] widths, Row.Kind kind, Face face, double lead) {
        List<List<String>> lines = new ArrayList<>();
        for (int i = 0; i < cells.size(); i++) {
            lines.add(WrappedText.lines(cells.get(i), widths[i] - 2 * Table.PAD, Table.TEXT, face));
        }
        return new SetRow(lines, kind, face, lead);
    }

    int lines() {
        return Math.max(1, cells.stream().mapToInt(List::size).max().orElse(1));
    }

    double height() {
        return height(lines(), lead);
    }

    static double height(int lines, double lead) {
        return Drafting.line() + (lines - 1) * Drafting.LINE_PITCH * Table.TEXT + 2 * lead;
    }

    /** The row itself, or when it is taller than a whole page, pieces that each fit. */
    List<SetRow> pieces(double room) {
        int most = 1 + (int) Math.max(0, (room - height(1, lead)) / (Drafting.LINE_PITCH * Table.TEXT) + ROUNDING);
        if (lines() <= most) {
            return List.of(this);
        }
        List<SetRow> pieces = new ArrayList<>();
        for (int first = 0; first < lines(); first += most) {
            pieces.add(lines(first, first + most));
        }
        return pieces;
    }

    private SetRow lines(int first, int end) {
        List<List<String>> some = cells.stream()
                .map(c -> c.subList(Math.min(first, c.size()), Math.min(end, c.size())))
                .toList();
        return new SetRow(some, kind, face, lead);
    }
}
