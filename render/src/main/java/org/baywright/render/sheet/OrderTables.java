package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
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
            rows.add(weighed(
                    line,
                    line.item().description(),
                    Figure.length(line.item().lengthMm()),
                    line.item().note(),
                    marks(line)));
        }
        rows.add(total(bill, BillGroup.STOCK, "Bars", 4));
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
        Set<String> marks = bill.lines(BillGroup.PIECES).stream()
                .flatMap(l -> l.item().marks().stream())
                .collect(Collectors.toSet());
        shed.parts().stream()
                .filter(p -> marks.contains(p.mark()))
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
            String size = plate(line.item().description(), line.item().lengthMm());
            rows.add(weighed(line, size, line.item().note(), marks(line)));
        }
        rows.add(total(bill, BillGroup.PLATES, "Plates", 3));
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
            String each = length > 0 ? Figure.length(length) : "";
            rows.add(new Row(
                    cells(line, line.item().description(), each, line.item().note()), Row.Kind.BODY));
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

    /** Rows and sheets: how many at what length, by mark, with their metres and mass. */
    static Table lengths(Bill bill, BillGroup group) {
        List<Row> rows = new ArrayList<>();
        for (BillLine line : bill.lines(group)) {
            rows.add(weighed(
                    line,
                    line.item().description(),
                    Figure.length(line.item().lengthMm()),
                    line.item().note(),
                    marks(line)));
        }
        rows.add(total(bill, group, group.shortTitle(), 4));
        return table(
                rows,
                Column.numbers("Qty"),
                Column.words(group == BillGroup.ROWS ? "Section" : "Profile"),
                Column.words(group == BillGroup.ROWS ? "Grade and standard" : "Base metal and colour"),
                Column.numbers("@ length, mm"),
                Column.words("Use and punching"),
                Column.words("Mark"),
                Column.numbers("Net, m"),
                Column.numbers("Allowance, m"),
                Column.numbers("Order, m"),
                Column.numbers("Order mass, kg"));
    }

    /** Everything else: each line in its own unit, with what it is counted from. */
    static Table articles(Bill bill, BillGroup group) {
        List<Row> rows = new ArrayList<>();
        for (BillLine line : bill.lines(group)) {
            double length = line.item().lengthMm();
            List<String> cells = cells(
                    line,
                    line.item().description(),
                    length > 0 ? Figure.length(length) : "",
                    line.item().note(),
                    marks(line));
            cells.add(line.unit().symbol());
            rows.add(new Row(cells, Row.Kind.BODY));
        }
        return table(
                rows,
                Column.numbers("Qty"),
                Column.words("Article"),
                Column.words("Grade and finish"),
                Column.numbers("Length, mm"),
                Column.words("Processing and use"),
                Column.words("Counted from"),
                Column.numbers("Net"),
                Column.numbers("Allowance"),
                Column.numbers("Order"),
                Column.words("Unit"));
    }

    /** A line of the order: how many of what, in what grade, the cells between, and net, allowance and order. */
    private static List<String> cells(BillLine line, String what, String... between) {
        List<String> cells = new ArrayList<>(
                List.of(String.valueOf(line.quantity()), what, line.item().grade()));
        cells.addAll(List.of(between));
        cells.addAll(List.of(
                amount(line.unit(), line.net()),
                amount(line.unit(), line.allowance()),
                amount(line.unit(), line.order())));
        return cells;
    }

    private static Row weighed(BillLine line, String what, String... between) {
        List<String> cells = cells(line, what, between);
        cells.add(BillSheets.kg(line.massKg()));
        return new Row(cells, Row.Kind.BODY);
    }

    /** The sums of a group; blanks stand for the cells between its words and its amounts. */
    private static Row total(Bill bill, BillGroup group, String words, int blanks) {
        List<BillLine> lines = bill.lines(group);
        BillLine.Unit unit = lines.get(0).unit();
        List<String> cells = new ArrayList<>(List.of(
                String.valueOf(lines.stream().mapToInt(BillLine::quantity).sum()), words));
        cells.addAll(Collections.nCopies(blanks, ""));
        cells.add(amount(unit, lines.stream().mapToDouble(BillLine::net).sum()));
        cells.add(amount(unit, lines.stream().mapToDouble(BillLine::allowance).sum()));
        cells.add(amount(unit, lines.stream().mapToDouble(BillLine::order).sum()));
        cells.add(BillSheets.kg(bill.mass(group)));
        return new Row(cells, Row.Kind.TOTAL);
    }

    private static String marks(BillLine line) {
        return String.join(", ", line.item().marks());
    }

    /** Thickness, width and length of a plate, mm. */
    static String plate(String designation, double length) {
        return designation + "x" + Figure.length(length);
    }

    private static Table table(List<Row> rows, Column... columns) {
        return new Table(List.of(columns), rows, SheetFrame.room().getWidth()).filling();
    }

    private static String amount(BillLine.Unit unit, double amount) {
        return String.format(Locale.ROOT, "%." + unit.decimals() + "f", amount);
    }
}
