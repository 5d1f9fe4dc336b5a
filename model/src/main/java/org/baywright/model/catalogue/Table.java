package org.baywright.model.catalogue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Function;

/**
 * A data file of this package: a header row, then rows of values between commas, without quotes.
 *
 * <p>The last column takes the rest of its line, so that a source may hold commas. A plain split of lines, because
 * every run of the program waits for these files.
 */
final class Table {
    private final List<String> columns;

    private Table(String header) {
        columns = List.of(header.split(","));
    }

    /** Every row of a file beside this class, made into something. */
    static <T> List<T> read(String file, Function<Row, T> make) {
        try (BufferedReader lines = new BufferedReader(
                new InputStreamReader(Table.class.getResourceAsStream(file), StandardCharsets.UTF_8))) {
            Table table = new Table(lines.readLine());
            return lines.lines().map(line -> make.apply(table.row(line))).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Row row(String line) {
        String[] values = line.split(",", columns.size());
        if (values.length != columns.size()) {
            throw new IllegalStateException("a row of the catalogue lacks values: " + line);
        }
        return new Row(this, values);
    }

    /** One row, asked by the names in the header. */
    record Row(Table table, String[] values) {
        String text(String column) {
            return values[table.columns.indexOf(column)];
        }

        double number(String column) {
            return Double.parseDouble(text(column));
        }
    }
}
