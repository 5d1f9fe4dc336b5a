package org.baywright.render.dimension;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.baywright.model.geometry.Vec2;
import org.baywright.render.mark.Text;
import org.baywright.render.view.ViewPort;

/**
 * Lays out adjacent dimensions on one line. A text that fits stands above its part of the line; one too wide for the
 * first or last part stands past the end of the line; any other stands off the line, towards the next row, on a kinked
 * leader.
 *
 * <pre>
 *   300   6000      6000
 *  ----/-/-----/--/------/
 *                 \
 *                  150
 * </pre>
 */
final class ChainPlan {
    private final Rail rail;
    private final ViewPort view;
    private final double low;
    private final double high;
    private final RailPlan plan = new RailPlan();

    private record Part(Dimension dimension, double s0, double s1) {
        double middle() {
            return (s0 + s1) / 2;
        }

        double textWidth() {
            return Drafting.width(dimension.text());
        }

        boolean fits() {
            return textWidth() + 2 * Drafting.ASIDE <= s1 - s0;
        }
    }

    /** A plan for a rail whose text must stay between two stations. */
    ChainPlan(Rail rail, ViewPort view, double low, double high) {
        this.rail = rail;
        this.view = view;
        this.low = low;
        this.high = high;
    }

    /** True when the text of a dimension fits between its ends. */
    boolean fits(Dimension dimension) {
        return part(dimension).fits();
    }

    private Part part(Dimension dimension) {
        double a = rail.of(view.toPaper(dimension.from())).x();
        double b = rail.of(view.toPaper(dimension.to())).x();
        return new Part(dimension, Math.min(a, b), Math.max(a, b));
    }

    /** The layout; empty when the frame is too small for so many texts. */
    Optional<RailPlan> of(List<Dimension> dimensions) {
        List<Part> parts = dimensions.stream().map(this::part).toList();
        double start = parts.get(0).s0();
        double end = parts.get(parts.size() - 1).s1();
        parts.forEach(p -> plan.stroke(p.s0()));
        plan.stroke(end);
        List<Part> tight = new ArrayList<>();
        double spineFrom = start - Drafting.PASS;
        double spineTo = end + Drafting.PASS;
        for (Part part : parts) {
            double reach = part.textWidth() + Drafting.ASIDE + Drafting.PASS;
            if (part.fits()) {
                above(part.dimension(), part.middle());
            } else if (part == parts.get(parts.size() - 1) && end + reach <= high) {
                spineTo = end + reach;
                above(part.dimension(), end + reach - part.textWidth() / 2);
            } else if (part == parts.get(0) && start - reach >= low) {
                spineFrom = start - reach;
                above(part.dimension(), start - reach + part.textWidth() / 2);
            } else {
                tight.add(part);
            }
        }
        plan.spine(spineFrom, spineTo);
        return offLine(tight) ? Optional.of(plan) : Optional.empty();
    }

    private void above(Dimension dimension, double s) {
        plan.words(dimension.text(), new Vec2(s, Drafting.BASELINE), Text.Align.CENTRE);
    }

    private boolean offLine(List<Part> tight) {
        double[] wished = tight.stream().mapToDouble(Part::middle).toArray();
        double[] sizes = tight.stream().mapToDouble(p -> p.textWidth() + 1.5).toArray();
        Optional<Lanes> found = Lanes.of(wished, sizes, low, high);
        found.ifPresent(lanes -> {
            for (int i = 0; i < tight.size(); i++) {
                onLeader(tight.get(i), lanes.centres()[i], lanes.lane(i));
            }
        });
        return found.isPresent();
    }

    private void onLeader(Part part, double s, int lane) {
        // Text above the line is between the line and the next row when rows stack upward: start past it.
        double first = rail.outSign() > 0 ? Drafting.BASELINE + Drafting.line() + 1 : 2.5;
        double near = rail.outSign() * (first + lane * (Drafting.line() + 0.4));
        double kink = rail.outSign() * Math.max(0.6, first - 2);
        double baseline = rail.outSign() > 0 ? near + Drafting.descent() : near - Drafting.ascent();
        plan.words(part.dimension().text(), new Vec2(s, baseline), Text.Align.CENTRE);
        plan.line(new Vec2(part.middle(), 0), new Vec2(part.middle(), kink), new Vec2(s, near));
    }
}
