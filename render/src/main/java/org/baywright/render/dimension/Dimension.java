package org.baywright.render.dimension;

import org.baywright.model.geometry.Vec2;

/**
 * A distance as it is printed. What is printed follows from the two points and from nothing else.
 *
 * @param from a point of the model, view coordinates, mm
 * @param to another
 * @param direction along which the distance is taken
 * @param parts 1, or how many equal parts one dimension stands for
 * @param back whether it runs from a datum the other way than counts as onwards; it then prints a minus
 */
public record Dimension(Vec2 from, Vec2 to, Direction direction, int parts, boolean back) {
    /** Checks that there is a distance. */
    public Dimension {
        if (!(direction.distance(from, to) > 0) || parts < 1) {
            throw new IllegalArgumentException("a dimension needs two points apart and a part or more: " + from + to);
        }
    }

    /** A plain dimension. */
    public static Dimension of(Vec2 from, Vec2 to, Direction direction) {
        return new Dimension(from, to, direction, 1, false);
    }

    /** A running dimension from a datum, where one way along its direction counts as onwards. */
    public static Dimension running(Vec2 datum, Vec2 to, Direction direction, Vec2 onwards) {
        Vec2 way = to.minus(datum);
        double forth = direction == Direction.HORIZONTAL ? way.x() * onwards.x() : way.y() * onwards.y();
        return new Dimension(datum, to, direction, 1, forth < 0);
    }

    /** The distance, mm. */
    public double value() {
        return direction.distance(from, to);
    }

    /** As printed: {@code 6000}, {@code -35} behind its datum, or {@code 4 × 6000 = 24000} for equal parts. */
    public String text() {
        String whole = Figure.length(back ? -value() : value());
        return parts == 1 ? whole : parts + " × " + Figure.length(value() / parts) + " = " + whole;
    }
}
