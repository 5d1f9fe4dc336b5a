package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.baywright.model.parts.Hole;
import org.baywright.model.parts.JointHole;
import org.baywright.model.parts.JointHoles;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.Shed;
import org.baywright.model.takeoff.Bill;
import org.baywright.model.takeoff.BillGroup;
import org.baywright.render.dimension.Column;
import org.baywright.render.dimension.Figure;
import org.baywright.render.dimension.Row;
import org.baywright.render.dimension.Table;

/** The bill of materials among the drawings: every mark with its cuts, then what to buy. */
final class BillSheets {
    private static final List<Column> COLUMNS = List.of(
            Column.words("Mark"),
            Column.words("Part"),
            Column.words("Section or plate, mm"),
            Column.words("Grade and standard"),
            Column.numbers("Qty"),
            Column.numbers("Tip to tip, mm"),
            Column.numbers("Long edge, mm"),
            Column.numbers("Short edge, mm"),
            Column.numbers("Saw cut A"),
            Column.numbers("Saw cut B"),
            Column.words("Cut form"),
            Column.words("Long point"),
            Column.numbers("Balance, mm"),
            Column.words("Holes"),
            Column.numbers("Each, kg"),
            Column.numbers("All, kg"));

    /** Across the holes of a pair that the mill punches, mm; as the drawings of pieces say. */
    private static final double PUNCHED = 18;

    private BillSheets() {}

    /** What to buy is no business of the council's; it comes last, so that both sets number their sheets alike. */
    static List<Draft> of(Shed shed, Bill bill, SetScope scope, int firstNumber) {
        SheetFlow flow = new SheetFlow();
        flow.table(
                "Members and plates by mark; saw cuts are degrees from square, balance is from end A",
                schedule(shed, bill));
        if (scope == SetScope.ALL) {
            flow.table(BillGroup.STOCK.title(), OrderTables.stock(bill));
            flow.table(BillGroup.ANCHORS.title(), OrderTables.anchors(bill));
        }
        return flow.drafts("S8.", firstNumber, "Member and plate schedule");
    }

    /** One row a mark. */
    static Table schedule(Shed shed, Bill bill) {
        List<Row> rows = new ArrayList<>();
        JointHoles joints = JointHoles.of(shed);
        rows.add(Row.heading("Members"));
        shed.parts().stream()
                .filter(p -> p.kind().isMember())
                .map(p -> member(p, joints))
                .forEach(rows::add);
        rows.add(total("Members", shed, true, bill.memberMassKg()));
        rows.add(Row.heading("Plates"));
        shed.parts().stream()
                .filter(p -> !p.kind().isMember())
                .map(BillSheets::plate)
                .forEach(rows::add);
        rows.add(total("Plates", shed, false, bill.mass(BillGroup.PLATES)));
        rows.add(total("All steel", quantity(shed, true) + quantity(shed, false), bill.steelMassKg()));
        return new Table(COLUMNS, rows, SheetFrame.room().getWidth()).filling();
    }

    private static Row member(Part part, JointHoles joints) {
        return Row.of(
                part.mark(),
                part.kind().label(),
                part.material().description(),
                part.material().grade(),
                String.valueOf(part.quantity()),
                Figure.length(part.stockLength()),
                Figure.length(part.longEdge()),
                Figure.length(part.shortEdge()),
                Figure.angle(part.cutADeg()),
                Figure.angle(part.cutBDeg()),
                part.cutForm().name().toLowerCase(Locale.ROOT),
                part.longPoint(),
                Figure.length(part.centreOfGravity().x()),
                holes(part, joints),
                kg(part.massKg()),
                kg(part.totalMassKg()));
    }

    private static Row plate(Part part) {
        return Row.of(
                part.mark(),
                part.kind().label(),
                OrderTables.plate(part.material().designation(), part.stockLength()),
                part.material().grade(),
                String.valueOf(part.quantity()),
                "",
                "",
                "",
                "",
                "",
                "",
                "",
                "",
                holes(part),
                kg(part.massKg()),
                kg(part.totalMassKg()));
    }

    /** The holes that its cleats want, and those it is punched with besides. */
    private static String holes(Part member, JointHoles joints) {
        List<JointHole> bolted = joints.of(member);
        Map<Double, Integer> counts = new TreeMap<>();
        bolted.forEach(hole -> counts.merge(hole.diameter(), 1, Integer::sum));
        member.punched().stream()
                .filter(p ->
                        bolted.stream().noneMatch(hole -> Math.abs(hole.at().x() - p) < 0.1))
                .forEach(p -> counts.merge(PUNCHED, 2, Integer::sum));
        if (counts.isEmpty()) {
            return "none";
        }
        String words = counts.entrySet().stream()
                .map(e -> e.getValue() + " × Ø" + Figure.length(e.getKey()))
                .collect(Collectors.joining(", "));
        int unlike = joints.unlike(member);
        return words + (unlike == 0 ? "" : "; otherwise on " + unlike);
    }

    private static String holes(Part part) {
        return part.holes().isEmpty()
                ? "none"
                : part.holes().size() + " × " + size(part.holes().get(0))
                        + (part.holes().size() == 1 ? "" : " at " + part.holeGauges());
    }

    private static String size(Hole hole) {
        return hole.isSlot()
                ? "slot " + Figure.length(hole.diameter()) + " x " + Figure.length(hole.length())
                : "Ø" + Figure.length(hole.diameter());
    }

    private static Row total(String words, Shed shed, boolean members, double massKg) {
        return total(words, quantity(shed, members), massKg);
    }

    private static int quantity(Shed shed, boolean members) {
        return shed.parts().stream()
                .filter(p -> p.kind().isMember() == members)
                .mapToInt(Part::quantity)
                .sum();
    }

    private static Row total(String words, int quantity, double massKg) {
        String pieces = String.valueOf(quantity);
        return Row.total("", words, "", "", pieces, "", "", "", "", "", "", "", "", "", "", kg(massKg));
    }

    static String kg(double massKg) {
        return String.format(Locale.ROOT, "%.1f", massKg);
    }
}
