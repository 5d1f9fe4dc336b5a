package org.baywright.model.rules;

import java.util.List;
import org.baywright.model.setout.ColumnLine;

/** Base plates of neighbouring columns must not overlap, along the building or across it. */
final class BasePlateRoomRule implements Rule {
    @Override
    public void check(Asked asked) {
        for (ColumnLine line : asked.setOut().columnLines()) {
            asked.frames().filter(f -> line.has(f) && line.has(f + 1)).forEach(frame -> along(asked, line, frame));
        }
        List<ColumnLine> lines = asked.setOut().columnLines();
        asked.frames()
                .forEach(frame ->
                        across(asked, lines.stream().filter(l -> l.has(frame)).toList(), frame));
    }

    private static void along(Asked asked, ColumnLine line, int frame) {
        double gap = middle(asked, line, frame + 1)
                - middle(asked, line, frame)
                - (asked.base(line, frame).depth() + asked.base(line, frame + 1).depth()) / 2;
        if (gap < 0) {
            asked.error(
                    "bay-too-short",
                    "baySpacing",
                    "in bay " + frame + " the base plates on line " + line.letter() + " overlap by " + Asked.mm(-gap)
                            + " mm",
                    "widen the bay or lessen the plates");
        }
    }

    private static double middle(Asked asked, ColumnLine line, int frame) {
        return asked.setOut().middle(frame, asked.column(line, frame).width());
    }

    private static void across(Asked asked, List<ColumnLine> lines, int frame) {
        for (int i = 1; i < lines.size(); i++) {
            ColumnLine a = lines.get(i - 1);
            ColumnLine b = lines.get(i);
            double gap = centre(asked, b, frame)
                    - centre(asked, a, frame)
                    - (asked.base(a, frame).width() + asked.base(b, frame).width()) / 2;
            if (gap < 0) {
                ColumnLine leanTo = a.leanTo() ? a : b;
                asked.error(
                        "plates-overlap",
                        leanTo.leanTo() ? asked.heightKey(leanTo) + ".width" : "span",
                        "the base plates on lines " + a.letter() + " and " + b.letter() + " overlap by "
                                + Asked.mm(-gap) + " mm",
                        "set the lines further apart or lessen the plates");
            }
        }
    }

    private static double centre(Asked asked, ColumnLine line, int frame) {
        return line.x() + line.inward() * asked.column(line, frame).depth() / 2;
    }
}
