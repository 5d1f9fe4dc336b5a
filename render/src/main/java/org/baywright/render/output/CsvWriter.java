package org.baywright.render.output;

import java.io.IOException;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Writes a table as comma-separated values, to be stored as UTF-8.
 *
 * <p>@source RFC 4180: lines end CR LF, fields with a comma, quote or line end stand in quotes, quotes are doubled
 */
public final class CsvWriter {
    private CsvWriter() {}

    /** Writes the header, then the rows, each as wide as the header. */
    public static void write(List<String> header, List<List<Cell>> rows, Appendable out) throws IOException {
        out.append(line(header.stream().map(Cell::of).toList()));
        for (List<Cell> row : rows) {
            if (row.size() != header.size()) {
                throw new IllegalArgumentException("a row of " + row.size() + " under " + header.size() + " headings");
            }
            out.append(line(row));
        }
    }

    private static String line(List<Cell> cells) {
        return cells.stream().map(Cell::text).map(CsvWriter::quoted).collect(Collectors.joining(",", "", "\r\n"));
    }

    private static String quoted(String text) {
        boolean plain = text.chars().noneMatch(c -> c == ',' || c == '"' || c == '\r' || c == '\n');
        return plain ? text : '"' + text.replace("\"", "\"\"") + '"';
    }
}
