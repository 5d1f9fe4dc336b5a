package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import org.baywright.model.definition.Side;
import org.baywright.model.parts.Shed;
import org.baywright.model.takeoff.Lift;
import org.baywright.model.takeoff.Lifts;
import org.baywright.render.dimension.Column;
import org.baywright.render.dimension.Figure;
import org.baywright.render.dimension.Paragraph;
import org.baywright.render.dimension.Row;
import org.baywright.render.dimension.Table;

/** What each lift weighs, where it hangs level and how high it goes. No machine and no gear is chosen. */
final class LiftSheets {
    /** Twice what one person lifts: beyond it two people are no answer. */
    private static final double BY_TWO_KG = 2 * Lift.BY_HAND_KG;

    private static final List<Column> COLUMNS = List.of(
            Column.words("What"),
            Column.words("Where"),
            Column.numbers("Lifts"),
            Column.numbers("Steel, kg"),
            Column.numbers("Lift as, kg"),
            Column.words("Centre of gravity, mm"),
            Column.numbers("Top when in place, mm"),
            Column.words("Over 25 kg"));

    private final String lineA;
    private final List<Lift> lifts;

    private LiftSheets(Shed shed) {
        this.lineA = shed.setOut().main(Side.LEFT).letter();
        this.lifts = Lifts.of(shed);
    }

    static List<Draft> of(Shed shed) {
        SheetFlow flow = new SheetFlow();
        flow.table("What is lifted", new LiftSheets(shed).table());
        List<Paragraph> notes = new ArrayList<>(List.of(Paragraph.heading("Before anything is lifted")));
        cautions().forEach(words -> notes.add(Paragraph.bullet(words)));
        flow.columns(notes, 3);
        return flow.drafts("W5.", "Lifting");
    }

    private Table table() {
        List<Row> rows = new ArrayList<>();
        for (Lift.Kind kind : Lift.Kind.values()) {
            List<Lift> of = lifts.stream().filter(l -> l.kind() == kind).toList();
            if (!of.isEmpty()) {
                rows.add(Row.heading(title(kind)));
                of.forEach(lift -> rows.add(row(lift)));
            }
        }
        return new Table(COLUMNS, rows, SheetFrame.room().getWidth()).filling();
    }

    private static String title(Lift.Kind kind) {
        return switch (kind) {
            case FRAME -> "Frames lifted whole: columns and rafters with their plates and cleats, joined";
            case RAFTER_PAIR -> "Or rafter pairs bolted at the ridge, with their plates and cleats";
            case PIECE -> "Or piece by piece, each with what is welded to it";
            case PACK -> "Rows in packs, one slope or one wall of a bay at a time";
            case END_PACK -> "Rows of an end wall in one pack";
        };
    }

    private Row row(Lift lift) {
        return Row.of(
                MarkRuns.of(List.of(lift.marks().split(", "))),
                where(lift),
                String.valueOf(lift.count()),
                Figure.decimal(lift.massKg(), 1),
                String.valueOf(lift.liftedKg()),
                balance(lift),
                Figure.decimal(lift.height(), 0),
                by(lift));
    }

    private static String where(Lift lift) {
        String runs = PlateUse.runs(lift.places());
        boolean one = lift.places().size() == 1;
        return switch (lift.kind()) {
            case FRAME, RAFTER_PAIR, END_PACK -> (one ? "frame " : "frames ") + runs;
            case PACK -> (one ? "bay " : "bays ") + runs;
            case PIECE -> lift.places().isEmpty() ? "" : (one ? "frame " : "frames ") + runs;
        };
    }

    private String balance(Lift lift) {
        String along = Figure.decimal(lift.balance().along(), 0);
        String up = Figure.decimal(lift.balance().up(), 0);
        return switch (lift.kind()) {
            case FRAME -> along + " from line " + lineA + ", " + up + " above the base";
            case RAFTER_PAIR -> along + " from line " + lineA + ", " + up + " above its lowest point";
            case PIECE -> along + " from the marked end";
            case PACK, END_PACK -> along + " from the end of the longest";
        };
    }

    private static String by(Lift lift) {
        if (!lift.isHeavy()) {
            return "";
        }
        return lift.liftedKg() <= BY_TWO_KG ? "two people or machine" : "machine";
    }

    /** Common practice, no source. */
    private static List<String> cautions() {
        return List.of(
                "No machine, sling, hook or capacity is chosen here. A competent person plans each lift: rated gear with its"
                        + " tags, reach and height with hook and slings over the top of the piece, ground under the machine,"
                        + " overhead lines. Only ticketed operators, riggers and doggers.",
                "Lift as: steel of the model with 3 % for welds and 5 % for zinc, rounded up; hook, slings and spreader come"
                        + " on top. Weigh or ask when it matters.",
                "Hang from both sides of the centre of gravity; try it a hand's breadth off the ground, then land and shift."
                        + " Tag lines on both ends. Brackets welded on afterwards move the centre.",
                "Wind: stop when the piece will not hang still, or at the machine's limit, whichever is lower. No lifting in"
                        + " gusts with sheets.",
                "Exclusion zone: nobody under the load nor within the reach of a piece that swings or falls. One person"
                        + " signals.",
                "Do not let a column go before all its anchors (four where the plate has four) are cured, tight, and packers"
                        + " or grout carry it.",
                "Temporary bracing and guys from the first frame on, in both directions; two frames with their purlins and"
                        + " bracing stand first, in the braced bay. Take guys off only when roof and wall bracing are tight.",
                "Over 25 kg: two people or a machine; over 50 a machine. Common practice, no source: check the rules on"
                        + " manual handling where you work.",
                "No packs on purlins without their bridging, and none in the middle of a span.");
    }
}
