package org.baywright.render.dimension;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.baywright.model.geometry.Vec2;
import org.baywright.render.mark.Text;
import org.baywright.render.view.ViewPort;

/**
 * Lays out distances from one datum on one line: a circle at the datum, an arrow at each point, the distance along the
 * end of the extension line or, where there is room, above the line before its arrow.
 *
 * <p>@source ISO 129-1, superimposed running dimensions (from memory)
 *
 * <pre>
 *        6000   12000
 *  o------>------>
 * </pre>
 */
final class RunningPlan {
    private final Rail rail;
    private final ViewPort view;
    private final RailPlan plan = new RailPlan();

    RunningPlan(Rail rail, ViewPort view) {
        this.rail = rail;
        this.view = view;
    }

    /** The layout between two stations; empty when the frame is too small for so many texts. */
    Optional<RailPlan> of(Vec2 datum, List<Dimension> dimensions, double low, double high) {
        double zero = station(datum);
        double[] ends = dimensions.stream().mapToDouble(d -> station(d.to())).toArray();
        boolean reaches = reaches(zero, new double[] {low, high});
        double start = reaches ? zero : min(ends) - Drafting.FIRST_ROW;
        plan.spine(Math.min(start, min(ends)), Math.max(start, max(ends)));
        if (reaches) {
            plan.origin(zero);
        }
        for (double end : ends) {
            plan.arrow(end, end >= zero ? 1 : -1);
        }
        return level(start, dimensions, ends) || across(start, reaches, dimensions, ends, low, high)
                ? Optional.of(plan)
                : Optional.empty();
    }

    /** Whether the datum lies on the sheet. */
    static boolean reaches(double zero, double[] room) {
        return zero >= room[0] && zero <= room[1];
    }

    private static double max(double[] values) {
        return Arrays.stream(values).max().orElseThrow();
    }

    private static double min(double[] values) {
        return Arrays.stream(values).min().orElseThrow();
    }

    private double station(Vec2 point) {
        return rail.of(view.toPaper(point)).x();
    }

    /** Above the line, ending just before each arrow's point, if every text has room there. */
    private boolean level(double zero, List<Dimension> dimensions, double[] ends) {
        double before = zero;
        for (int i = 0; i < ends.length; i++) {
            double room = ends[i] - before;
            if (room < Drafting.width(dimensions.get(i).text()) + 2 * Drafting.ASIDE + 1) {
                return false;
            }
            before = ends[i];
        }
        for (int i = 0; i < ends.length; i++) {
            Vec2 at = new Vec2(ends[i] - Drafting.ASIDE - 0.4, Drafting.BASELINE);
            plan.words(dimensions.get(i).text(), at, Text.Align.RIGHT);
        }
        return true;
    }

    /** Past the line, each along its extension line; pushed apart on kinked leaders where they are close. */
    private boolean across(
            double zero, boolean reaches, List<Dimension> dimensions, double[] ends, double low, double high) {
        int first = reaches ? 1 : 0;
        int n = ends.length + first;
        String[] texts = new String[n];
        double[] wished = new double[n];
        Integer[] order = new Integer[n];
        for (int i = 0; i < n; i++) {
            texts[i] = i < first ? "0" : dimensions.get(i - first).text();
            wished[i] = i < first ? zero : ends[i - first];
            order[i] = i;
        }
        Arrays.sort(order, Comparator.comparingDouble(i -> wished[i]));
        double[] sorted = Arrays.stream(order).mapToDouble(i -> wished[i]).toArray();
        double[] sizes =
                Arrays.stream(order).mapToDouble(i -> Drafting.line() + 0.1).toArray();
        Optional<Lanes> found = Lanes.of(sorted, sizes, low, high);
        double longest = Arrays.stream(texts).mapToDouble(Drafting::width).max().orElseThrow();
        found.ifPresent(lanes -> {
            for (int k = 0; k < n; k++) {
                across(texts[order[k]], sorted[k], lanes.centres()[k], lanes.lane(k) * (longest + 1.5));
            }
        });
        return found.isPresent();
    }

    private void across(String text, double s, double centre, double further) {
        int sign = rail.outSign();
        double near = sign * (4.5 + further);
        plan.line(new Vec2(s, 0), new Vec2(s, sign * 1.5), new Vec2(centre, near - sign * 0.6));
        boolean startsNear = rail.acrossReadsUp() == (sign > 0);
        // The box of a line is taller above the capitals than below the baseline; centre the box, not the capitals.
        double reader = (Drafting.ascent() - Drafting.descent()) / 2;
        double baseline = centre + (rail.acrossReadsUp() ? reader : -reader);
        plan.wordsAcross(text, new Vec2(baseline, near), startsNear ? Text.Align.LEFT : Text.Align.RIGHT);
    }
}
