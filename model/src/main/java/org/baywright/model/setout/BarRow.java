package org.baywright.model.setout;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.baywright.model.definition.SlabBars;
import org.baywright.model.geometry.Tolerance;

/**
 * Bars side by side without end, one at every whole spacing from the offset.
 *
 * <p>Moving the bars by one spacing changes nothing, so shifts lie on a circle whose length is the spacing. A place that
 * must keep so far away from every bar forbids an arc of that circle: the shifts that bring a bar nearer. The answer is
 * exact: the smallest shift outside every arc is zero or an end of one.
 *
 * @param spacing middle to middle
 * @param offset of the middle of one bar from the datum line
 */
record BarRow(double spacing, double offset) {
    /** The shifts strictly between two ends. */
    private record Arc(double low, double high) {
        boolean meets(Arc later) {
            return later.low < high - Tolerance.COINCIDENT;
        }

        Arc with(Arc other) {
            return new Arc(Math.min(low, other.low), Math.max(high, other.high));
        }

        boolean forbids(double shift) {
            return low < shift - Tolerance.COINCIDENT && high > shift + Tolerance.COINCIDENT;
        }
    }

    BarRow(SlabBars.Row row) {
        this(row.spacing(), row.offset());
    }

    /** From a place to the middle of the nearest bar. */
    double distance(double at) {
        double past = past(at);
        return Math.min(past, spacing - past);
    }

    /** How far a place lies beyond the last bar before it. */
    private double past(double at) {
        double past = (at - offset) % spacing;
        return past < 0 ? past + spacing : past;
    }

    /**
     * The smallest shift of the bars, either way, after which no place lies nearer than that to the middle of a bar;
     * zero when none does now, empty when no shift will do.
     */
    OptionalDouble shift(List<Double> places, double away) {
        Arc run = runAtZero(places, away);
        if (run.high - run.low > spacing + Tolerance.COINCIDENT) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(-run.low < run.high ? run.low : run.high);
    }

    /** All arcs that join into one with zero in it; nothing but zero when zero is allowed. */
    private Arc runAtZero(List<Double> places, double away) {
        Arc run = new Arc(Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY);
        for (Arc arc : arcs(places, away)) {
            if (run.meets(arc)) {
                run = run.with(arc);
            } else if (run.forbids(0)) {
                return run;
            } else {
                run = arc;
            }
        }
        return run.forbids(0) ? run : new Arc(0, 0);
    }

    /** The arcs over two spacings on either side of zero, by their lower ends. */
    private List<Arc> arcs(List<Double> places, double away) {
        return places.stream()
                .map(this::past)
                .distinct()
                .flatMap(past -> IntStream.rangeClosed(-2, 2).mapToObj(k -> past + k * spacing))
                .map(middle -> new Arc(middle - away, middle + away))
                .sorted(Comparator.comparingDouble(Arc::low))
                .toList();
    }
}
