package org.baywright.render.output;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.baywright.model.takeoff.Bill;
import org.baywright.model.takeoff.BillLine;
import org.baywright.model.takeoff.Costs;
import org.baywright.model.takeoff.PriceList;

/** {@code bill-of-materials.csv}: one row a line of the bill. */
public final class BillTable {
    private static final List<String> HEADER = List.of(
            "group",
            "item",
            "grade",
            "length_mm",
            "quantity",
            "unit",
            "net",
            "allowance",
            "order",
            "mass_kg",
            "marks",
            "note");

    private BillTable() {}

    private static final List<String> COST_HEADER = List.of("price", "price_unit", "cost", "currency");

    /** Writes a bill. */
    public static void write(Bill bill, Appendable out) throws IOException {
        CsvWriter.write(HEADER, bill.lines().stream().map(BillTable::row).toList(), out);
    }

    /** Writes a bill with what each line costs; a line without a price has empty fields. */
    public static void write(Costs costs, Appendable out) throws IOException {
        List<String> header = new ArrayList<>(HEADER);
        header.addAll(COST_HEADER);
        CsvWriter.write(
                header,
                costs.bill().lines().stream().map(line -> row(line, costs)).toList(),
                out);
    }

    private static List<Cell> row(BillLine line, Costs costs) {
        List<Cell> cells = new ArrayList<>(row(line));
        Optional<BigDecimal> cost = costs.cost(line);
        Optional<PriceList.Price> price = costs.price(line).filter(p -> cost.isPresent());
        cells.add(Cell.of(price.map(p -> p.amount().toPlainString()).orElse("")));
        cells.add(Cell.of(price.map(PriceList.Price::unit).orElse("")));
        cells.add(Cell.of(cost.map(BigDecimal::toPlainString).orElse("")));
        cells.add(Cell.of(cost.isPresent() ? costs.currency() : ""));
        return cells;
    }

    private static List<Cell> row(BillLine line) {
        int decimals = line.unit().decimals();
        return List.of(
                Cell.of(line.group().title()),
                Cell.of(line.item().description()),
                Cell.of(line.item().grade()),
                line.item().lengthMm() > 0 ? Cell.of(line.item().lengthMm(), 1) : Cell.of(""),
                Cell.of(line.quantity()),
                Cell.of(line.unit().symbol()),
                Cell.of(line.net(), decimals),
                Cell.of(line.allowance(), decimals),
                Cell.of(line.order(), decimals),
                Cell.of(line.massKg(), 1),
                Cell.of(marks(line)),
                Cell.of(line.item().note()));
    }

    /** Marks are apart by blanks, unless a name among them has a blank itself. */
    private static String marks(BillLine line) {
        List<String> marks = line.item().marks();
        return String.join(marks.stream().anyMatch(m -> m.contains(" ")) ? "; " : " ", marks);
    }
}
