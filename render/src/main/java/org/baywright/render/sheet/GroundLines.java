package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Profile;
import org.baywright.model.geometry.Solid;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.setout.ColumnLine;
import org.baywright.model.setout.SetOut;
import org.baywright.render.view.Item;

/** The string lines on the finished floor as hairs, so that a pictorial view hides them behind steel like the rest. */
final class GroundLines {
    /** The part name that ground lines bear among steel: none. */
    static final String NO_PART = "";

    /** Thinner than a view tells apart: all its edges fall together. */
    private static final Profile HAIR = Profile.rectangle(0.002, 0.002);

    private GroundLines() {}

    /**
     * The lines round the main building and round each lean-to.
     *
     * @param lastFrame the last frame shown
     * @param end where lines stop that run on past it
     */
    static List<Item> of(SetOut setOut, int lastFrame, double end) {
        List<Item> items = new ArrayList<>();
        for (ColumnLine line : setOut.columnLines()) {
            if (line.firstFrame() <= lastFrame) {
                double from = setOut.frameLine(line.firstFrame());
                double to = line.lastFrame() > lastFrame ? end : setOut.frameLine(line.lastFrame());
                items.add(hair(new Vec3(line.x(), from, 0), Vec3.ALONG, to - from));
                across(setOut, line, line.firstFrame(), items);
                if (line.lastFrame() <= lastFrame) {
                    across(setOut, line, line.lastFrame(), items);
                }
            }
        }
        return items;
    }

    /** From a line to the next one inward: a lean-to's to the main line, line A's to line B. */
    private static void across(SetOut setOut, ColumnLine line, int frame, List<Item> items) {
        boolean doneFromA = !line.leanTo() && line.inward() < 0;
        if (!doneFromA) {
            double inner = setOut.main(line.leanTo() ? line.side() : line.side().other())
                    .x();
            double from = Math.min(line.x(), inner);
            Vec3 start = new Vec3(from, setOut.frameLine(frame), 0);
            items.add(hair(start, Vec3.ACROSS, Math.abs(inner - line.x())));
        }
    }

    private static Item hair(Vec3 start, Vec3 along, double length) {
        return new Item(NO_PART, Solid.square(HAIR, 0, length), Placement.of(start, along, Vec3.UP));
    }
}
