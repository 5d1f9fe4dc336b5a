package org.baywright.render.dimension;

import java.util.Arrays;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.function.ToDoubleBiFunction;
import java.util.stream.IntStream;
import org.baywright.render.paper.Face;
import org.baywright.render.paper.Lettering;

/** How wide the columns of a table are: as wide as their content when there is room, else words give way first. */
final class ColumnWidths {
    /** A column no wider than this holds codes, which are best left whole. */
    private static final double SHORT = 32;

    private final Table table;

    ColumnWidths(Table table) {
        this.table = table;
    }

    /** Widths with padding, together no more than the table's width. */
    double[] widths() {
        double room = table.width() - table.columns().size() * 2 * Table.PAD;
        double[] widths = fitted(room);
        if (table.fills()) {
            fill(widths, Math.max(0, room - sum(widths)));
        }
        return Arrays.stream(widths).map(w -> w + 2 * Table.PAD).toArray();
    }

    /** What gives way, in turn: nothing, titles, long words columns, short ones, and at last words themselves. */
    private double[] fitted(double room) {
        double[] whole = each(i -> Math.max(whole(title(i), Face.BOLD), content(i, ColumnWidths::whole)));
        if (sum(whole) <= room) {
            return whole;
        }
        double[] titlesBroken = each(i -> Math.max(longestWord(title(i), Face.BOLD), content(i, ColumnWidths::whole)));
        double[] longBroken = each(i -> titlesBroken[i] <= SHORT ? titlesBroken[i] : least(i));
        double[] allBroken = each(this::least);
        for (double[] least : List.of(longBroken, allBroken)) {
            if (sum(least) <= room) {
                return between(least, titlesBroken, room);
            }
        }
        double factor = room / sum(allBroken);
        return each(i -> allBroken[i] * factor);
    }

    /** Wide columns give way first: all are held to the one width that just fits, none goes below its least. */
    private static double[] between(double[] least, double[] natural, double room) {
        double low = 0;
        double high = room;
        for (int i = 0; i < 50; i++) {
            double middle = (low + high) / 2;
            boolean fits = sum(held(natural, least, middle)) <= room;
            low = fits ? middle : low;
            high = fits ? high : middle;
        }
        return held(natural, least, low);
    }

    private static double[] held(double[] natural, double[] least, double most) {
        double[] widths = new double[natural.length];
        for (int i = 0; i < widths.length; i++) {
            widths[i] = Math.min(natural[i], Math.max(least[i], most));
        }
        return widths;
    }

    /** Spare room goes to the columns of words in proportion, so numbers stay together; without words to all. */
    private void fill(double[] widths, double spare) {
        boolean words = table.columns().stream().anyMatch(Column::breaks);
        double[] shares = each(i -> words && !table.columns().get(i).breaks() ? 0 : widths[i]);
        double all = sum(shares);
        for (int i = 0; i < widths.length; i++) {
            widths[i] += spare * shares[i] / all;
        }
    }

    private static double sum(double[] values) {
        return Arrays.stream(values).sum();
    }

    private double least(int column) {
        double content =
                content(column, table.columns().get(column).breaks() ? ColumnWidths::longestWord : ColumnWidths::whole);
        return Math.max(longestWord(title(column), Face.BOLD), content);
    }

    /** The widest cell of a column, headings aside. */
    private double content(int column, ToDoubleBiFunction<String, Face> measure) {
        return table.rows().stream()
                .filter(row -> row.kind() != Row.Kind.HEADING)
                .mapToDouble(row -> measure.applyAsDouble(row.cells().get(column), Table.face(row)))
                .max()
                .orElse(0);
    }

    private double[] each(IntToDoubleFunction width) {
        return IntStream.range(0, table.columns().size()).mapToDouble(width).toArray();
    }

    private String title(int column) {
        return table.columns().get(column).title();
    }

    private static double whole(String text, Face face) {
        return Lettering.width(text, Table.TEXT, face);
    }

    private static double longestWord(String text, Face face) {
        return WrappedText.longestWord(text, Table.TEXT, face);
    }
}
