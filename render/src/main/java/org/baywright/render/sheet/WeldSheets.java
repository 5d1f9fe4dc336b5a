package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.baywright.model.parts.Assemblies;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Shed;
import org.baywright.model.takeoff.Electrode;
import org.baywright.model.takeoff.Weld;
import org.baywright.model.takeoff.Welds;
import org.baywright.render.dimension.Column;
import org.baywright.render.dimension.Figure;
import org.baywright.render.dimension.Paragraph;
import org.baywright.render.dimension.Row;
import org.baywright.render.dimension.Table;

/** Every weld, joint by joint, and the electrodes for them. */
final class WeldSheets {
    private static final List<Column> COLUMNS = List.of(
            Column.words("Joint"),
            Column.words("Plates"),
            Column.words("To members"),
            Column.numbers("Welds"),
            Column.words("Where"),
            Column.numbers("Length each, mm"),
            Column.numbers("Leg, mm"),
            Column.words("Electrode"),
            Column.numbers("All, m"),
            Column.numbers("Deposit, kg"),
            Column.numbers("Electrodes, kg"));

    /** Efficiencies that the published stub-loss table gives. */
    private static final List<Integer> EFFICIENCIES = List.of(60, 65, 70, 75, 80);

    private final Welds welds;

    private WeldSheets(Welds welds) {
        this.welds = welds;
    }

    static List<Draft> of(Shed shed) {
        Welds welds = Welds.of(shed);
        if (welds.list().isEmpty()) {
            return List.of();
        }
        WeldSheets sheets = new WeldSheets(welds);
        SheetFlow flow = new SheetFlow();
        flow.table("Fillet welds by joint, or as the engineer shows", sheets.table());
        flow.table("Electrodes by efficiency, 350 long with a stub of 50", sheets.electrodes());
        List<Paragraph> notes = new ArrayList<>(List.of(Paragraph.heading("Order of welding")));
        sequence().forEach(words -> notes.add(Paragraph.bullet(words)));
        notes.add(Paragraph.heading("Take care"));
        cautions().forEach(words -> notes.add(Paragraph.bullet(words)));
        if (welds.list().stream().anyMatch(w -> w.member().equals(Weld.NO_MEMBER))) {
            notes.add(
                    Paragraph.bullet("No member: some plates stand clear of every member, such as cleats in a corner of"
                            + " walls. They are counted; how they are held is for the engineer to show."));
        }
        List<String> butted = butted(shed);
        if (!butted.isEmpty()) {
            notes.add(Paragraph.bullet("No ledge for a fillet along an edge of " + MarkRuns.of(butted)
                    + " that ends flush with its member: a butt weld there, counted here as fillet. Bevel the member's edge,"
                    + " or as the engineer shows."));
        }
        flow.columns(notes, 2);
        return flow.drafts("W3.", "Weld list");
    }

    /** The plates that end flush with a member on an edge. */
    private static List<String> butted(Shed shed) {
        Assemblies assemblies = Assemblies.of(shed);
        return shed.parts().stream()
                .filter(p -> !p.kind().isMember())
                .filter(p -> PlateOutline.of(p, assemblies.holding(p)).stream().anyMatch(o -> o.isButted(p)))
                .map(Part::mark)
                .toList();
    }

    /** What a row shares: joint, leg, the length to the millimetre, and where. */
    private record Like(PartKind joint, double leg, long length, Weld.Seam seam) {}

    private Table table() {
        Map<Like, List<Weld>> alike = new LinkedHashMap<>();
        for (Weld weld : welds.list()) {
            Like like = new Like(weld.joint(), weld.leg(), Math.round(weld.length()), weld.seam());
            alike.computeIfAbsent(like, k -> new ArrayList<>()).add(weld);
        }
        List<Row> rows = new ArrayList<>();
        alike.forEach((like, list) -> rows.add(row(like, list)));
        rows.add(Row.total(
                "All",
                "",
                "",
                String.valueOf(welds.list().stream().mapToInt(Weld::count).sum()),
                "",
                "",
                "",
                "",
                Figure.decimal(welds.metres(), 2),
                Figure.decimal(welds.depositKg(), 2),
                Figure.decimal(welds.electrodeKg(), 2)));
        return new Table(COLUMNS, rows, SheetFrame.room().getWidth()).filling();
    }

    private static Row row(Like like, List<Weld> list) {
        Welds part = new Welds(list);
        return Row.of(
                like.joint.label(),
                MarkRuns.of(list.stream().map(Weld::plate).toList()),
                MarkRuns.of(list.stream().map(Weld::member).toList()),
                String.valueOf(list.stream().mapToInt(Weld::count).sum()),
                like.seam.label(),
                String.valueOf(like.length),
                Figure.length(like.leg),
                Welds.ELECTRODE,
                Figure.decimal(part.metres(), 2),
                Figure.decimal(part.depositKg(), 2),
                Figure.decimal(part.electrodeKg(), 2));
    }

    private Table electrodes() {
        List<Row> rows = new ArrayList<>();
        for (int efficiency : EFFICIENCIES) {
            Electrode electrode =
                    new Electrode(Electrode.USUAL.lengthMm(), Electrode.USUAL.stubMm(), efficiency / 100.0);
            boolean usual = electrode.equals(Electrode.USUAL);
            Stream<String> cells = Stream.of(
                    efficiency + " %",
                    Figure.decimal(100 * electrode.usable(), 1) + " %",
                    Figure.decimal(welds.electrodeKg(electrode), 1),
                    usual ? "ordered: " + welds.packs() + " packs of " + Figure.decimal(Welds.PACK_KG, 0) + " kg" : "");
            rows.add(Row.of(cells.toArray(String[]::new)));
        }
        return new Table(
                        List.of(
                                Column.words("Of what melts, in the weld"),
                                Column.words("Of a new stick, in the weld"),
                                Column.numbers("Electrodes, kg"),
                                Column.words("Bought")),
                        rows,
                        SheetFrame.room().getWidth() / 1.6)
                .filling();
    }

    /** Common practice, no source. */
    private static List<String> sequence() {
        return List.of(
                "Cut, drill, fit square to 1 in 300, tack at four places, check length, diagonal and twist, then weld.",
                "Column on its plate: short runs turn about on opposite faces, never all the way round at once; let it cool"
                        + " between runs, close the corners last. Then lay a straight edge under the plate: it bows towards"
                        + " the weld.",
                "Pack, clamp or bolt two base plates back to back where they can be, so that they hold each other flat.",
                "The first frame is put together on the floor and is the template of the others. Tack all, check, weld from"
                        + " the middle outwards.",
                "Cleats: both sides, from the middle out; opposite hands of a pair on opposite sides, as on the piece"
                        + " drawings.");
    }

    /** @source welding fume limit 1 mg/m³ in Australia; strip zinc 50 to 100 mm: from memory; the rest common practice */
    private static List<String> cautions() {
        return List.of(
                "Electrodes: low hydrogen, class E4918 (any E48xx low-hydrogen class), or as the engineer says. From sealed"
                        + " packs or a heated box; damp ones crack the weld. 3.2 mm for these legs; 2.5 where the wall is"
                        + " thin.",
                "Lengths are measured round the cut end as it slants, corners taken square. Deposit is the triangle and 15 %"
                        + " for a round bead; electrodes add stubs, spatter and 15 % for tacks and repairs. By solid wire"
                        + " under gas about 0.6 as much.",
                "Where a member ends in a hollow that will be galvanised, drill vent holes before the plate goes on.",
                "Ventilate: welding fume has a limit of 1 mg/m3 in Australia. Grind zinc off 50 to 100 mm before welding;"
                        + " its fume makes ill. Screens for others' eyes, fire watch for half an hour after.",
                "Size, type, preheat, inspection and who may weld are the engineer's and the welding standard's to say.");
    }
}
