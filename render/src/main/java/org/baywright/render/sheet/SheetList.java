package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.baywright.render.dimension.Column;
import org.baywright.render.dimension.Row;
import org.baywright.render.dimension.Table;

/**
 * The list of a set's sheets: a row a sheet, in two columns when it is too long for its room; then a row for sheets of one
 * title that follow on; at last one row a series, such as S4.
 */
final class SheetList {
    /** Paper between two columns. */
    static final double BETWEEN = 4;

    private record Entry(String number, String title, int page) {
        String series() {
            return number.replaceAll("\\..*", "");
        }
    }

    private SheetList() {}

    /**
     * The list, in one table or two side by side.
     *
     * @param first the sheet that bears the list, on page 1
     * @param rest the sheets after it
     */
    static List<Table> of(Draft first, List<Draft> rest, double width, double roomHeight) {
        List<Entry> entries = new ArrayList<>(List.of(new Entry(first.number(), first.title(), 1)));
        for (Draft draft : rest) {
            entries.add(new Entry(draft.number(), draft.title(), entries.size() + 1));
        }
        List<Row> whole = entries.stream().map(e -> row(List.of(e))).toList();
        List<Row> runs = grouped(entries, e -> e.series() + e.title);
        List<Row> series = grouped(entries, Entry::series);
        Stream<List<Table>> parted =
                Stream.of(whole, unpaged(whole), unpaged(runs)).flatMap(r -> halves(r, width));
        return Stream.concat(Stream.of(List.of(table(whole, width))), parted)
                .filter(tables -> tables.stream()
                        .allMatch(table -> table.pages(roomHeight).size() == 1))
                .findFirst()
                .orElse(List.of(table(series, width)));
    }

    /** Without the page, so that titles have its paper. */
    private static List<Row> unpaged(List<Row> rows) {
        return rows.stream()
                .map(row -> Row.of(row.cells().get(0), row.cells().get(1)))
                .toList();
    }

    /** Two columns, the first as long as the second or a little longer or shorter, as titles take lines. */
    private static Stream<List<Table>> halves(List<Row> rows, double width) {
        int half = (rows.size() + 1) / 2;
        return IntStream.of(half, half + 1, half - 1, half + 2, half - 2)
                .filter(at -> at > 0 && at < rows.size())
                .mapToObj(at -> Stream.of(rows.subList(0, at), rows.subList(at, rows.size()))
                        .map(part -> table(part, (width - BETWEEN) / 2).tightly())
                        .toList());
    }

    private static Table table(List<Row> rows, double width) {
        List<Column> columns = List.of(Column.words("Sheet"), Column.words("Title"), Column.numbers("Page"));
        return new Table(columns.subList(0, rows.get(0).cells().size()), rows, width).filling();
    }

    private static List<Row> grouped(List<Entry> entries, Function<Entry, String> by) {
        Map<String, List<Entry>> groups = new LinkedHashMap<>();
        entries.forEach(
                e -> groups.computeIfAbsent(by.apply(e), k -> new ArrayList<>()).add(e));
        return groups.values().stream().map(SheetList::row).toList();
    }

    private static Row row(List<Entry> entries) {
        Entry first = entries.get(0);
        Entry last = entries.get(entries.size() - 1);
        if (entries.size() == 1) {
            return Row.of(first.number, first.title, String.valueOf(first.page));
        }
        boolean together = last.page - first.page == entries.size() - 1;
        String title = first.title.equals(last.title) ? first.title : first.title + " … " + last.title;
        return Row.of(first.number + " to " + last.number, title, first.page + (together ? " to " : " … ") + last.page);
    }
}
