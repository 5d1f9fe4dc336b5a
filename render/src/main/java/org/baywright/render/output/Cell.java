package org.baywright.render.output;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** One field of a table: words, a count or a measured figure. */
public sealed interface Cell {
    /** As it stands in the file, before quoting. */
    String text();

    /** Words, which no spreadsheet is to run as a formula. */
    record Words(String words) implements Cell {
        /** Characters that start a formula, or hide one, in common spreadsheets (common practice, no source). */
        private static final String FORMULA_STARTS = "=+-@\t\r\n";

        @Override
        public String text() {
            boolean formula = !words.isEmpty() && FORMULA_STARTS.indexOf(words.charAt(0)) >= 0;
            return formula ? "'" + words : words;
        }
    }

    /** A whole number. */
    record Count(long number) implements Cell {
        @Override
        public String text() {
            return Long.toString(number);
        }
    }

    /**
     * A figure with fixed decimals.
     *
     * @param value what it is; half a last place is rounded away from zero
     * @param decimals how many are written
     */
    record Figure(double value, int decimals) implements Cell {
        /** Checks that it can be written. */
        public Figure {
            if (!Double.isFinite(value) || decimals < 0) {
                throw new IllegalArgumentException("not a figure for a table: " + value);
            }
        }

        @Override
        public String text() {
            return BigDecimal.valueOf(value)
                    .setScale(decimals, RoundingMode.HALF_UP)
                    .toPlainString();
        }
    }

    /** Words. */
    static Cell of(String words) {
        return new Words(words);
    }

    /** A whole number. */
    static Cell of(long number) {
        return new Count(number);
    }

    /** A figure with fixed decimals. */
    static Cell of(double value, int decimals) {
        return new Figure(value, decimals);
    }
}
