package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.baywright.render.dimension.Column;
import org.baywright.render.dimension.Row;
import org.baywright.render.dimension.Table;

/** The list of a set's sheets; when it is too long for its room, one row a series, such as S4. */
final class SheetList {
    private record Entry(String number, String title, int page) {}

    private SheetList() {}

    /**
     * The list.
     *
     * @param first the sheet that bears the list, on page 1
     * @param rest the sheets after it
     */
    static Table of(Draft first, List<Draft> rest, double width, double roomHeight) {
        List<Entry> entries = new ArrayList<>(List.of(new Entry(first.number(), first.title(), 1)));
        for (Draft draft : rest) {
            entries.add(new Entry(draft.number(), draft.title(), entries.size() + 1));
        }
        Table whole = table(entries.stream().map(e -> series(List.of(e))).toList(), width);
        return whole.pages(roomHeight).size() == 1 ? whole : table(bySeries(entries), width);
    }

    private static Table table(List<Row> rows, double width) {
        return new Table(List.of(Column.words("Sheet"), Column.words("Title"), Column.numbers("Page")), rows, width)
                .filling();
    }

    private static List<Row> bySeries(List<Entry> entries) {
        Map<String, List<Entry>> series = new LinkedHashMap<>();
        for (Entry entry : entries) {
            String name = entry.number.replaceAll("\\..*", "");
            series.computeIfAbsent(name, k -> new ArrayList<>()).add(entry);
        }
        return series.values().stream().map(SheetList::series).toList();
    }

    private static Row series(List<Entry> entries) {
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
