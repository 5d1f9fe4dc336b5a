package org.baywright.model.takeoff;

import java.util.ArrayList;
import java.util.List;
import org.baywright.model.cladding.Building;
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

    /** The bill of a building. */
    public static Bill of(Building building) {
        return of(building.shed());
    }

    /** The bill of a shed. */
    public static Bill of(Shed shed) {
        List<Part> members =
                shed.parts().stream().filter(p -> p.kind().isMember()).toList();
        List<BillLine> lines = new ArrayList<>(SteelOrder.lines(members));
        members.forEach(p -> lines.add(piece(BillGroup.PIECES, p, p.kind().label())));
        shed.parts().stream()
                .filter(p -> !p.kind().isMember())
                .forEach(p -> lines.add(piece(BillGroup.PLATES, p, p.kind().label() + holes(p))));
        lines.addAll(AnchorOrder.lines(shed));
        return new Bill(lines);
    }

    private static BillLine piece(BillGroup group, Part part, String note) {
        BillItem item = new BillItem(
                part.material().designation(), part.material().grade(), part.stockLength(), List.of(part.mark()), note);
        return new BillLine(group, item, part.quantity(), BillLine.Unit.EACH, part.quantity(), 0, part.totalMassKg());
    }

    private static String holes(Part part) {
        return part.holes().isEmpty()
                ? ""
                : ", " + part.holes().size() + " holes "
                        + Math.round(part.holes().get(0).diameter()) + " at " + part.holeGauges();
    }

    /** The lines of one group. */
    public List<BillLine> lines(BillGroup group) {
        return lines.stream().filter(l -> l.group() == group).toList();
    }

    /** Mass of the finished steel: pieces and plates, as modelled. */
    public double steelMassKg() {
        return mass(BillGroup.PIECES) + mass(BillGroup.PLATES);
    }

    /** Mass of one group. */
    public double mass(BillGroup group) {
        return lines(group).stream().mapToDouble(BillLine::massKg).sum();
    }
}
