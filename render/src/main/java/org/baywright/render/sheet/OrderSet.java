package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.baywright.model.cladding.Building;
import org.baywright.model.definition.Project;
import org.baywright.model.parts.Shed;
import org.baywright.model.takeoff.Bill;
import org.baywright.model.takeoff.BillGroup;
import org.baywright.model.takeoff.Costs;
import org.baywright.render.dimension.Notes;
import org.baywright.render.dimension.Paragraph;
import org.baywright.render.dimension.Row;
import org.baywright.render.dimension.Table;

/** The order: what to buy, section by section for each merchant, apart from what is cut from it. */
public final class OrderSet {
    private static final String CUT_LIST = "For reference, not to buy: the pieces that are cut from the bars";
    private static final double NOTES_WIDTH = 290;

    private OrderSet() {}

    /** The order of a building, without prices. */
    public static SheetSet of(Building building, Bill bill) {
        return of(building, bill, Optional.empty());
    }

    /** The order of a building, with what it costs when there are prices. */
    public static SheetSet of(Building building, Bill bill, Optional<Costs> costs) {
        Project project = building.shed().definition().project();
        return new SheetSet(
                project.name() + ": order",
                project.drawnBy(),
                "Material order, quantities for the buyer to verify",
                Framing.framed(project, drafts(building, bill, costs)));
    }

    /** The sheets before framing. */
    static List<Draft> drafts(Building building, Bill bill) {
        return drafts(building, bill, Optional.empty());
    }

    /** The sheets before framing. */
    static List<Draft> drafts(Building building, Bill bill, Optional<Costs> costs) {
        Shed shed = building.shed();
        SheetFlow flow = new SheetFlow();
        flow.notes(Notes.of(
                List.of(Paragraph.heading(Cautions.ORDER)), SheetFrame.room().getWidth()));
        Row caption = caption(shed.definition().project());
        for (BillGroup group : BillGroup.values()) {
            if (group.isBought() && !bill.lines(group).isEmpty()) {
                Table table = table(bill, group);
                Table priced =
                        costs.map(c -> new CostColumns(c).beside(table, group)).orElse(table);
                flow.table(group.title(), captioned(priced, caption));
            }
        }
        costs.ifPresent(c -> costs(flow, c, caption));
        flow.notes(notes(bill));
        flow.table(CUT_LIST, OrderTables.cuts(shed, bill));
        return flow.drafts("O", "Material order");
    }

    private static Table table(Bill bill, BillGroup group) {
        return switch (group) {
            case STOCK -> OrderTables.stock(bill);
            case PLATES -> OrderTables.plates(bill);
            case ANCHORS -> OrderTables.anchors(bill);
            case ROWS, SHEETS -> OrderTables.lengths(bill, group);
            default -> OrderTables.articles(bill, group);
        };
    }

    /** Each section may go to another merchant, so each says what it belongs to and what it is worth. */
    private static Row caption(Project project) {
        String date = project.date().isBlank() ? "" : ", " + project.date();
        return Row.heading(project.name() + ", revision " + project.revision() + date
                + ": quantities from model, buyer to verify");
    }

    private static Table captioned(Table table, Row caption) {
        List<Row> rows = new ArrayList<>(List.of(caption));
        rows.addAll(table.rows());
        return new Table(table.columns(), rows, table.width(), table.fills());
    }

    private static void costs(SheetFlow flow, Costs costs, Row caption) {
        flow.table("Cost by section, at the prices given", captioned(new CostColumns(costs).sums(), caption));
        List<String> unpriced = costs.unpriced();
        if (!unpriced.isEmpty()) {
            List<Paragraph> paragraphs = new ArrayList<>();
            paragraphs.add(Paragraph.heading("Without a price, and so not in the total:"));
            paragraphs.add(Paragraph.of(String.join("; ", unpriced) + "."));
            flow.notes(Notes.of(paragraphs, NOTES_WIDTH));
        }
    }

    private static Notes notes(Bill bill) {
        double stock = bill.mass(BillGroup.STOCK);
        double plates = bill.mass(BillGroup.PLATES);
        double rows = bill.mass(BillGroup.ROWS);
        String rolled = rows > 0 ? ", purlins and girts " + BillSheets.kg(rows) + " kg" : "";
        List<Paragraph> paragraphs = new ArrayList<>();
        paragraphs.add(Paragraph.heading("Order mass " + BillSheets.kg(stock + plates + rows) + " kg: bars "
                + BillSheets.kg(stock) + " kg" + rolled + " and plates " + BillSheets.kg(plates)
                + " kg, without anchors. Finished steel "
                + BillSheets.kg(bill.steelMassKg()) + " kg."));
        cautions(bill).stream().map(Paragraph::bullet).forEach(paragraphs::add);
        return Notes.of(paragraphs, NOTES_WIDTH);
    }

    private static List<String> cautions(Bill bill) {
        List<String> all = new ArrayList<>(Cautions.ON_ORDERING);
        all.addAll(bill.lines(BillGroup.CONSUMABLES).isEmpty() ? Cautions.BARE_ORDER : Cautions.FULL_ORDER);
        return all;
    }
}
