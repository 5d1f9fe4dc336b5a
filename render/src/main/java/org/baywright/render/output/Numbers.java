package org.baywright.render.output;

import org.baywright.model.geometry.Vec2;

/**
 * Text of a vector file under way, with numbers as short as they can be: no exponent, no trailing zeros, a blank after
 * each.
 */
final class Numbers {
    /** A thousandth of a millimetre on paper is finer than any plotter. */
    private static final long UNIT = 1000;

    /** For numbers that multiply others. */
    private static final long EXACT_UNIT = 10_000_000;

    private final StringBuilder out = new StringBuilder();

    /** Adds words as they are. */
    Numbers put(String words) {
        out.append(words);
        return this;
    }

    /** Adds a length to a thousandth. */
    Numbers number(double value) {
        write(value, UNIT);
        return put(" ");
    }

    /** Adds a factor to seven places. */
    Numbers exact(double value) {
        write(value, EXACT_UNIT);
        return put(" ");
    }

    /** Adds both coordinates. */
    Numbers point(Vec2 point) {
        return number(point.x()).number(point.y());
    }

    /** A length to a thousandth, on its own. */
    static String plain(double value) {
        Numbers alone = new Numbers();
        alone.write(value, UNIT);
        return alone.toString();
    }

    /** Rounds to whole parts of which one millimetre, or one, has so many. */
    private void write(double value, long parts) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a coordinate on a sheet is not a number");
        }
        long rounded = Math.round(value * parts);
        if (rounded < 0) {
            out.append('-');
        }
        out.append(Math.abs(rounded) / parts);
        fraction(Math.abs(rounded) % parts, parts);
    }

    private void fraction(long numerator, long parts) {
        if (numerator == 0) {
            return;
        }
        out.append('.');
        long rest = numerator;
        for (long place = parts / 10; rest > 0; place /= 10) {
            out.append((char) ('0' + rest / place));
            rest %= place;
        }
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
