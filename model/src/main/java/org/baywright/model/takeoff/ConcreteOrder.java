package org.baywright.model.takeoff;

import java.util.ArrayList;
import java.util.List;
import org.baywright.model.definition.Slab;
import org.baywright.model.definition.SlabBars;
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

    private static final double BAR_M = 6;

    private static final List<String> SLAB = List.of("slab");

    private ConcreteOrder() {}

    static List<BillLine> lines(Shed shed) {
        Concrete concrete = Concrete.of(shed);
        if (concrete.netM3() <= 0) {
            return List.of();
        }
        List<String> marks = new ArrayList<>(concrete.slab().isPads() ? List.of() : SLAB);
        shed.parts(PartKind.BASE_PLATE).stream().map(Part::mark).forEach(marks::add);
        List<BillLine> lines = new ArrayList<>();
        lines.add(BillLine.measured(
                GROUP,
                BillItem.of(
                        "ready-mixed concrete 25 MPa",
                        "20 mm aggregate, slump 80 to 100, or as engineer",
                        marks,
                        shape(concrete) + "; order the last load after measuring"),
                1,
                BillLine.Unit.CUBIC_METRES,
                concrete.netM3(),
                concrete.orderM3()));
        if (!concrete.slab().isPads()) {
            lines.addAll(underSlab(concrete));
        }
        return lines;
    }

    private static String shape(Concrete concrete) {
        Slab slab = concrete.slab();
        if (slab.isPads()) {
            return "pads " + mm(slab.padSide()) + " square, to " + mm(slab.padDepth()) + " under the base plates";
        }
        String beam =
                concrete.edgeM2() > 0 ? ", edge beam " + mm(slab.edgeWidth()) + " wide to " + mm(slab.edgeDepth()) : "";
        String pads = concrete.padM2() > 0 && slab.padDepth() > slab.thickness()
                ? ", thickenings to " + mm(slab.padDepth()) + " under the base plates"
                : "";
        return mm(slab.thickness()) + " slab" + beam + pads;
    }

    private static String mm(double length) {
        return String.valueOf(Math.round(length));
    }

    private static BillLine mesh(Concrete concrete) {
        return BillLine.measured(
                GROUP,
                BillItem.of(
                        "mesh SL72 6.0x2.4 m",
                        "500L AS/NZS 4671, or as engineer",
                        SLAB,
                        concrete.meshSheets()
                                + " sheets, laps 225, upper third, 40 cover; bars of edge beam and"
                                + " thickenings as engineer"),
                concrete.meshSheets(),
                BillLine.Unit.SQUARE_METRES,
                concrete.areaM2(),
                concrete.meshM2());
    }

    /** Laps of 40 diameters in 6 m lengths, in whole lengths. Common practice, no source. */
    private static BillLine bars(Concrete concrete, SlabBars bars) {
        double effective = BAR_M - 40 * bars.diameter() / 1000;
        int lengths = Packs.holding(concrete.barsM(), effective);
        return BillLine.measured(
                GROUP,
                BillItem.of(
                        "reinforcing bar D" + mm(bars.diameter()),
                        "500N AS/NZS 4671, or as engineer",
                        SLAB,
                        lengths + " of 6 m, on the grid given, laps 40 diameters, " + mm(bars.cover())
                                + " cover; bars of" + " edge beam and thickenings as engineer"),
                lengths,
                BillLine.Unit.METRES,
                concrete.barsM(),
                lengths * BAR_M);
    }

    /** Mesh or bars, chairs and membrane; the engineer says what more goes into beam and thickenings. */
    private static List<BillLine> underSlab(Concrete concrete) {
        double rolls = concrete.areaM2() * (1 + MEMBRANE_LAPS);
        int chairs = Packs.holding(concrete.areaM2(), CHAIR_M2);
        return List.of(
                concrete.slab().bars().map(b -> bars(concrete, b)).orElseGet(() -> mesh(concrete)),
                BillLine.counted(
                        GROUP,
                        BillItem.of("bar chair", "height to suit the cover", SLAB, "at 800 both ways; bags of 100"),
                        chairs,
                        Packs.count(chairs, 0, CHAIRS)),
                BillLine.measured(
                        GROUP,
                        BillItem.of("membrane 0.2 mm", "polyethylene, taped laps", SLAB, "rolls 4x50 m"),
                        Packs.holding(rolls, ROLL_M2),
                        BillLine.Unit.SQUARE_METRES,
                        concrete.areaM2(),
                        Packs.holding(rolls, ROLL_M2) * ROLL_M2));
    }
}
