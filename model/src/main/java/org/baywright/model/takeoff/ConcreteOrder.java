package org.baywright.model.takeoff;

import java.util.ArrayList;
import java.util.List;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Shed;

/** Ready-mixed concrete, mesh, bar chairs and the membrane under the slab. */
final class ConcreteOrder {
    private static final BillGroup GROUP = BillGroup.CONCRETE;

    /** A roll of membrane covers so much; laps and turned-up edges take a tenth. Common practice, no source. */
    private static final double ROLL_M2 = 200;

    private static final double MEMBRANE_LAPS = 0.1;

    /** One chair to so much slab: 800 x 800. Common practice, no source. */
    private static final double CHAIR_M2 = 0.64;

    private static final int CHAIRS = 100;

    private ConcreteOrder() {}

    static List<BillLine> lines(Shed shed) {
        Concrete concrete = Concrete.of(shed);
        if (concrete.netM3() <= 0) {
            return List.of();
        }
        List<String> slab = List.of("slab");
        List<String> marks = new ArrayList<>(slab);
        shed.parts(PartKind.BASE_PLATE).stream().map(Part::mark).forEach(marks::add);
        String thickness = Math.round(concrete.slab().thickness()) + " slab";
        String pads = concrete.padM2() > 0
                ? " with thickenings to " + Math.round(concrete.slab().padDepth()) + " under the base plates"
                : "";
        double rolls = concrete.areaM2() * (1 + MEMBRANE_LAPS);
        int chairs = Packs.holding(concrete.areaM2(), CHAIR_M2);
        return List.of(
                BillLine.measured(
                        GROUP,
                        BillItem.of(
                                "ready-mixed concrete 25 MPa",
                                "20 mm aggregate, slump 80 to 100, or as engineer",
                                marks,
                                thickness + pads + "; order the last load after measuring"),
                        1,
                        BillLine.Unit.CUBIC_METRES,
                        concrete.netM3(),
                        concrete.orderM3()),
                BillLine.measured(
                        GROUP,
                        BillItem.of(
                                "mesh SL72 6.0x2.4 m",
                                "500L AS/NZS 4671, or as engineer",
                                slab,
                                concrete.meshSheets() + " sheets, laps 225, upper third, 40 cover"),
                        concrete.meshSheets(),
                        BillLine.Unit.SQUARE_METRES,
                        concrete.areaM2(),
                        concrete.meshM2()),
                BillLine.counted(
                        GROUP,
                        BillItem.of("bar chair", "height to suit 40 cover", slab, "at 800 both ways; bags of 100"),
                        chairs,
                        Packs.count(chairs, 0, CHAIRS)),
                BillLine.measured(
                        GROUP,
                        BillItem.of("membrane 0.2 mm", "polyethylene, taped laps", slab, "rolls 4x50 m"),
                        Packs.holding(rolls, ROLL_M2),
                        BillLine.Unit.SQUARE_METRES,
                        concrete.areaM2(),
                        Packs.holding(rolls, ROLL_M2) * ROLL_M2));
    }
}
