package org.baywright.render.output;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.Shed;

/** {@code parts.csv}: one row a mark, lengths to 0.1 mm. */
public final class PartsTable {
    private static final List<String> HEADER = List.of(
            "mark",
            "part",
            "section",
            "grade",
            "quantity",
            "stock_length_mm",
            "long_edge_mm",
            "short_edge_mm",
            "cut_a_deg",
            "cut_b_deg",
            "cut_form",
            "mass_each_kg",
            "mass_total_kg");

    private PartsTable() {}

    /** Writes the parts of a shed. */
    public static void write(Shed shed, Appendable out) throws IOException {
        CsvWriter.write(HEADER, shed.parts().stream().map(PartsTable::row).toList(), out);
    }

    private static List<Cell> row(Part part) {
        return List.of(
                Cell.of(part.mark()),
                Cell.of(part.kind().label()),
                Cell.of(part.material().designation()),
                Cell.of(part.material().grade()),
                Cell.of(part.quantity()),
                Cell.of(part.stockLength(), 1),
                Cell.of(part.longEdge(), 1),
                Cell.of(part.shortEdge(), 1),
                Cell.of(part.cutADeg(), 2),
                Cell.of(part.cutBDeg(), 2),
                Cell.of(part.cutForm().name().toLowerCase(Locale.ROOT)),
                Cell.of(part.massKg(), 2),
                Cell.of(part.totalMassKg(), 2));
    }
}
