package org.baywright.render.output;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.baywright.model.cutting.Bar;
import org.baywright.model.cutting.Layout;
import org.baywright.model.cutting.SectionPlan;
import org.baywright.model.nesting.Laid;
import org.baywright.model.nesting.LaidBar;
import org.baywright.model.nesting.SectionCuts;
import org.baywright.model.nesting.ShedCutting;

/** {@code cutting-plan.csv}: one row a piece, bar by bar, and one for what is left of each bar. */
public final class CuttingTable {
    private static final List<String> HEADER = List.of(
            "section",
            "bar",
            "layout",
            "stock_mm",
            "source",
            "piece",
            "mark",
            "tip_to_tip_mm",
            "from_mm",
            "to_mm",
            "left_angle_deg",
            "left_long_point",
            "right_angle_deg",
            "right_long_point",
            "saw_plane",
            "turned",
            "shares_cut_with_next");

    private CuttingTable() {}

    /** Writes the plan of a shed: one row a piece, bar by bar from the left, and one for what is left of each bar. */
    public static void write(ShedCutting cutting, Appendable out) throws IOException {
        List<List<Cell>> rows = new ArrayList<>();
        for (SectionCuts cuts : cutting.sections()) {
            int number = 0;
            int layout = 0;
            for (LaidBar bar : cuts.bars()) {
                layout++;
                String source = cuts.isSpecial(bar) ? "to length" : source(bar);
                for (int n = 0; n < bar.times(); n++) {
                    List<Cell> start = start(cuts.section().designation(), ++number, layout, bar, source);
                    rows(start, bar, rows);
                }
            }
        }
        CsvWriter.write(HEADER, rows, out);
    }

    private static void rows(List<Cell> start, LaidBar bar, List<List<Cell>> rows) {
        for (int i = 0; i < bar.pieces().size(); i++) {
            Laid laid = bar.pieces().get(i);
            boolean shares = i + 1 < bar.pieces().size()
                    && laid.right().shares(bar.pieces().get(i + 1).left());
            List<Cell> row = new ArrayList<>(start);
            row.add(Cell.of(i + 1));
            row.add(Cell.of(laid.blank().mark()));
            row.add(Cell.of(laid.blank().tipMm(), 1));
            row.add(Cell.of(laid.leftTipMm(), 1));
            row.add(Cell.of(laid.rightTipMm(), 1));
            row.add(Cell.of(laid.left().angleDeg(), 2));
            row.add(Cell.of(point(-laid.left().slope())));
            row.add(Cell.of(laid.right().angleDeg(), 2));
            row.add(Cell.of(point(laid.right().slope())));
            row.add(Cell.of(laid.blank().isSquare() ? "" : laid.blank().plane().label()));
            row.add(Cell.of(laid.turn().label()));
            row.add(Cell.of(shares ? "yes" : "no"));
            rows.add(row);
        }
        List<Cell> row = new ArrayList<>(start);
        double end = bar.stock().lengthMm();
        row.addAll(List.of(
                Cell.of("off-cut"),
                Cell.of(""),
                Cell.of(bar.offcutMm(), 1),
                Cell.of(end - bar.offcutMm(), 1),
                Cell.of(end, 1)));
        row.addAll(Collections.nCopies(HEADER.size() - row.size(), Cell.of("")));
        rows.add(row);
    }

    private static String point(double lean) {
        return lean == 0 ? "" : lean > 0 ? "top" : "bottom";
    }

    /** Writes the plans of all sections of a list, in the same columns. */
    public static void write(List<SectionPlan> plans, Appendable out) throws IOException {
        List<List<Cell>> rows = new ArrayList<>();
        for (SectionPlan plan : plans) {
            int number = 0;
            int layout = 0;
            Optional<Layout> last = Optional.empty();
            for (Bar bar : plan.plan().bars()) {
                if (last.filter(l -> l == bar.layout()).isEmpty()) {
                    layout++;
                    last = Optional.of(bar.layout());
                }
                LaidBar laid = LaidBar.of(bar);
                rows(start(plan.section(), ++number, layout, laid, source(laid)), laid, rows);
            }
        }
        CsvWriter.write(HEADER, rows, out);
    }

    private static String source(LaidBar bar) {
        return bar.stock().isOffcut() ? "yard" : "stock";
    }

    private static List<Cell> start(String section, int number, int layout, LaidBar bar, String source) {
        return List.of(
                Cell.of(section),
                Cell.of(number),
                Cell.of(layout),
                Cell.of(bar.stock().lengthMm(), 1),
                Cell.of(source));
    }
}
