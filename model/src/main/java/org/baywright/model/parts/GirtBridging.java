package org.baywright.model.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.baywright.model.catalogue.Section;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.setout.RowStand;

/**
 * The bridging between the girts of a bay, between their webs at about half their depth, of the fly braces' angle.
 *
 * @param bay the bay
 * @param stand how the girts stand on their lines
 * @param flush whether they stand between the columns
 */
record GirtBridging(WallBay bay, RowStand stand, boolean flush) {
    /** Rows of bridging increase by one for each of these lengths. Common practice, no source. */
    private static final double BRIDGED = 3000;

    /** Places of two rows no further apart than this take one length of bridging. */
    private static final double SAME = 1;

    /** Where a stretch is bridged. @source none to 3 m, one to 6 m, two to 9 m: common practice */
    private List<Double> at(double from, double to) {
        int n = stand.web() > 0 ? (int) Math.ceil((to - from) / BRIDGED - 1e-9) - 1 : 0;
        List<Double> at = new ArrayList<>();
        for (int i = 1; i <= n; i++) {
            at.add(from + (to - from) * i / (n + 1));
        }
        return at;
    }

    /**
     * Bridging from one length of girt to the next over it.
     *
     * @param u where, along the wall
     * @param lower length
     * @param upper length
     */
    record Length(double u, GirtSpan lower, GirtSpan upper) {
        private boolean meets(GirtSpan span, double at) {
            return (lower.equals(span) || upper.equals(span)) && Math.abs(u - at) < SAME;
        }
    }

    /** Between a length and those over it that are bridged at the same places. */
    Stream<Length> between(GirtSpan lower, List<GirtSpan> upper) {
        return at(lower).stream().flatMap(u -> over(u, lower, upper).map(o -> new Length(u, lower, o)).stream());
    }

    /** Where bridging meets a length of a row from the rows under and over it: nowhere else is it punched. */
    List<Double> meeting(GirtSpan span, List<Length> all) {
        return at(span).stream()
                .filter(u -> all.stream().anyMatch(l -> l.meets(span, u)))
                .toList();
    }

    /** A length with its ends, each girt at the height of its own back. */
    Stream<Piece> pieces(Length length, ToDoubleFunction<GirtSpan> back) {
        return pieces(length.u, back.applyAsDouble(length.lower), back.applyAsDouble(length.upper));
    }

    /** The length over another that is bridged to it at a place. */
    private Optional<GirtSpan> over(double u, GirtSpan lower, List<GirtSpan> upper) {
        return upper.stream()
                .filter(o -> at(o).stream().anyMatch(b -> Math.abs(b - u) < SAME))
                .findFirst()
                .filter(o -> isFree(u, lower.height(), o.height()));
    }

    /** Not across an opening that is lower than the rows' spacing. */
    private boolean isFree(double u, double from, double to) {
        return bay.openings().stream()
                .noneMatch(o -> u > o.left() && u < o.right() && o.head() > from && o.sill() < to);
    }

    private List<Double> at(GirtSpan span) {
        return at(span.from().at(), span.to().at());
    }

    private Stream<Piece> pieces(double u, double lowerBack, double upperBack) {
        Section angle = bay.definition().envelope().bracing().flyBraceSection();
        double from = lowerBack + (stand.isCleatAbove() ? 0 : stand.web());
        double to = upperBack - (stand.isCleatAbove() ? stand.web() : 0);
        double half = stand.member().depth() / 2;
        Placement at = Placement.of(bay.face().toWorld(u, from, flush ? -half : half), Vec3.UP, bay.out());
        return new BridgingLength(angle, stand.member().depth()).pieces(at, to - from, bay::place);
    }
}
