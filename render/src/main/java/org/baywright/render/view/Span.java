package org.baywright.render.view;

/** A stretch of a line. */
record Span(double from, double to) {
    /** A whole edge, from its start to its end. */
    static final Span WHOLE = new Span(0, 1);

    /** The stretch of an edge on which a height that runs evenly from one value to another is below a limit. */
    static Span below(double limit, double first, double last) {
        double at = (limit - first) / (last - first);
        if (first < limit) {
            return last < limit ? WHOLE : new Span(0, at);
        }
        return last < limit ? new Span(at, 1) : new Span(1, 0);
    }

    boolean isEmpty() {
        return !(to > from);
    }

    Span overlap(Span other) {
        return new Span(Math.max(from, other.from), Math.min(to, other.to));
    }
}
