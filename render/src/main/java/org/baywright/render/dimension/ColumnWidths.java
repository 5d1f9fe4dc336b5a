package org.baywright.render.dimension;

import java.util.List;
import org.baywright.render.paper.Face;
import org.baywright.render.paper.Lettering;

/** How wide the columns of a table are: as wide as their content when there is room, else words give way first. */
final class ColumnWidths {
    private final Table table;

    ColumnWidths(Table table) {
        this.table = table;
    }

    /** Widths with padding, together no more than the table's width. */
    double[] widths() {
        int n = table.columns().size();
        double room = table.width() - n * 2 * Table.PAD;
        double[] natural = new double[n];
        double[] least = new double[n];
        for (int i = 0; i < n; i++) {
            natural[i] = natural(i);
            least[i] = least(i, natural[i]);
        }
        double[] widths = fitted(natural, least, room);
        for (int i = 0; i < n; i++) {
            widths[i] += 2 * Table.PAD;
        }
        return widths;
    }

    /** Between least and natural in one proportion; below least all shrink alike and words are broken inside. */
    private static double[] fitted(double[] natural, double[] least, double room) {
        double wanted = sum(natural);
        double needed = sum(least);
        double[] widths = new double[natural.length];
        for (int i = 0; i < widths.length; i++) {
            if (wanted <= room) {
                widths[i] = natural[i];
            } else if (needed <= room) {
                widths[i] = least[i] + (natural[i] - least[i]) * (room - needed) / (wanted - needed);
            } else {
                widths[i] = least[i] * room / needed;
            }
        }
        return widths;
    }

    private static double sum(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum;
    }

    private double natural(int column) {
        double widest = whole(table.columns().get(column).title(), Face.BOLD);
        for (Row row : spanning(table.rows())) {
            widest = Math.max(widest, whole(row.cells().get(column), Table.face(row)));
        }
        return widest;
    }

    private double least(int column, double natural) {
        Column c = table.columns().get(column);
        double widest = WrappedText.longestWord(c.title(), Table.TEXT, Face.BOLD);
        for (Row row : spanning(table.rows())) {
            String cell = row.cells().get(column);
            double width = c.breaks()
                    ? WrappedText.longestWord(cell, Table.TEXT, Table.face(row))
                    : whole(cell, Table.face(row));
            widest = Math.max(widest, width);
        }
        return Math.min(widest, natural);
    }

    private static List<Row> spanning(List<Row> rows) {
        return rows.stream().filter(r -> r.kind() != Row.Kind.HEADING).toList();
    }

    private static double whole(String text, Face face) {
        return Lettering.width(text, Table.TEXT, face);
    }
}
