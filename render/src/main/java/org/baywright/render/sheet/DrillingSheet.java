package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import org.baywright.model.definition.Anchor;
import org.baywright.model.parts.Assemblies;
import org.baywright.model.parts.Shed;
import org.baywright.model.takeoff.Adhesive;
import org.baywright.model.takeoff.Drilling;
import org.baywright.render.dimension.Column;
import org.baywright.render.dimension.Figure;
import org.baywright.render.dimension.Paragraph;
import org.baywright.render.dimension.Row;
import org.baywright.render.dimension.Table;

/** Where holes are drilled, how deep, where the bit carries its mark, and how a hole is made ready. */
final class DrillingSheet {
    private static final List<Column> COLUMNS = List.of(
            Column.words("Plate"),
            Column.words("Under"),
            Column.numbers("Plates"),
            Column.numbers("Holes each"),
            Column.numbers("Holes"),
            Column.numbers("Bit, mm"),
            Column.numbers("Depth in concrete"),
            Column.numbers("Mark on bit: plate away"),
            Column.numbers("Mark: through plate flat on the slab"),
            Column.numbers("Mark: through plate on its packers"),
            Column.numbers("Drilling, m"));

    private final Shed shed;
    private final Anchor anchor;

    private DrillingSheet(Shed shed) {
        this.shed = shed;
        this.anchor = shed.definition().anchor();
    }

    static List<Draft> of(Shed shed) {
        DrillingSheet sheet = new DrillingSheet(shed);
        SheetFlow flow = new SheetFlow();
        flow.table("Holes in the concrete, mm", sheet.table());
        List<Paragraph> steps = new ArrayList<>(List.of(Paragraph.heading("Each hole, in this order")));
        steps.addAll(Paragraph.numbered(sheet.steps()));
        steps.add(Paragraph.heading("Take care"));
        sheet.cautions().forEach(words -> steps.add(Paragraph.bullet(words)));
        flow.columns(steps, 2);
        Drilling.of(shed).stream()
                .findFirst()
                .map(d -> new DrillSketch(d, sheet.anchor))
                .ifPresent(sketch -> flow.drawing(DrillSketch.HEIGHT, sketch::draw));
        return flow.drafts("W1.", "Drilling and cleaning");
    }

    private Table table() {
        List<Row> rows = new ArrayList<>();
        Assemblies assemblies = Assemblies.of(shed);
        List<Drilling> all = Drilling.of(shed);
        for (Drilling d : all) {
            String on = MarkRuns.of(assemblies.holding(d.plate()).stream()
                    .map(a -> a.member().mark())
                    .toList());
            rows.add(Row.of(
                    d.plate().mark(),
                    on,
                    String.valueOf(d.plate().quantity()),
                    String.valueOf(d.plate().holes().size()),
                    String.valueOf(d.holes()),
                    Figure.length(anchor.holeDiameter()),
                    Figure.length(d.depth()),
                    Figure.length(d.depth()),
                    Figure.length(d.markThroughPlate()),
                    Figure.length(d.markThroughPackedPlate()),
                    Figure.decimal(d.metres(), 2)));
        }
        rows.add(Row.total(
                "All",
                "",
                String.valueOf(all.stream().mapToInt(d -> d.plate().quantity()).sum()),
                "",
                String.valueOf(all.stream().mapToInt(Drilling::holes).sum()),
                "",
                "",
                "",
                "",
                "",
                Figure.decimal(Adhesive.of(shed).drillingM(), 2)));
        return new Table(COLUMNS, rows, SheetFrame.room().getWidth()).filling();
    }

    /**
     * @source steps and cleaning: two makers' instructions, which differ in their number of strokes and in whether
     *     brushing or blowing comes first; four of each is common practice
     */
    private List<String> steps() {
        String deep = Figure.length(anchor.embedment());
        return List.of(
                "Locate reinforcement and buried services over every hole with a detector. The holes are on the set-out.",
                "Set the mark on the bit with tape. With the plate taken away, or a thin template, it is the hole's depth, "
                        + deep + ". With the plate as template it is plate and hole; with the plate on its packers, the"
                        + " packers (and the bed of grout to come) too. The table gives all three. A mark taken for the"
                        + " wrong case is a hole too shallow by the plate.",
                "Drill upright with a " + Figure.length(anchor.holeDiameter())
                        + " mm bit to the mark, hammer action unless the label says otherwise. Measure the first holes"
                        + " with a rule.",
                "Clean: blow 4 times from the bottom with oil-free air, brush 4 times with a brush that rubs all the"
                        + " way down, blow 4 times. Makers differ (2-2-2 with a pump, or brush first): the label"
                        + " governs. A hollow bit on a vacuum may replace it where the label says so. Dust left in the"
                        + " hole can cost most of the hold. No standing water.",
                "New cartridge or new nozzle: throw the first strokes away until the colour is even, three or more.",
                "Fill from the bottom, drawing the nozzle back as it fills, to between half and two thirds. No air"
                        + " pockets.",
                "Push the rod in, twisting slowly, to its mark: " + deep
                        + " from its lower end to the concrete. A little"
                        + " adhesive wells out at the top; if none does, pull the rod, fill more, set it again.",
                "Do not touch it until it has cured by the temperature of the concrete (next sheet). Nothing hangs on"
                        + " it, nobody straightens it.",
                "Nut down on the plate washer, to the torque on the product's label: ............ Nm.");
    }

    /** @source silica: exposure limits 0.025 (NZ), 0.05 mg/m³ (AU from memory; US); bar strike: from memory */
    private List<String> cautions() {
        return List.of(
                "Silica: dust of concrete scars the lungs. Use on-tool extraction (shroud or hollow bit on a class M or H"
                        + " vacuum) and a fitted respirator; blowing out spreads dust, so catch it at the mouth of the hole;"
                        + " never sweep dry. Limits are 0.025 mg/m3 in New Zealand, 0.05 in Australia and the United States:"
                        + " check yours.",
                "Bit on a bar: stop. Cut no bar, bend no rod. A new hole stands at least two hole depths away, or where the"
                        + " engineer says; fill the old one with high-strength mortar.",
                "Concrete is drilled from 7 days on, better 28: adhesive figures are for cured concrete.",
                "Gloves and eye protection; read the safety data sheet. Check the expiry on each cartridge.",
                "Anchors within 3 mm of each other in a group, groups within 6; depth, edge and spacing as the engineer and"
                        + " the product say. Figures here are examples of one product until yours are entered.");
    }
}
