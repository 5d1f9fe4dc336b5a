package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import org.baywright.model.cladding.Building;
import org.baywright.model.definition.Project;
import org.baywright.model.parts.Shed;
import org.baywright.model.takeoff.Bill;
import org.baywright.model.takeoff.BillGroup;
import org.baywright.render.dimension.Notes;
import org.baywright.render.dimension.Paragraph;

/** The order for a steel merchant: what to buy, apart from what is cut from it. */
public final class OrderSet {
    private static final String CUT_LIST = "For reference, not to buy: the pieces that are cut from the bars";
    private static final double NOTES_WIDTH = 290;

    private OrderSet() {}

    /** The order of a shed. */
    public static SheetSet of(Building building, Bill bill) {
        Project project = building.shed().definition().project();
        return new SheetSet(
                project.name() + ": order",
                project.drawnBy(),
                "Material order, quantities for the buyer to verify",
                Framing.framed(project, drafts(building, bill)));
    }

    /** The sheets before framing. */
    static List<Draft> drafts(Building building, Bill bill) {
        Shed shed = building.shed();
        SheetFlow flow = new SheetFlow();
        flow.notes(Notes.of(
                List.of(Paragraph.heading(Cautions.ORDER)), SheetFrame.room().getWidth()));
        flow.table(BillGroup.STOCK.title(), OrderTables.stock(bill));
        flow.table(BillGroup.PLATES.title(), OrderTables.plates(bill));
        flow.table(BillGroup.ANCHORS.title(), OrderTables.anchors(bill));
        flow.notes(notes(bill));
        flow.table(CUT_LIST, OrderTables.cuts(shed, bill));
        return flow.drafts("O", "Material order");
    }

    private static Notes notes(Bill bill) {
        double stock = bill.mass(BillGroup.STOCK);
        double plates = bill.mass(BillGroup.PLATES);
        List<Paragraph> paragraphs = new ArrayList<>();
        paragraphs.add(Paragraph.heading("Order mass " + BillSheets.kg(stock + plates) + " kg: bars "
                + BillSheets.kg(stock) + " kg and plates " + BillSheets.kg(plates)
                + " kg, without anchors. Finished steel "
                + BillSheets.kg(bill.steelMassKg()) + " kg."));
        Cautions.ON_ORDERING.stream().map(Paragraph::bullet).forEach(paragraphs::add);
        return Notes.of(paragraphs, NOTES_WIDTH);
    }
}
