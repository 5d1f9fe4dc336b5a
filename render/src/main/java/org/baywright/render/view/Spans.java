package org.baywright.render.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The covered stretches of one line: they never touch, since touching ones are joined as they come. */
final class Spans {
    private final TreeMap<Double, Double> endByStart = new TreeMap<>();

    /** Covers a stretch. */
    void add(Span span) {
        double from = span.from();
        double to = span.to();
        Map.Entry<Double, Double> met = endByStart.floorEntry(to);
        while (met != null && met.getValue() >= from) {
            from = Math.min(from, met.getKey());
            to = Math.max(to, met.getValue());
            endByStart.remove(met.getKey());
            met = endByStart.floorEntry(to);
        }
        endByStart.put(from, to);
    }

    /** True when nothing of the stretch is left open. */
    boolean covers(Span span) {
        Map.Entry<Double, Double> before = endByStart.floorEntry(span.from());
        return before != null && before.getValue() >= span.to();
    }

    /** What is covered, in order. */
    List<Span> all() {
        List<Span> spans = new ArrayList<>();
        endByStart.forEach((from, to) -> spans.add(new Span(from, to)));
        return spans;
    }

    /** What is left open of a stretch, in order. */
    List<Span> gaps(Span span) {
        List<Span> gaps = new ArrayList<>();
        Map.Entry<Double, Double> before = endByStart.lowerEntry(span.from());
        double open = before == null ? span.from() : Math.max(span.from(), before.getValue());
        for (var covered : endByStart.subMap(span.from(), span.to()).entrySet()) {
            gaps.add(new Span(open, covered.getKey()));
            open = covered.getValue();
        }
        gaps.add(new Span(open, span.to()));
        gaps.removeIf(Span::isEmpty);
        return gaps;
    }
}
