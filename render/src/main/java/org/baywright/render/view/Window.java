package org.baywright.render.view;

import java.util.List;
import java.util.Optional;
import org.baywright.model.geometry.Vec2;
import org.locationtech.jts.geom.Envelope;

/** The lines of a view that lie in a window: for details. */
public final class Window {
    private Window() {}

    /** The lines, cut off at the window's edge. */
    public static List<ViewLine> cut(List<ViewLine> lines, Envelope window) {
        return lines.stream().flatMap(line -> cut(line, window).stream()).toList();
    }

    /** @source Y.-D. Liang and B. Barsky, A new concept and method for line clipping, ACM TOG 3 (1984) */
    private static Optional<ViewLine> cut(ViewLine line, Envelope window) {
        Vec2 step = line.to().minus(line.from());
        double[] toward = {-step.x(), step.x(), -step.y(), step.y()};
        double[] room = {
            line.from().x() - window.getMinX(),
            window.getMaxX() - line.from().x(),
            line.from().y() - window.getMinY(),
            window.getMaxY() - line.from().y()
        };
        double enter = 0;
        double leave = 1;
        for (int i = 0; i < 4; i++) {
            if (toward[i] < 0) {
                enter = Math.max(enter, room[i] / toward[i]);
            } else if (toward[i] > 0) {
                leave = Math.min(leave, room[i] / toward[i]);
            } else if (room[i] < 0) {
                return Optional.empty();
            }
        }
        return enter < leave
                ? Optional.of(new ViewLine(
                        line.from().plus(step.times(enter)), line.from().plus(step.times(leave)), line.part()))
                : Optional.empty();
    }
}
