package org.baywright.render.output;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.baywright.model.cutting.Bar;
import org.baywright.model.cutting.Cut;
import org.baywright.model.cutting.Layout;
import org.baywright.model.cutting.SectionPlan;

/** {@code cutting-plan.csv}: one row a piece, bar by bar, and one for what is left of each bar. */
public final class CuttingTable {
    private static final List<String> HEADER =
            List.of("section", "bar", "layout", "stock_mm", "in_yard", "piece", "mark", "length_mm", "saw_angle_deg");

    private CuttingTable() {}

    /** Writes the plans of all sections. */
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
                rows(new OnSaw(plan.section(), bar, ++number, layout), rows);
            }
        }
        CsvWriter.write(HEADER, rows, out);
    }

    /** A bar, numbered in its section. */
    private record OnSaw(String section, Bar bar, int number, int layout) {}

    private static void rows(OnSaw on, List<List<Cell>> rows) {
        int piece = 0;
        for (Cut cut : on.bar.layout().cuts()) {
            for (int i = 0; i < cut.count(); i++) {
                String mark = on.bar.marks().get(piece);
                rows.add(row(
                        on, Cell.of(++piece), mark, cut.lengthMm(), cut.mitre().angleDeg()));
            }
        }
        rows.add(row(on, Cell.of("off-cut"), "", on.bar.layout().offcutMm(), 0));
    }

    private static List<Cell> row(OnSaw on, Cell piece, String mark, double lengthMm, double angleDeg) {
        return List.of(
                Cell.of(on.section),
                Cell.of(on.number),
                Cell.of(on.layout),
                Cell.of(on.bar.layout().stock().lengthMm(), 1),
                Cell.of(on.bar.layout().stock().isOffcut() ? "yes" : "no"),
                piece,
                Cell.of(mark),
                Cell.of(lengthMm, 1),
                Cell.of(angleDeg, 1));
    }
}
