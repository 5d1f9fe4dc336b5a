package org.baywright.render.output;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.baywright.model.nesting.CutList;
import org.baywright.model.parts.Part;

/** {@code cut-list.csv}: one row a mark, section by section, longest first. */
public final class CutListTable {
    private static final List<String> HEADER = List.of(
            "section",
            "mark",
            "part",
            "quantity",
            "tip_to_tip_mm",
            "long_edge_mm",
            "short_edge_mm",
            "end_a_deg",
            "end_a_long_point",
            "end_b_deg",
            "end_b_long_point",
            "saw_plane",
            "mass_each_kg",
            "mass_total_kg",
            "welded");

    private CutListTable() {}

    /** Writes the list. */
    public static void write(CutList list, Appendable out) throws IOException {
        List<List<Cell>> rows = new ArrayList<>();
        list.groups()
                .forEach(group -> group.entries()
                        .forEach(entry -> rows.add(row(group.section().designation(), entry))));
        CsvWriter.write(HEADER, rows, out);
    }

    private static List<Cell> row(String section, CutList.Entry entry) {
        Part part = entry.part();
        return List.of(
                Cell.of(section),
                Cell.of(part.mark()),
                Cell.of(part.kind().label()),
                Cell.of(part.quantity()),
                Cell.of(part.stockLength(), 1),
                Cell.of(part.longEdge(), 1),
                Cell.of(part.shortEdge(), 1),
                Cell.of(part.cutADeg(), 2),
                Cell.of(point(entry.startPoint())),
                Cell.of(part.cutBDeg(), 2),
                Cell.of(point(entry.endPoint())),
                Cell.of(plane(entry)),
                Cell.of(part.massKg(), 2),
                Cell.of(part.totalMassKg(), 2),
                Cell.of(String.join("; ", entry.welded())));
    }

    private static String point(CutList.LongPoint point) {
        return point == CutList.LongPoint.NONE ? "" : point.name().toLowerCase(Locale.ROOT);
    }

    private static String plane(CutList.Entry entry) {
        if (entry.isCompound()) {
            return "both";
        }
        return entry.blank().isSquare() ? "" : entry.blank().plane().label();
    }
}
