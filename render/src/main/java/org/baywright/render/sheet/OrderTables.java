package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.Shed;
import org.baywright.model.takeoff.Bill;
import org.baywright.model.takeoff.BillGroup;
import org.baywright.model.takeoff.BillLine;
import org.baywright.render.dimension.Column;
import org.baywright.render.dimension.Figure;
import org.baywright.render.dimension.Row;
import org.baywright.render.dimension.Table;

/** The groups of a bill as tables for a merchant: each line net, allowance and order. */
final class OrderTables {
    private OrderTables() {}

    /** Bars to buy: quantity, section, grade, length, how they come, what for. */
    static Table stock(Bill bill) {
        List<Row> rows = new ArrayList<>();
        for (BillLine line : bill.lines(BillGroup.STOCK)) {
            rows.add(Row.of(
                    String.valueOf(line.quantity()),
                    line.item().description(),
                    line.item().grade(),
                    Figure.length(line.item().lengthMm()),
                    line.item().note(),
                    String.join(", ", line.item().marks()),
                    amount(line, line.net()),
                    amount(line, line.allowance()),
                    amount(line, line.order()),
                    BillSheets.kg(line.massKg())));
        }
        List<BillLine> lines = bill.lines(BillGroup.STOCK);
        rows.add(Row.total(
                String.valueOf(lines.stream().mapToInt(BillLine::quantity).sum()),
                "Bars",
                "",
                "",
                "",
                "",
                metres(lines.stream().mapToDouble(BillLine::net).sum()),
                metres(lines.stream().mapToDouble(BillLine::allowance).sum()),
                metres(lines.stream().mapToDouble(BillLine::order).sum()),
                BillSheets.kg(bill.mass(BillGroup.STOCK))));
        return table(
                rows,
                Column.numbers("Qty"),
                Column.words("Section"),
                Column.words("Grade and standard"),
                Column.numbers("Length, mm"),
                Column.words("Finish and processing"),
                Column.words("For marks"),
                Column.numbers("Net, m"),
                Column.numbers("Allowance, m"),
                Column.numbers("Order, m"),
                Column.numbers("Order mass, kg"));
    }

    /** What is cut from the bars, for the saw: nothing here is bought again. */
    static Table cuts(Shed shed, Bill bill) {
        List<Row> rows = new ArrayList<>();
        shed.parts().stream()
                .filter(p -> p.kind().isMember())
                .map(OrderTables::cut)
                .forEach(rows::add);
        int pieces = bill.lines(BillGroup.PIECES).stream()
                .mapToInt(BillLine::quantity)
                .sum();
        String mass = BillSheets.kg(bill.mass(BillGroup.PIECES));
        rows.add(Row.total(String.valueOf(pieces), "Pieces", "", "", "", "", "", "", "", "", "", mass));
        return table(
                rows,
                Column.numbers("Qty"),
                Column.words("Section"),
                Column.words("Grade and standard"),
                Column.numbers("Tip to tip, mm"),
                Column.numbers("Long edge, mm"),
                Column.numbers("Short edge, mm"),
                Column.numbers("Saw cut A"),
                Column.numbers("Saw cut B"),
                Column.words("Cut form"),
                Column.words("Part"),
                Column.words("Mark"),
                Column.numbers("Net mass, kg"));
    }

    private static Row cut(Part part) {
        return Row.of(
                String.valueOf(part.quantity()),
                part.material().designation(),
                part.material().grade(),
                Figure.length(part.stockLength()),
                Figure.length(part.longEdge()),
                Figure.length(part.shortEdge()),
                Figure.angle(part.cutADeg()),
                Figure.angle(part.cutBDeg()),
                part.cutForm().name().toLowerCase(Locale.ROOT),
                part.kind().label(),
                part.mark(),
                BillSheets.kg(part.totalMassKg()));
    }

    /** Plates by size, with what is drilled in them. */
    static Table plates(Bill bill) {
        List<Row> rows = new ArrayList<>();
        for (BillLine line : bill.lines(BillGroup.PLATES)) {
            rows.add(Row.of(
                    String.valueOf(line.quantity()),
                    plate(line.item().description(), line.item().lengthMm()),
                    line.item().grade(),
                    line.item().note(),
                    String.join(", ", line.item().marks()),
                    amount(line, line.net()),
                    amount(line, line.allowance()),
                    amount(line, line.order()),
                    BillSheets.kg(line.massKg())));
        }
        List<BillLine> lines = bill.lines(BillGroup.PLATES);
        rows.add(Row.total(
                String.valueOf(lines.stream().mapToInt(BillLine::quantity).sum()),
                "Plates",
                "",
                "",
                "",
                count(lines.stream().mapToDouble(BillLine::net).sum()),
                count(lines.stream().mapToDouble(BillLine::allowance).sum()),
                count(lines.stream().mapToDouble(BillLine::order).sum()),
                BillSheets.kg(bill.mass(BillGroup.PLATES))));
        return table(
                rows,
                Column.numbers("Qty"),
                Column.words("Plate, mm"),
                Column.words("Grade and standard"),
                Column.words("Part and holes"),
                Column.words("Mark"),
                Column.numbers("Net, no."),
                Column.numbers("Allowance, no."),
                Column.numbers("Order, no."),
                Column.numbers("Order mass, kg"));
    }

    /** Rods, nuts and washers. */
    static Table anchors(Bill bill) {
        List<Row> rows = new ArrayList<>();
        for (BillLine line : bill.lines(BillGroup.ANCHORS)) {
            double length = line.item().lengthMm();
            rows.add(Row.of(
                    String.valueOf(line.quantity()),
                    line.item().description(),
                    line.item().grade(),
                    length > 0 ? Figure.length(length) : "",
                    line.item().note(),
                    amount(line, line.net()),
                    amount(line, line.allowance()),
                    amount(line, line.order())));
        }
        return table(
                rows,
                Column.numbers("Qty"),
                Column.words("Article"),
                Column.words("Grade and finish"),
                Column.numbers("Length, mm"),
                Column.words("Processing and use"),
                Column.numbers("Net, no."),
                Column.numbers("Allowance, no."),
                Column.numbers("Order, no."));
    }

    /** Thickness, width and length of a plate, mm. */
    static String plate(String designation, double length) {
        return designation + "x" + Figure.length(length);
    }

    private static Table table(List<Row> rows, Column... columns) {
        return new Table(List.of(columns), rows, SheetFrame.room().getWidth()).filling();
    }

    private static String amount(BillLine line, double amount) {
        return line.unit() == BillLine.Unit.METRES ? metres(amount) : count(amount);
    }

    private static String metres(double metres) {
        return String.format(Locale.ROOT, "%.2f", metres);
    }

    private static String count(double count) {
        return String.valueOf(Math.round(count));
    }
}
