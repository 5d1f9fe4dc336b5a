package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Shed;
import org.baywright.model.takeoff.Paint;
import org.baywright.model.takeoff.VentHoles;
import org.baywright.render.dimension.Column;
import org.baywright.render.dimension.Figure;
import org.baywright.render.dimension.Paragraph;
import org.baywright.render.dimension.Row;
import org.baywright.render.dimension.Table;

/** What is painted and how much paint it takes, and the vent holes of what is dipped in zinc instead. */
final class CoatingSheets {
    private static final double PAINT = 0.4;
    private static final double VENTS = 0.57;

    private final Shed shed;

    private CoatingSheets(Shed shed) {
        this.shed = shed;
    }

    static List<Draft> of(Shed shed) {
        CoatingSheets sheets = new CoatingSheets(shed);
        SheetFlow flow = new SheetFlow();
        sheets.tables(flow);
        List<Paragraph> notes = new ArrayList<>(List.of(Paragraph.heading("Paint")));
        painting().forEach(words -> notes.add(Paragraph.bullet(words)));
        notes.add(Paragraph.heading("Galvanising instead"));
        dipping().forEach(words -> notes.add(Paragraph.bullet(words)));
        flow.columns(notes, 2);
        return flow.drafts("W4.", "Paint or galvanising");
    }

    private Table paint() {
        List<Row> rows = new ArrayList<>();
        Map<PartKind, Paint> kinds = Paint.byKind(shed);
        kinds.forEach((kind, paint) -> rows.add(row(kind.label(), shed.count(kind), paint, "")));
        Paint all = Paint.of(shed);
        int pieces = kinds.keySet().stream().mapToInt(shed::count).sum();
        Row sum = row("All", pieces, all, all.tins() + " tins of " + Figure.decimal(Paint.TIN_L, 0) + " L");
        rows.add(Row.total(sum.cells().toArray(String[]::new)));
        return new Table(
                        List.of(
                                Column.words("What"),
                                Column.numbers("Pieces"),
                                Column.numbers("Area, m²"),
                                Column.numbers("Primer, L"),
                                Column.words("To buy")),
                        rows,
                        PAINT * SheetFrame.room().getWidth())
                .filling();
    }

    private static Row row(String name, int pieces, Paint paint, String bought) {
        return Row.of(
                name,
                String.valueOf(pieces),
                Figure.decimal(paint.areaM2(), 1),
                Figure.decimal(paint.litres(), 1),
                bought);
    }

    /** What a row of vent holes shares. */
    private record Like(String section, int closedEnds) {}

    private void tables(SheetFlow flow) {
        List<VentHoles> vents = VentHoles.of(shed);
        String painted = "Painted: one coat of primer";
        if (vents.isEmpty()) {
            flow.table(painted, paint());
        } else {
            flow.pair(painted, paint(), "If galvanised after welding: vent and drain holes", vents(vents));
        }
    }

    private static Table vents(List<VentHoles> vents) {
        Map<Like, List<VentHoles>> alike = new LinkedHashMap<>();
        for (VentHoles vent : vents) {
            Like like = new Like(vent.member().material().designation(), vent.closedEnds());
            alike.computeIfAbsent(like, k -> new ArrayList<>()).add(vent);
        }
        List<Row> rows = new ArrayList<>();
        alike.forEach((like, list) -> rows.add(vents(like, list)));
        List<Column> columns = List.of(
                Column.words("Hollow section"),
                Column.words("Marks"),
                Column.numbers("Pieces"),
                Column.numbers("Its diagonal, mm"),
                Column.numbers("Vent hole, ⌀ at least"),
                Column.numbers("Closed ends"),
                Column.numbers("Holes per piece"));
        return new Table(columns, rows, VENTS * SheetFrame.room().getWidth()).filling();
    }

    private static Row vents(Like like, List<VentHoles> list) {
        VentHoles first = list.get(0);
        return Row.of(
                like.section,
                MarkRuns.of(list.stream().map(v -> v.member().mark()).toList()),
                String.valueOf(
                        list.stream().mapToInt(v -> v.member().quantity()).sum()),
                Figure.decimal(first.diagonal(), 0),
                String.valueOf(first.diameter()),
                String.valueOf(like.closedEnds),
                like.closedEnds == 0 ? "none: both ends open" : String.valueOf(first.holes()));
    }

    /** @source coverage rule of a paint supplier; masking: common practice */
    private static List<String> painting() {
        return List.of(
                "Litres = area × film / (10 × solids) × (1 + loss): " + Figure.decimal(Paint.FILM_MICRON, 0)
                        + " micron dry, " + Figure.decimal(Paint.SOLIDS_PERCENT, 0) + " % solids by volume, "
                        + Figure.decimal(100 * Paint.LOSS, 0)
                        + " % lost by brush; spray on thin sections loses 30 to 40. The tin's label governs.",
                "Mask the faces that are bolted together, and 50 mm from every weld that is made on site; paint them after.",
                "Blast or wire-brush to clean metal, grind spatter and sharp edges, dust off, prime the same day. Weld first,"
                        + " paint afterwards.",
                "Rolled purlins, girts and sheets come galvanised and are not counted. Read the safety data sheet; ventilate,"
                        + " no flame near solvent.");
    }

    /** @source structural sections, galvanizing design manual; frames and fabrications, a galvanizer's guide */
    private static List<String> dipping() {
        return List.of(
                "DANGER: a sealed hollow bursts in the bath, and people have died of it. Every hollow is vented, also the"
                        + " space between plates that lie on each other. When in doubt ask the galvanizer before welding.",
                "Two holes at each closed end, in opposite corners, hard against the plate: one lets air out at the top, one"
                        + " lets zinc run at the bottom. Each at least a quarter of the section's diagonal and 10 mm; an end"
                        + " that stays open is better still. Where a piece is welded against another, that end is closed too.",
                "Never in the middle of a plate only. A hole weakens the end of a member: the engineer must agree to place"
                        + " and size, most of all at base, knee and apex. Internal vents between members need a proof hole of"
                        + " 10 mm that can be seen.",
                "Check that the longest piece fits the bath; ask before welding long frames. Bolt holes fill by about 1 mm;"
                        + " run taps through threads. No paint then, but cold zinc on damage and site welds.");
    }
}
