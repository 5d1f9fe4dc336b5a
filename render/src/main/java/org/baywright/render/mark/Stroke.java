package org.baywright.render.mark;

import java.util.List;
import org.baywright.model.geometry.Vec2;
import org.baywright.render.paper.Pen;

/** A line through points, closed or not. */
public record Stroke(List<Vec2> points, boolean closed, Pen pen, Layer layer, String part) implements Mark {
    /** Copies the points. */
    public Stroke {
        points = List.copyOf(points);
        if (points.size() < 2) {
            throw new IllegalArgumentException("a stroke needs two points");
        }
    }

    /** A single line that shows no part. */
    public static Stroke line(Vec2 from, Vec2 to, Pen pen, Layer layer) {
        return new Stroke(List.of(from, to), false, pen, layer, "");
    }
}
