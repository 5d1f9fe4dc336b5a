package org.baywright.render.output;

import org.baywright.model.geometry.Vec2;

/**
 * Text of a vector file under way, with numbers as short as they can be: no exponent, no trailing zeros, a blank after
 * each.
 */
final class Numbers {
    /** A thousandth of a millimetre on paper is finer than any plotter. */
    private static final int PLACES = 3;

    /** For numbers that multiply others. */
    private static final int EXACT_PLACES = 7;

    private final StringBuilder out = new StringBuilder();

    /** Adds words as they are. */
    Numbers put(String words) {
        out.append(words);
        return this;
    }

    /** Adds a length to a thousandth. */
    Numbers number(double value) {
        write(value, PLACES);
        return put(" ");
    }

    /** Adds a factor to seven places. */
    Numbers exact(double value) {
        write(value, EXACT_PLACES);
        return put(" ");
    }

    /** Adds both coordinates. */
    Numbers point(Vec2 point) {
        return number(point.x()).number(point.y());
    }

    /** A length to a thousandth, on its own. */
    static String plain(double value) {
        Numbers alone = new Numbers();
        alone.write(value, PLACES);
        return alone.toString();
    }

    private void write(double value, int places) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a coordinate on a sheet is not a number");
        }
        long unit = (long) Math.pow(10, places);
        long scaled = Math.round(value * unit);
        if (scaled < 0) {
            out.append('-');
        }
        out.append(Math.abs(scaled) / unit);
        fraction(Math.abs(scaled) % unit, places);
    }

    /** The digits after the point, if any. */
    private void fraction(long digits, int places) {
        if (digits == 0) {
            return;
        }
        out.append('.');
        long place = (long) Math.pow(10, places - 1);
        for (long rest = digits; rest > 0; place /= 10) {
            out.append((char) ('0' + rest / place));
            rest %= place;
        }
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
