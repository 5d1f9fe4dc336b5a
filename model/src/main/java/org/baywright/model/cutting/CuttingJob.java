package org.baywright.model.cutting;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.baywright.model.problem.Problem;
import org.baywright.model.problem.Where;

/**
 * What is to be cut from what. A bar takes n pieces when
 *
 * <pre>  Σ(length + kerf) + overlaps + end trim ≤ stock length + kerf </pre>
 *
 * that is, n pieces need n − 1 cuts between them; the cut behind the last piece falls in what is left, and when less
 * than a kerf is left the blade takes it all. The kerf so given back is a square one, for mitred pieces a trifle too
 * little. Lengths are compared exactly, in whole micrometres.
 *
 * @param pieces the cut list
 * @param stocks the lengths to cut from
 * @param saw what each cut takes
 */
public record CuttingJob(List<Piece> pieces, List<Stock> stocks, Saw saw) {
    static final long MOST_PIECES = 1_000_000;

    /** Copies the lists; a job with pieces needs stock, and there are no more than can be planned. */
    public CuttingJob {
        pieces = List.copyOf(pieces);
        stocks = List.copyOf(stocks);
        Objects.requireNonNull(saw);
        if (stocks.isEmpty() && !pieces.isEmpty()) {
            throw new IllegalArgumentException("a cutting job needs at least one stock length");
        }
        long all = pieces.stream().mapToLong(Piece::quantity).sum();
        if (all > MOST_PIECES) {
            throw new IllegalArgumentException("a cutting job takes up to " + MOST_PIECES + " pieces, not " + all);
        }
    }

    /** What makes the job impossible: each piece longer than every stock length. Empty when all fit. */
    public List<Problem> problems(String source) {
        return problems(k -> Where.whole(source));
    }

    /** The same, with the place that each piece of the list was read at. */
    public List<Problem> problems(IntFunction<Where> place) {
        List<Stock> there = stocks.stream().filter(s -> s.limit() > 0).toList();
        return IntStream.range(0, pieces.size())
                .filter(k -> there.stream().noneMatch(s -> Order.fitsAlone(pieces.get(k), s, saw)))
                .mapToObj(k -> tooLong(pieces.get(k), place.apply(k)))
                .toList();
    }

    /** What to tell when no way was found to cut all pieces from limited stock: which depend on it, and on what. */
    Problem tooFewBars(Where place) {
        List<Piece> waiting = pieces.stream().filter(this::needsLimited).toList();
        String which = waiting.stream()
                .map(p -> String.format(Locale.ROOT, "%d x %s%.1f", p.quantity(), named(p, " of "), p.lengthMm()))
                .collect(Collectors.joining("; "));
        String bars = stocks.stream()
                .filter(Stock::isLimited)
                .map(s -> String.format(Locale.ROOT, "%d x %.1f", s.limit(), s.lengthMm()))
                .collect(Collectors.joining(", "));
        double needed = waiting.stream().mapToDouble(Piece::lengthMm).max().orElse(0) + saw.endTrimMm();
        String message = "no way was found to cut " + which + " from the yard's bars, " + bars
                + ", and no length to buy takes them";
        String remedy = String.format(
                Locale.ROOT,
                "give a stock length of %.1f or more, or more bars in the yard; where to splice is the engineer's"
                        + " decision",
                needed);
        return Problem.error("too-few-bars", place, message, remedy);
    }

    /** Whether a piece fits only stock that can run out. */
    boolean needsLimited(Piece piece) {
        return stocks.stream().noneMatch(s -> !s.isLimited() && Order.fitsAlone(piece, s, saw));
    }

    private static String named(Piece piece, String then) {
        return piece.mark().isEmpty() ? "" : piece.mark() + then;
    }

    private Problem tooLong(Piece piece, Where place) {
        double longest = stocks.stream().mapToDouble(Stock::lengthMm).max().orElse(0);
        String name = piece.mark().isEmpty() ? "a piece" : "piece " + piece.mark();
        String message = String.format(
                Locale.ROOT,
                "%s is %.1f long; the longest stock length is %.1f and gives up %.1f at its ends",
                name,
                piece.lengthMm(),
                longest,
                saw.endTrimMm());
        String remedy = "give a longer stock length; where to splice is the engineer's decision";
        return Problem.error("piece-too-long", place, message, remedy);
    }
}
