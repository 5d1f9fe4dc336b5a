package org.baywright.render.sheet;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Iterator;
import java.util.List;
import org.baywright.model.takeoff.BillGroup;
import org.baywright.model.takeoff.BillLine;
import org.baywright.model.takeoff.Costs;
import org.baywright.model.takeoff.PriceList;
import org.baywright.render.dimension.Column;
import org.baywright.render.dimension.Row;
import org.baywright.render.dimension.Table;

/** Prices beside the lines of an order's tables, and the order's sums. */
record CostColumns(Costs costs) {
    /** What stands where a price is wanting; never a zero. */
    private static final String UNPRICED = "no price";

    /** A table of one group, line by line, with its prices, its costs and their sum. */
    Table beside(Table table, BillGroup group) {
        List<Column> columns = new ArrayList<>(table.columns());
        columns.add(Column.numbers("Price"));
        columns.add(Column.numbers("Cost"));
        Iterator<BillLine> lines = costs.bill().lines(group).iterator();
        List<Row> rows = new ArrayList<>();
        for (Row row : table.rows()) {
            rows.add(row.kind() == Row.Kind.BODY ? priced(row, lines.next()) : row);
        }
        Row last = rows.get(rows.size() - 1);
        if (last.kind() == Row.Kind.TOTAL) {
            rows.set(rows.size() - 1, with(last, "", total(group)));
        } else {
            List<String> cells = new ArrayList<>(List.of("", group.shortTitle()));
            cells.addAll(Collections.nCopies(columns.size() - 3, ""));
            cells.add(total(group));
            rows.add(new Row(cells, Row.Kind.TOTAL));
        }
        return new Table(columns, rows, table.width(), table.fills());
    }

    private Row priced(Row row, BillLine line) {
        String price = costs.price(line).map(CostColumns::price).orElse("");
        return costs.cost(line).map(c -> with(row, price, money(c))).orElseGet(() -> with(row, "", UNPRICED));
    }

    private String total(BillGroup group) {
        return costs.isPriced(group) ? money(costs.total(group)) : UNPRICED;
    }

    private static String price(PriceList.Price price) {
        return price.amount().toPlainString() + "/" + price.unit();
    }

    private static Row with(Row row, String price, String cost) {
        List<String> cells = new ArrayList<>(row.cells());
        cells.add(price);
        cells.add(cost);
        return new Row(cells, row.kind());
    }

    /** Section by section, and all. */
    Table sums() {
        List<Row> rows = new ArrayList<>();
        for (BillGroup group : BillGroup.values()) {
            List<BillLine> lines = costs.bill().lines(group);
            if (group.isBought() && !lines.isEmpty()) {
                long without =
                        lines.stream().filter(l -> costs.cost(l).isEmpty()).count();
                rows.add(Row.of(
                        group.shortTitle(),
                        String.valueOf(lines.size()),
                        String.valueOf(without),
                        without == lines.size() ? UNPRICED : money(costs.total(group))));
            }
        }
        rows.add(Row.total("Total of the priced lines", "", "", money(costs.total())));
        String currency = costs.currency().isEmpty() ? "" : ", " + costs.currency();
        return new Table(
                List.of(
                        Column.words("Section"),
                        Column.numbers("Lines"),
                        Column.numbers("Without a price"),
                        Column.numbers("Cost" + currency)),
                rows,
                160);
    }

    private static String money(BigDecimal amount) {
        return amount.toPlainString();
    }
}
