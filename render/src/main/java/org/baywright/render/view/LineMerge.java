package org.baywright.render.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.baywright.model.geometry.Vec2;

/**
 * Joins edges that fall on one line of the view, so that no stretch is drawn twice. A stretch bears the mark of the
 * nearest part; one that is seen goes before one that is not.
 */
final class LineMerge {
    private record Piece(Edge edge, boolean seen) {}

    private record Stretch(Piece piece, Span span) {}

    private static final Comparator<Piece> SEEN_THEN_NEAREST =
            Comparator.comparing((Piece p) -> !p.seen).thenComparing(Piece::edge, Edge.FRONT_TO_BACK);

    private final List<ViewLine> visible = new ArrayList<>();
    private final List<ViewLine> hidden = new ArrayList<>();

    /** Sums of building size in other orders differ by less, mm. */
    private static final double NOISE = 1e-9;

    private LineMerge() {}

    static ViewLines of(List<Edge> seen, List<Edge> unseen) {
        LineMerge merge = new LineMerge();
        List<Piece> pieces = new ArrayList<>();
        seen.forEach(e -> pieces.add(new Piece(e, true)));
        unseen.forEach(e -> pieces.add(new Piece(e, false)));
        pieces.removeIf(p -> p.edge.flatLength() < Edge.FINE);
        pieces.sort(SEEN_THEN_NEAREST);
        for (List<Piece> parallel : groups(pieces, p -> p.edge.angle(), Edge.SAME_DIRECTION)) {
            merge.addParallel(parallel);
        }
        return new ViewLines(merge.visible, merge.hidden);
    }

    /** Sorted by a number and parted where it steps by more than a limit. */
    private static List<List<Piece>> groups(List<Piece> pieces, ToDoubleFunction<Piece> number, double limit) {
        List<Piece> sorted = new ArrayList<>(pieces);
        sorted.sort(Comparator.comparingDouble(number));
        List<List<Piece>> groups = new ArrayList<>();
        double last = Double.NEGATIVE_INFINITY;
        for (Piece piece : sorted) {
            double here = number.applyAsDouble(piece);
            if (here - last > limit) {
                groups.add(new ArrayList<>());
            }
            groups.get(groups.size() - 1).add(piece);
            last = here;
        }
        return groups;
    }

    /** The longest piece gives the direction of all: its own is the least disturbed by noise. */
    private void addParallel(List<Piece> parallel) {
        Vec2 along = parallel.stream()
                .map(p -> p.edge)
                .max(Comparator.comparingDouble(Edge::flatLength))
                .orElseThrow()
                .step()
                .unit();
        Vec2 across = along.left();
        for (List<Piece> line : groups(parallel, p -> across.dot(Edge.flat(p.edge.from())), Edge.FINE)) {
            line.sort(SEEN_THEN_NEAREST);
            addLine(line, along);
        }
    }

    private void addLine(List<Piece> line, Vec2 along) {
        Spans covered = new Spans();
        List<Stretch> stretches = new ArrayList<>();
        for (Piece piece : line) {
            Span whole = new Span(along.dot(Edge.flat(piece.edge.from())), along.dot(Edge.flat(piece.edge.to())));
            for (Span gap : covered.gaps(whole)) {
                if (gap.to() - gap.from() > Edge.FINE) {
                    stretches.add(new Stretch(piece, gap));
                }
            }
            covered.add(whole);
        }
        stretches.sort(Comparator.comparingDouble(s -> s.span.from()));
        joined(stretches).forEach(s -> add(s, along));
    }

    /** Stretches of one part that follow each other without a gap become one. */
    private static List<Stretch> joined(List<Stretch> stretches) {
        List<Stretch> joined = new ArrayList<>();
        for (Stretch next : stretches) {
            int last = joined.size() - 1;
            if (last >= 0 && follows(joined.get(last), next)) {
                Stretch before = joined.get(last);
                joined.set(last, new Stretch(before.piece, new Span(before.span.from(), next.span.to())));
            } else {
                joined.add(next);
            }
        }
        return joined;
    }

    private static boolean follows(Stretch before, Stretch next) {
        return next.span.from() - before.span.to() <= Edge.FINE
                && before.piece.seen == next.piece.seen
                && before.piece.edge.part().equals(next.piece.edge.part());
    }

    private void add(Stretch stretch, Vec2 along) {
        Edge edge = stretch.piece.edge;
        Vec2 start = Edge.flat(edge.from());
        double zero = along.dot(start);
        Vec2 from = settled(start.plus(along.times(stretch.span.from() - zero)));
        Vec2 to = settled(start.plus(along.times(stretch.span.to() - zero)));
        (stretch.piece.seen ? visible : hidden).add(new ViewLine(from, to, edge.part()));
    }

    /** A position without the noise of the way it was found, which differs with the order of items. */
    private static Vec2 settled(Vec2 at) {
        return new Vec2(settled(at.x()), settled(at.y()));
    }

    private static double settled(double mm) {
        return Math.rint(mm / NOISE) * NOISE + 0.0;
    }
}
