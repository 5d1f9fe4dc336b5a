package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import org.baywright.model.definition.Cartridge;
import org.baywright.model.definition.CureTime;
import org.baywright.model.parts.Shed;
import org.baywright.model.takeoff.Adhesive;
import org.baywright.render.dimension.Column;
import org.baywright.render.dimension.Figure;
import org.baywright.render.dimension.Paragraph;
import org.baywright.render.dimension.Row;
import org.baywright.render.dimension.Table;

/** How much adhesive the holes take, what to buy for it, and how long it can be worked and must cure. */
final class AdhesiveSheet {
    /** A table of few columns is narrower than the sheet. */
    private static final double WIDTH = 250;

    private final Adhesive adhesive;
    private final Cartridge cartridge;

    private AdhesiveSheet(Adhesive adhesive) {
        this.adhesive = adhesive;
        this.cartridge = adhesive.anchor().cartridge();
    }

    static List<Draft> of(Shed shed) {
        AdhesiveSheet sheet = new AdhesiveSheet(Adhesive.of(shed));
        SheetFlow flow = new SheetFlow();
        flow.table("Adhesive in the holes, mL", sheet.volumes());
        flow.table("To buy", sheet.toBuy());
        flow.table(sheet.cureTitle(), sheet.cure());
        List<Paragraph> notes = new ArrayList<>(List.of(Paragraph.heading("Notes")));
        sheet.notes().forEach(words -> notes.add(Paragraph.bullet(words)));
        flow.columns(notes, 2);
        return flow.drafts("W2.", "Adhesive");
    }

    private Table volumes() {
        double ring = adhesive.ringMl() / adhesive.holeMl();
        List<Row> rows = List.of(
                volume("Least: the ring round the rod and its thread", ring),
                volume("Half full before the rod goes in", 0.5),
                volume("Two thirds full before the rod goes in: ordered", Adhesive.FILL),
                volume("Full to the top: the most a hole holds", 1));
        return new Table(
                        List.of(
                                Column.words("Fill"),
                                Column.numbers("One hole"),
                                Column.numbers("All " + adhesive.holes() + " holes"),
                                Column.numbers("With losses"),
                                Column.numbers("Cartridges used")),
                        rows,
                        WIDTH)
                .filling();
    }

    private Row volume(String words, double fill) {
        double one = fill * adhesive.holeMl();
        double all = adhesive.holes() * one;
        return Row.of(
                words,
                Figure.decimal(one, 1),
                Figure.decimal(all, 0),
                Figure.decimal(all * (1 + Adhesive.LOSS), 0),
                Figure.decimal(adhesive.cartridgesAt(fill), 2));
    }

    private Table toBuy() {
        String drawn = Figure.decimal(cartridge.volumeMl() - cartridge.primingMl(), 0);
        List<Row> rows = List.of(
                Row.of(
                        "Cartridge " + Figure.decimal(cartridge.volumeMl(), 0) + " mL",
                        String.valueOf(adhesive.cartridgesUsed()),
                        String.valueOf(adhesive.cartridges()),
                        drawn + " mL each after " + Figure.decimal(cartridge.primingMl(), 0)
                                + " mL to prime its nozzle; fills " + adhesive.holesACartridge()
                                + " holes; one spare"),
                Row.of(
                        "Mixing nozzle",
                        String.valueOf(adhesive.cartridgesUsed()),
                        String.valueOf(adhesive.nozzles()),
                        "one a cartridge; a new one after every pause longer than the workable time"),
                Row.of(
                        "Cleaning brush " + Figure.length(adhesive.anchor().holeDiameter()) + " mm",
                        String.valueOf(adhesive.brushesUsed()),
                        String.valueOf(adhesive.brushes()),
                        "steel wire, one to 50 holes, one spare; worn when it no longer rubs"),
                Row.of(
                        "Drill bit " + Figure.length(adhesive.anchor().holeDiameter()) + " mm",
                        String.valueOf(adhesive.bitsUsed()),
                        String.valueOf(adhesive.holes() == 0 ? 0 : adhesive.bitsUsed() + 1),
                        "one to 15 m of drilling, one spare"));
        return new Table(
                        List.of(
                                Column.words("What"),
                                Column.numbers("Used"),
                                Column.numbers("To buy"),
                                Column.words("How counted")),
                        rows,
                        WIDTH)
                .filling();
    }

    private String cureTitle() {
        return "Workable and curing times by temperature of the concrete: "
                + (cartridge.example()
                        ? "example of one product: replace with the label's"
                        : "from the label as entered");
    }

    private Table cure() {
        List<Row> rows = cartridge.cure().stream().map(AdhesiveSheet::time).toList();
        return new Table(
                        List.of(
                                Column.numbers("Concrete, °C"),
                                Column.numbers("Workable (gel), minutes"),
                                Column.numbers("Cured, dry hole, hours"),
                                Column.numbers("Cured, wet hole, hours")),
                        rows,
                        WIDTH / 1.5)
                .filling();
    }

    private static Row time(CureTime time) {
        return Row.of(number(time.concreteC()), number(time.workableMin()), number(time.dryH()), number(time.wetH()));
    }

    private static String number(double value) {
        return Figure.decimal(value, value == Math.rint(value) ? 0 : 1);
    }

    private List<String> notes() {
        String times = cartridge.example()
                ? "These times are not yours. Enter the label's in the definition, anchor.adhesive.cure, and print this sheet"
                        + " again; between rows take the longer cure and the shorter workable time."
                : "Between rows take the longer cure and the shorter workable time. The label on the cartridge in hand rules.";
        return List.of(
                times,
                "The concrete's temperature governs, not the air's: measure it. Below the label's least temperature do not"
                        + " start; keep cartridges as the label says before use.",
                "Losses of " + Figure.decimal(100 * Adhesive.LOSS, 0)
                        + " % are what wells out and what sets in nozzles; two thirds, losses, priming and spares are common"
                        + " practice, no source.",
                "Two thirds is " + Figure.decimal(Adhesive.FILL * adhesive.holeMl(), 1)
                        + " mL a hole. Count strokes: try the gun into a cup; one that gives 11 mL at a stroke takes "
                        + adhesive.strokes() + (adhesive.strokes() == 1 ? " stroke" : " strokes") + " a hole.",
                "Open no more holes than one cartridge fills within its workable time, and have rods marked and clean"
                        + " beside them.",
                "The kind of adhesive, its approval and the rod's grade are the engineer's to say.");
    }
}
