package org.baywright.render.output;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.parts.PlateStand;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.BarGrid;

/**
 * {@code setout.csv}: one row for the middle of every plate and one for every anchor hole, from the corner of the
 * columns' outside faces at A/1; along the building, and across it to the right.
 */
public final class SetOutTable {
    private static final List<String> HEADER = List.of(
            "grid",
            "plate",
            "carries",
            "point",
            "hole",
            "along_mm",
            "across_mm",
            "turn_deg",
            "concrete_level_mm",
            "packer_top_mm",
            "plate_top_mm",
            "bars");

    private SetOutTable() {}

    /** Writes the plates and holes of a shed. */
    public static void write(Shed shed, Appendable out) throws IOException {
        Optional<BarGrid> bars = BarGrid.of(shed.definition());
        List<List<Cell>> rows = new ArrayList<>();
        for (PlateStand stand : columnsFirst(PlateStand.of(shed))) {
            Vec2 middle = new Vec2(stand.middle().x(), stand.middle().y());
            rows.add(row(stand, "centre", Cell.of(""), middle, ""));
            for (int i = 0; i < stand.holes().size(); i++) {
                Vec2 hole = stand.holes().get(i);
                String meeting = bars.map(b -> b.meeting(hole).name().toLowerCase(Locale.ROOT))
                        .orElse("");
                rows.add(row(stand, "hole", Cell.of(i + 1), hole, meeting));
            }
        }
        CsvWriter.write(HEADER, rows, out);
    }

    /** The plate at the datum comes first, which posts of the end wall would else do. */
    private static List<PlateStand> columnsFirst(List<PlateStand> stands) {
        return stands.stream()
                .sorted(Comparator.comparing((PlateStand s) -> !s.isOfFrame()))
                .toList();
    }

    private static List<Cell> row(PlateStand stand, String point, Cell hole, Vec2 at, String bars) {
        return List.of(
                Cell.of(stand.grid()),
                Cell.of(stand.plate().mark()),
                Cell.of(stand.upright().mark()),
                Cell.of(point),
                hole,
                Cell.of(at.y(), 1),
                Cell.of(at.x(), 1),
                Cell.of(stand.turnDeg(), 0),
                Cell.of(0.0, 1),
                Cell.of(stand.underside(), 1),
                Cell.of(stand.top(), 1),
                Cell.of(bars));
    }
}
