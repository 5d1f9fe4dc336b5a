package org.baywright.model.takeoff;

import java.util.ArrayList;
import java.util.List;
import org.baywright.model.cladding.Building;
import org.baywright.model.nesting.ShedCutting;
import org.baywright.model.parts.Hole;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.Shed;

/**
 * The bill of materials of a shed.
 *
 * @param lines group by group
 */
public record Bill(List<BillLine> lines) {
    /** Copies the lines. */
    public Bill {
        lines = List.copyOf(lines);
    }

    /** The bill of a building, with bars as {@link ShedCutting#of(Shed)} plans them. */
    public static Bill of(Building building) {
        return of(building, ShedCutting.of(building.shed()));
    }

    /** The bill of a building, with bars as planned; that of a bare frame is its steel, anchors and bolts alone. */
    public static Bill of(Building building, ShedCutting cutting) {
        Shed shed = building.shed();
        List<BillLine> lines = new ArrayList<>(of(shed, cutting).lines());
        if (shed.definition().envelope().isFull()) {
            lines.addAll(SheetOrder.lines(building));
            lines.addAll(FlashingOrder.lines(building));
            lines.addAll(RoofWaterOrder.lines(building));
            lines.addAll(ScrewOrder.lines(building));
            lines.addAll(SealOrder.lines(building));
            lines.addAll(BoltOrder.lines(shed));
            lines.addAll(TurnbuckleOrder.lines(shed));
            lines.addAll(OpeningOrder.lines(shed));
            lines.addAll(InsulationOrder.lines(building));
            lines.addAll(ConcreteOrder.lines(shed));
            lines.addAll(ConsumablesOrder.lines(shed));
        } else {
            lines.addAll(BoltOrder.lines(shed));
        }
        return new Bill(lines);
    }

    /** The bill of a shed's steel and anchors. */
    public static Bill of(Shed shed) {
        return of(shed, ShedCutting.of(shed));
    }

    private static Bill of(Shed shed, ShedCutting cutting) {
        List<BillLine> lines = new ArrayList<>(SteelOrder.lines(cutting));
        shed.parts().stream()
                .filter(ShedCutting::isSawn)
                .forEach(p -> lines.add(piece(BillGroup.PIECES, p, p.kind().label())));
        shed.parts().stream()
                .filter(p -> !p.kind().isMember())
                .forEach(p -> lines.add(piece(BillGroup.PLATES, p, p.kind().label() + holes(p))));
        lines.addAll(AnchorOrder.lines(shed));
        lines.addAll(RowOrder.lines(shed.parts()));
        return new Bill(lines);
    }

    private static BillLine piece(BillGroup group, Part part, String note) {
        BillItem item = new BillItem(
                part.material().designation(), part.material().grade(), part.stockLength(), List.of(part.mark()), note);
        return new BillLine(group, item, part.quantity(), BillLine.Unit.EACH, part.quantity(), 0, part.totalMassKg());
    }

    private static String holes(Part part) {
        if (part.holes().isEmpty()) {
            return "";
        }
        int n = part.holes().size();
        Hole first = part.holes().get(0);
        String size = " " + Math.round(first.diameter()) + (first.isSlot() ? " x " + Math.round(first.length()) : "");
        String name = first.isSlot() ? "slot" : "hole";
        return ", " + (n == 1 ? "1 " + name + size : n + " " + name + "s" + size + " at " + part.holeGauges());
    }

    /** The lines of one group. */
    public List<BillLine> lines(BillGroup group) {
        return lines.stream().filter(l -> l.group() == group).toList();
    }

    /** Mass of the finished steel: members and plates, as modelled. */
    public double steelMassKg() {
        return memberMassKg() + mass(BillGroup.PLATES);
    }

    /** Mass of all lengths of section, cut from stock or rolled to length. */
    public double memberMassKg() {
        return mass(BillGroup.PIECES) + mass(BillGroup.ROWS);
    }

    /** Mass of one group. */
    public double mass(BillGroup group) {
        return lines(group).stream().mapToDouble(BillLine::massKg).sum();
    }
}
