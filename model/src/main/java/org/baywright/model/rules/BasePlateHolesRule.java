package org.baywright.model.rules;

import java.util.List;
import org.baywright.model.definition.Member;
import org.baywright.model.parts.BaseDesign;
import org.baywright.model.parts.Hole;
import org.baywright.model.setout.ColumnLine;

/** Anchor holes must lie on the plate, clear of the column and of each other. */
final class BasePlateHolesRule implements Rule {
    @Override
    public void check(Asked asked) {
        asked.setOut()
                .columnLines()
                .forEach(line -> asked.frames()
                        .filter(line::has)
                        .forEach(frame -> check(asked, line, asked.column(line, frame), asked.base(line, frame))));
    }

    private static void check(Asked asked, ColumnLine line, Member column, BaseDesign base) {
        String key = line.leanTo() ? "leanToBasePlate" : "basePlate";
        if (base.width() < column.depth() || base.depth() < column.width()) {
            asked.error(
                    "column-off-plate",
                    key,
                    "the column " + column.section().designation() + " stands past the edge of a plate of "
                            + Asked.mm(base.width()) + " x " + Asked.mm(base.depth()),
                    "make the plate larger than the column");
        }
        for (Hole hole : base.holes()) {
            double x = Math.abs(hole.at().x());
            double y = Math.abs(hole.at().y());
            double r = hole.diameter() / 2;
            if (x + r >= base.width() / 2 || y + r >= base.depth() / 2) {
                asked.error(
                        "hole-off-plate",
                        key,
                        "a hole of " + Asked.mm(2 * r) + " mm at " + Asked.mm(x) + ", " + Asked.mm(y)
                                + " from the middle runs off a plate of " + Asked.mm(base.width()) + " x "
                                + Asked.mm(base.depth()),
                        "lessen gaugeX or gaugeY, or make the plate larger");
            } else if (x - r <= column.depth() / 2 && y - r <= column.width() / 2) {
                asked.error(
                        "hole-under-column",
                        key,
                        "a hole of " + Asked.mm(2 * r) + " mm at " + Asked.mm(x) + ", " + Asked.mm(y)
                                + " from the middle lies under the column "
                                + column.section().designation(),
                        "raise gaugeX or gaugeY until the holes clear the column");
            }
        }
        apart(asked, key, base.holes());
    }

    private static void apart(Asked asked, String key, List<Hole> holes) {
        for (int i = 0; i < holes.size(); i++) {
            for (int j = i + 1; j < holes.size(); j++) {
                double distance = holes.get(i).at().distance(holes.get(j).at());
                if (distance <= holes.get(i).diameter()) {
                    asked.error(
                            "holes-overlap",
                            key,
                            "two holes lie " + Asked.mm(distance) + " mm apart and run into each other",
                            "raise gaugeX or gaugeY, or use fewer holes");
                }
            }
        }
    }
}
