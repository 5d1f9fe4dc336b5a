package org.baywright.model.takeoff;

import java.util.List;
import org.baywright.model.definition.Anchor;
import org.baywright.model.parts.BaseDesign;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Shed;

/** Rods, nuts and plate washers, with spares. Adhesive comes with the drilling schedule. */
public final class AnchorOrder {
    /** One in twenty spare, and at least two. Common practice, no source. */
    private static final double SPARE = 0.05;

    private static final int LEAST_SPARE = 2;

    /** Plate washer under the nut. @source washer and hole sizes in base plates (trade FAQ, NZ): 50 x 6 */
    public static final double WASHER = 6;

    /** Nut 0.8 of the thread and a little thread past it. Common practice, no source. */
    private static final double PAST_NUT = 10;

    private AnchorOrder() {}

    static List<BillLine> lines(Shed shed) {
        Anchor anchor = shed.definition().anchor();
        int net = shed.anchorHoles().size();
        int spare = Math.max(LEAST_SPARE, (int) Math.ceil(net * SPARE));
        double rod = rodLength(shed);
        String size = anchor.size();
        long side = Math.round(2 * BaseDesign.halfWasher(anchor));
        return List.of(
                line(
                        "Threaded rod " + size,
                        "5.8 galvanised, or as engineer",
                        rod,
                        net,
                        spare,
                        "hole " + Math.round(anchor.holeDiameter()) + " x " + Math.round(anchor.embedment())
                                + " deep; rod cut to length, one end chisel pointed"),
                line("Hexagon nut " + size, "5 galvanised", 0, net, spare, "one to a rod"),
                line(
                        "Plate washer " + side + "x" + side + "x6, hole " + Math.round(anchor.rodDiameter() + 2),
                        "250 galvanised",
                        0,
                        net,
                        spare,
                        "one to a rod"));
    }

    /** What a rod is cut to: embedment, grout, thickest plate, washer, nut and a little thread, up to 10 mm. */
    public static double rodLength(Shed shed) {
        Anchor anchor = shed.definition().anchor();
        double plate = shed.parts(PartKind.BASE_PLATE).stream()
                .mapToDouble(AnchorOrder::thickness)
                .max()
                .orElse(0);
        double length = anchor.embedment()
                + shed.definition().plates().groutGap()
                + plate
                + WASHER
                + 0.8 * anchor.rodDiameter()
                + PAST_NUT;
        return Math.ceil(length / 10) * 10;
    }

    private static double thickness(Part plate) {
        return plate.solid().axisLength();
    }

    private static BillLine line(String what, String grade, double length, int net, int spare, String note) {
        BillItem item = new BillItem(what, grade, length, List.of(), note);
        return new BillLine(BillGroup.ANCHORS, item, net + spare, BillLine.Unit.EACH, net, spare, 0);
    }
}
