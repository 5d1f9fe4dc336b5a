package org.baywright.render.dimension;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import org.baywright.model.geometry.Tolerance;
import org.baywright.model.geometry.Vec2;

/**
 * Adjacent dimensions on one line.
 *
 * @param points in order along the direction, none twice; extension lines start at them
 */
public record DimensionChain(List<Vec2> points, Direction direction) {
    /** Points closer than this along the chain print no distance, mm. */
    static final double NOTHING = 0.05;

    /** Copies the points, which must be two at least. */
    public DimensionChain {
        points = List.copyOf(points);
        if (points.size() < 2) {
            throw new IllegalArgumentException("a chain of dimensions needs two points apart");
        }
    }

    /** A chain through points given in any order; points at the same place count once. */
    public static DimensionChain through(List<Vec2> points, Direction direction) {
        return new DimensionChain(ordered(points, direction), direction);
    }

    /** The points in order along a direction, each place once. */
    static List<Vec2> ordered(List<Vec2> points, Direction direction) {
        Comparator<Vec2> order = direction == Direction.VERTICAL
                ? Comparator.comparingDouble(Vec2::y)
                : Comparator.comparingDouble(Vec2::x);
        List<Vec2> kept = new ArrayList<>();
        for (Vec2 point : points.stream().sorted(order).toList()) {
            if (kept.isEmpty() || direction.distance(kept.get(kept.size() - 1), point) > NOTHING) {
                kept.add(point);
            }
        }
        return kept;
    }

    /** One dimension a gap. */
    public List<Dimension> segments() {
        List<Dimension> segments = new ArrayList<>();
        for (int i = 1; i < points.size(); i++) {
            segments.add(Dimension.of(points.get(i - 1), points.get(i), direction));
        }
        return segments;
    }

    /**
     * The dimensions to print: each run of equal neighbours becomes one when some text of the run does not fit and the
     * text of the whole does.
     */
    public List<Dimension> printed(Predicate<Dimension> fits) {
        List<Dimension> segments = segments();
        List<Dimension> printed = new ArrayList<>();
        int first = 0;
        while (first < segments.size()) {
            int end = endOfRun(segments, first);
            List<Dimension> run = segments.subList(first, end);
            Dimension whole = new Dimension(points.get(first), points.get(end), direction, end - first, false);
            boolean collapse = end - first > 1 && !run.stream().allMatch(fits) && fits.test(whole);
            printed.addAll(collapse ? List.of(whole) : run);
            first = end;
        }
        return printed;
    }

    private static int endOfRun(List<Dimension> segments, int first) {
        int end = first + 1;
        while (end < segments.size()
                && Tolerance.same(segments.get(first).value(), segments.get(end).value())) {
            end++;
        }
        return end;
    }

    /** From the first point to the last. */
    public Dimension overall() {
        return Dimension.of(points.get(0), points.get(points.size() - 1), direction);
    }
}
