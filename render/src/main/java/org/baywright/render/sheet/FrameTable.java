package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.parts.Part;
import org.baywright.render.dimension.Column;
import org.baywright.render.dimension.Figure;
import org.baywright.render.dimension.Row;
import org.baywright.render.dimension.Table;
import org.baywright.render.mark.Mark;
import org.locationtech.jts.geom.Envelope;

/** What one frame is made of and weighs, as a table under its section. */
final class FrameTable {
    private static final List<Column> COLUMNS = List.of(
            Column.words("Mark"),
            Column.words("Part"),
            Column.words("Section or plate"),
            Column.numbers("Tip to tip mm"),
            Column.numbers("In one frame"),
            Column.numbers("Each kg"),
            Column.numbers("Frame kg"));

    /** On paper, mm. */
    static final double WIDTH = 190;

    private FrameTable() {}

    /** As much of the table as the room holds; a frame's parts are few. */
    static List<Mark> of(FrameView frame, Envelope room) {
        Table table = new Table(COLUMNS, rows(frame), Math.min(WIDTH, room.getWidth()));
        return table.pages(room.getHeight() - 4).get(0).draw(new Vec2(room.getMinX() + 2, room.getMaxY() - 4));
    }

    private static List<Row> rows(FrameView frame) {
        List<Row> rows = new ArrayList<>();
        double total = 0;
        for (Part part : frame.shed().parts()) {
            long count = part.kind().isOfFrame()
                    ? frame.standing(part.kind()).stream()
                            .filter(s -> s.part() == part)
                            .count()
                    : 0;
            if (count > 0) {
                rows.add(Row.of(
                        part.mark(),
                        part.kind().label(),
                        part.material().description(),
                        Figure.length(part.stockLength()),
                        String.valueOf(count),
                        kg(part.massKg()),
                        kg(part.massKg() * count)));
                total += part.massKg() * count;
            }
        }
        rows.add(Row.total("", "Steel of one frame", "", "", "", "", kg(total)));
        return rows;
    }

    private static String kg(double mass) {
        return String.format(Locale.ROOT, "%.1f", mass);
    }
}
