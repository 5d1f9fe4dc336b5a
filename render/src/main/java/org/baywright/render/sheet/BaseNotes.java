package org.baywright.render.sheet;

import java.util.List;
import java.util.stream.Collectors;
import org.baywright.model.definition.Anchor;
import org.baywright.model.definition.Slab;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Shed;
import org.baywright.model.parts.SlabJoints;
import org.baywright.model.takeoff.AnchorOrder;
import org.baywright.render.dimension.Figure;
import org.baywright.render.dimension.Paragraph;

/** What a builder must know to set out base plates and anchors. */
final class BaseNotes {
    /** More joints than this are not listed. */
    private static final int LISTED = 8;

    private BaseNotes() {}

    /** Beside the set-out plan. */
    static List<Paragraph> plan(Shed shed, SlabJoints joints) {
        return List.of(
                Paragraph.heading("Setting out"),
                Paragraph.bullet("Datum: where line A meets line 1, at the outside faces of the columns. Measure every"
                        + " distance from it with one tape; do not add up bays. Minus: the other side of the datum,"
                        + " outside line A or before line 1."),
                Paragraph.bullet("Running dimensions go to the middle of each base plate: half a column inside its"
                        + " string line, so unlike columns on one line have unlike middles. Long dashes are string lines"
                        + " on the outside faces of columns, not on plates."),
                Paragraph.bullet("Both diagonals between string lines, " + diagonal(shed)
                        + " for the whole main floor, must agree before drilling: within 5 mm where the"
                        + " diagonal is up to 12 m, within 10 mm beyond (common practice)."),
                Paragraph.bullet("The column's outside face stands on its string line. The plate's width lies across"
                        + " the building, its depth along it; plates on the right-hand side are turned half round."
                        + posts(shed)),
                Paragraph.bullet(concreteAndSizes(shed, joints)),
                Paragraph.bullet(
                        "Anchors within 3 mm in a group, within 6 mm from group to group; the engineer's figures rule."));
    }

    private static String posts(Shed shed) {
        boolean none = shed.count(PartKind.MULLION) + shed.count(PartKind.JAMB) == 0;
        return none
                ? ""
                : " Those of mullions and jambs stand with their upright's outside face on the string line of their wall; the"
                        + " outer row beside it gives their middles.";
    }

    private static String diagonal(Shed shed) {
        return Figure.length(Math.hypot(shed.setOut().span(), shed.setOut().length()));
    }

    /** Beside the hole patterns. */
    static List<Paragraph> anchors(Shed shed) {
        Anchor anchor = shed.definition().anchor();
        return List.of(
                Paragraph.heading("Levels"),
                Paragraph.bullet(levels(shed)),
                Paragraph.bullet(
                        "Pack level with steel at each anchor, then grout the full bed with non-shrink grout."),
                Paragraph.heading("Anchors"),
                Paragraph.bullet(shed.anchorHoles().size() + " chemical anchors " + anchor.size() + ": drill bit "
                        + Figure.length(anchor.holeDiameter()) + ", embedment " + Figure.length(anchor.embedment())
                        + " into the concrete, which is at least " + Figure.length(anchor.minimumConcrete())
                        + " thick. Example figures of one product: enter your product's."),
                Paragraph.bullet("Rods " + Figure.length(AnchorOrder.rodLength(shed))
                        + " long, each with a nut and a plate" + " washer, as ordered."),
                Paragraph.bullet("Edge of the concrete at least " + Figure.length(anchor.minimumEdge())
                        + " from the middle of a hole (product minimum); the full edge distance is 1.5 × embedment = "
                        + Figure.length(1.5 * anchor.embedment())
                        + ". Each pattern says what that makes from the column's face to the slab edge. Less is for the"
                        + " engineer."),
                Paragraph.bullet(concrete(shed)),
                Paragraph.bullet(
                        "Clean each hole as the product says before filling. Load nothing until cured; concrete"
                                + " temperature governs, the cartridge label rules."),
                Paragraph.heading("Before drilling"),
                Paragraph.bullet("Find reinforcement and services first. If the bit meets a bar, stop: cut no bar, bend"
                        + " no rod, ask the engineer."),
                Paragraph.bullet("Drilling makes silica dust: on-tool extraction and a respirator, never sweep dry or"
                        + " blow holes out in the open."),
                Paragraph.heading("Patterns"),
                Paragraph.bullet("Seen from above; outside of the building on the left. Right-hand side turned half"
                        + " round, end walls a quarter. Weld as the engineer sets."));
    }

    /** What the thin lines of the concrete are, where the saw goes, and what is reckoned with until the engineer sets it. */
    private static String concreteAndSizes(Shed shed, SlabJoints joints) {
        Slab slab = shed.definition().ground().slab();
        return concreteLines(shed, joints) + (slab.isPads() ? "" : " " + sizes(slab));
    }

    /** What the thin lines of the concrete are, and where the saw goes. */
    static String concreteLines(Shed shed, SlabJoints joints) {
        Slab slab = shed.definition().ground().slab();
        if (slab.isPads()) {
            return "Thin squares: pads of concrete, " + Figure.length(slab.padSide()) + " each way, to "
                    + Figure.length(slab.padDepth()) + " deep; starting values, for the engineer to set.";
        }
        String edge = "Thin line outside: the slab's edge, " + Figure.length(slab.beyond()) + " past the string lines.";
        if (joints.cuts().isEmpty()) {
            return edge;
        }
        return edge + " Dashes: joints sawn " + Figure.length(slab.jointDepth())
                + " deep, 4 to 12 hours after finishing,"
                + listed(" from line 1", joints.across()) + listed(" from line A", joints.along())
                + "; not through thickenings. The engineer may want others." + under(joints);
    }

    private static String under(SlabJoints joints) {
        return joints.under().isEmpty()
                ? ""
                : " No clear place was found beside "
                        + joints.under().stream().limit(LISTED).collect(Collectors.joining(", "))
                        + (joints.under().size() > LISTED ? " and so on" : "")
                        + ": the joint runs under the plate; ask the engineer.";
    }

    private static String sizes(Slab slab) {
        boolean beam = slab.edgeWidth() > 0 && slab.edgeDepth() > slab.thickness();
        boolean pads = slab.padSide() > 0 && slab.padDepth() > slab.thickness();
        return "Starting values, for the engineer to set: slab " + Figure.length(slab.thickness())
                + (beam
                        ? ", edge beam " + Figure.length(slab.edgeWidth()) + " wide to "
                                + Figure.length(slab.edgeDepth())
                        : "")
                + (pads
                        ? ", thickenings " + Figure.length(slab.padSide()) + " square to "
                                + Figure.length(slab.padDepth()) + " under base plates"
                        : "")
                + ".";
    }

    private static String listed(String from, List<Double> places) {
        if (places.isEmpty()) {
            return "";
        }
        String shown = places.stream().limit(LISTED).map(Figure::length).collect(Collectors.joining(", "));
        return (from.endsWith("1") ? " at " : " and ") + shown + (places.size() > LISTED ? " and so on" : "") + from;
    }

    private static String concrete(Shed shed) {
        return shed.definition().ground().slab().isPads()
                ? "A pad under every base plate, as the engineer sets; earth or gravel between."
                : "Thicken the slab under every base plate, as the engineer sets; a floor slab alone is thinner than"
                        + " most anchors ask.";
    }

    private static String levels(Shed shed) {
        double grout = shed.definition().plates().groutGap();
        String tops = String.join(
                ", ",
                shed.parts(PartKind.BASE_PLATE).stream()
                        .map(p ->
                                p.mark() + " " + Figure.level(grout + p.solid().axisLength()))
                        .toList());
        return "Finished floor FFL " + Figure.level(0) + "; underside of base plates " + Figure.level(grout) + " ("
                + Figure.length(grout) + " grout); top of plate: " + tops + ".";
    }
}
