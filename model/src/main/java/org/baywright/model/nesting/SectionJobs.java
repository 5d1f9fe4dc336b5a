package org.baywright.model.nesting;

import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.baywright.model.cutting.CuttingJob;
import org.baywright.model.cutting.Mitre;
import org.baywright.model.cutting.Piece;
import org.baywright.model.cutting.Saw;
import org.baywright.model.cutting.Setbacks;
import org.baywright.model.cutting.Stock;

/**
 * The pieces of one section as jobs for the planner, which knows only lengths and, for runs of one slope, a loss once a
 * bar. The true loss of a bar lies between:
 *
 * <ul>
 *   <li>{@link #least}: a bar that holds slanted pieces of which none has a square end goes from square to the steepest
 *       slope and back, |slope| · depth in all, and slopes less steep lie on the way; with square-ended pieces about,
 *       nothing;
 *   <li>{@link #paired}: as often as not right: half of |slope| · depth where there are square-ended pieces;
 *   <li>{@link #nested}: always enough once slope by slope is laid together: |slope| · depth for each slope, half of it
 *       when every piece of that slope has a square end, since two such pieces make a square pair;
 *   <li>{@link #tipToTip}: always enough.
 * </ul>
 */
record SectionJobs(List<Need> needs, List<Stock> stocks, Saw saw) {
    private static final double MICROMETRES = 1000;
    private static final double FINE = 1e-6;

    /** Its cost bounds that of every arrangement. */
    CuttingJob least() {
        return job(this::least);
    }

    /**
     * Its pieces at their middles with the setbacks of their ends, from which the least loss of each bar is reckoned; every
     * cut as a square one, which takes least.
     */
    CuttingJob exact() {
        return job(need -> {
            Blank b = need.blank();
            Setbacks setbacks = Setbacks.of(
                    b.plane().ordinal(), b.start().setbackMm(), b.end().setbackMm());
            double length = b.isSquare() ? b.middleMm() : down(b.middleMm());
            return new Piece(b.mark(), length, need.quantity(), Mitre.SQUARE, setbacks);
        });
    }

    /** Bars of its plan often fit. */
    CuttingJob paired() {
        return job(n -> nested(n, b -> hasSquareEnds(b, false) ? 0.5 : 1));
    }

    /** Bars of its plan fit. */
    CuttingJob nested() {
        return job(n -> nested(n, b -> hasSquareEnds(b, true) ? 0.5 : 1));
    }

    /** Bars of its plan fit in any order. */
    CuttingJob tipToTip() {
        return job(this::tipToTip);
    }

    /** A piece that fills the longest bar has no other beside it, and so no cut to count. */
    private Piece tipToTip(Need need) {
        Blank b = need.blank();
        double longest = stocks.stream().mapToDouble(Stock::lengthMm).max().orElseThrow() - saw.endTrimMm();
        double alone = Math.max(up(b.tipMm()), Math.floor(longest * MICROMETRES + FINE) / MICROMETRES);
        return piece(need, Math.min(up(b.tipMm() + extraKerf(b)), alone), Mitre.SQUARE);
    }

    /** Whether all or any pieces of a piece's slope and plane have a square end. */
    private boolean hasSquareEnds(Blank like, boolean all) {
        Stream<Blank> mates = needs.stream().map(Need::blank).filter(b -> nests(b) && whole(b).equals(whole(like)));
        return all ? mates.allMatch(SectionJobs::hasSquareEnd) : mates.anyMatch(SectionJobs::hasSquareEnd);
    }

    private CuttingJob job(Function<Need, Piece> piece) {
        return new CuttingJob(needs.stream().map(piece).toList(), stocks, saw);
    }

    private static Piece piece(Need need, double length, Mitre mitre) {
        return new Piece(need.blank().mark(), length, need.quantity(), mitre);
    }

    /**
     * Each cut between two pieces takes at least the mean of both ends' kerfs, and what the two outer ends so count too
     * much is less than their setbacks unless the kerf is deeper than the bar.
     */
    private Piece least(Need need) {
        Blank b = need.blank();
        if (b.isSquare()) {
            return piece(need, b.middleMm(), Mitre.SQUARE);
        }
        double kerf = saw.kerfMm();
        double more = (b.start().kerfMm(kerf) + b.end().kerfMm(kerf)) / 2 - kerf;
        double climb = climb(b);
        double length = b.middleMm() + (kerf > b.depthMm() || climb > 0 ? 0 : more);
        Mitre mitre = climb > 0 && kerf < b.depthMm() ? climbing(b, climb) : Mitre.SQUARE;
        return piece(need, down(length), mitre);
    }

    /** A loss of climb · depth once a bar, less what a slanted kerf takes more than the square one that is given back. */
    private Mitre climbing(Blank b, double climb) {
        double back = saw.kerfMm() * (Math.hypot(1, climb) - 1) + 2 / MICROMETRES;
        return new Mitre(Math.toDegrees(Math.atan(climb)), Math.max(0, b.depthMm() - back / climb));
    }

    /** By how much a piece's lesser slope is steeper than the next lesser one in the section; 0 when it loses nothing. */
    private double climb(Blank blank) {
        List<Blank> slanted = needs.stream()
                .map(Need::blank)
                .filter(b -> b.plane() == blank.plane() && !b.isSquare())
                .toList();
        if (blank.isSquare() || slanted.stream().anyMatch(b -> !isOneSlope(b))) {
            return 0;
        }
        double own = Math.abs(blank.startSlope());
        double below = slanted.stream()
                .mapToDouble(b -> Math.abs(b.startSlope()))
                .filter(slope -> slope < own)
                .max()
                .orElse(0);
        return own - below;
    }

    private Piece nested(Need need, ToDoubleFunction<Blank> share) {
        Blank b = need.blank();
        if (nests(b)) {
            Mitre mitre = new Mitre(whole(b).angleDeg(), whole(b).depthMm() * share.applyAsDouble(b));
            Piece piece = piece(need, up(b.middleMm() + extraKerf(b)), mitre);
            if (new CuttingJob(List.of(piece), stocks, saw).problems("").isEmpty()) {
                return piece;
            }
        }
        return tipToTip(need);
    }

    /** What the steeper cut takes beyond a square one, so that a cut between unlike ends is counted in full. */
    private double extraKerf(Blank b) {
        return Math.max(b.start().kerfMm(saw.kerfMm()), b.end().kerfMm(saw.kerfMm())) - saw.kerfMm();
    }

    /** Whether every turn is allowed and there is but one slope. */
    private static boolean nests(Blank b) {
        return !b.isSquare() && (hasSquareEnd(b) || isOneSlope(b)) && b.turns().size() == Turn.values().length;
    }

    private static boolean hasSquareEnd(Blank b) {
        return b.startSlope() == 0 || b.endSlope() == 0;
    }

    /** Whether both ends are as steep, one way or the other. */
    private static boolean isOneSlope(Blank b) {
        return Math.abs(b.startSlope()) == Math.abs(b.endSlope());
    }

    /** The slope of a piece; a hair more of depth tells the second plane apart, whose mitres do not nest with the first's. */
    private static Mitre whole(Blank b) {
        double hair = b.plane() == SawPlane.WIDTH ? FINE : 0;
        return new Mitre(Math.max(b.start().angleDeg(), b.end().angleDeg()), b.depthMm() + hair);
    }

    /** A micrometre less makes up for the planner's rounding. */
    private static double down(double mm) {
        return Math.max(1 / MICROMETRES, Math.floor(mm * MICROMETRES - 1) / MICROMETRES);
    }

    private static double up(double mm) {
        return Math.ceil(mm * MICROMETRES - FINE) / MICROMETRES;
    }
}
