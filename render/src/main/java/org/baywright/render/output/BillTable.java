package org.baywright.render.output;

import java.io.IOException;
import java.util.List;
import org.baywright.model.takeoff.Bill;
import org.baywright.model.takeoff.BillLine;

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

    /** Writes a bill. */
    public static void write(Bill bill, Appendable out) throws IOException {
        CsvWriter.write(HEADER, bill.lines().stream().map(BillTable::row).toList(), out);
    }

    private static List<Cell> row(BillLine line) {
        int decimals = line.unit() == BillLine.Unit.METRES ? 2 : 0;
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
                Cell.of(String.join(" ", line.item().marks())),
                Cell.of(line.item().note()));
    }
}
