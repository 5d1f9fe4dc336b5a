package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.baywright.render.paper.Scale;

/**
 * The length of a piece laid on paper at one scale, with the middles of long plain stretches left out where it would not
 * fit otherwise. What is kept, cuts and plates, is never shortened.
 *
 * @param scale of all that is kept
 * @param spans kept and plain stretches in turn, end to end
 */
record Stretch(Scale scale, List<Span> spans) {
    /** Paper kept beside what is kept, mm. */
    private static final double BESIDE = 1.5;

    /** A plain stretch is shortened to no less than this, mm of paper. */
    private static final double LEAST = 9;

    /**
     * A stretch of the piece and of paper.
     *
     * @param from along the piece, mm
     * @param to along the piece, mm
     * @param start along the paper, mm
     * @param width on paper, mm
     */
    record Span(double from, double to, double start, double width) {
        double at(double station) {
            return to - from < 1e-9 ? start : start + (station - from) / (to - from) * width;
        }
    }

    /** Copies the spans. */
    Stretch {
        spans = List.copyOf(spans);
    }

    /**
     * Lays out a length.
     *
     * @param keep stretches that must be drawn whole, in any order; the first and the last of them are the ends
     * @param room on paper, mm
     * @return empty when it does not fit at this scale however much is left out
     */
    static Optional<Stretch> fit(List<double[]> keep, Scale scale, double room) {
        List<double[]> kept = merged(keep, BESIDE * scale.n());
        double[] plain = new double[kept.size() - 1];
        double fixed = 0;
        for (int i = 0; i < kept.size(); i++) {
            fixed += scale.toPaper(kept.get(i)[1] - kept.get(i)[0]);
            if (i > 0) {
                plain[i - 1] = scale.toPaper(kept.get(i)[0] - kept.get(i - 1)[1]);
            }
        }
        double most = most(plain, room - fixed);
        return most < LEAST ? Optional.empty() : Optional.of(new Stretch(scale, spans(kept, most, scale)));
    }

    private static List<double[]> merged(List<double[]> keep, double beside) {
        double low = keep.stream().mapToDouble(k -> k[0]).min().orElseThrow();
        double high = keep.stream().mapToDouble(k -> k[1]).max().orElseThrow();
        List<double[]> merged = new ArrayList<>();
        for (double[] k :
                keep.stream().sorted(Comparator.comparingDouble(k -> k[0])).toList()) {
            double from = Math.max(low, k[0] - beside);
            double to = Math.min(high, k[1] + beside);
            if (!merged.isEmpty() && from <= merged.get(merged.size() - 1)[1]) {
                double[] last = merged.get(merged.size() - 1);
                last[1] = Math.max(last[1], to);
            } else {
                merged.add(new double[] {from, to});
            }
        }
        return merged;
    }

    /** The most that any one plain stretch may take, so that all fit; unbounded when they fit as they are. */
    private static double most(double[] plain, double room) {
        double[] sorted = Arrays.stream(plain).sorted().toArray();
        double left = room;
        for (int i = 0; i < sorted.length; i++) {
            double share = left / (sorted.length - i);
            if (sorted[i] > share) {
                return share;
            }
            left -= sorted[i];
        }
        return left < 0 ? 0 : Double.POSITIVE_INFINITY;
    }

    private static List<Span> spans(List<double[]> kept, double most, Scale scale) {
        List<Span> spans = new ArrayList<>();
        double x = 0;
        for (int i = 0; i < kept.size(); i++) {
            if (i > 0) {
                double from = kept.get(i - 1)[1];
                double to = kept.get(i)[0];
                double width = Math.min(most, scale.toPaper(to - from));
                spans.add(new Span(from, to, x, width));
                x += width;
            }
            double width = scale.toPaper(kept.get(i)[1] - kept.get(i)[0]);
            spans.add(new Span(kept.get(i)[0], kept.get(i)[1], x, width));
            x += width;
        }
        return spans;
    }

    /** Where a station lies on paper, mm from the start. */
    double at(double station) {
        Span first = spans.get(0);
        for (Span span : spans) {
            if (station <= span.to + 1e-9) {
                return station < first.from ? first.start - scale.toPaper(first.from - station) : span.at(station);
            }
        }
        Span last = spans.get(spans.size() - 1);
        return last.start + last.width + scale.toPaper(station - last.to);
    }

    /** Its length on paper, mm. */
    double width() {
        Span last = spans.get(spans.size() - 1);
        return last.start + last.width;
    }

    /** The middles on paper of the stretches that are shortened. */
    List<Double> breaks() {
        return spans.stream()
                .filter(s -> s.width < scale.toPaper(s.to - s.from) - 1e-6)
                .map(s -> s.start + s.width / 2)
                .toList();
    }
}
