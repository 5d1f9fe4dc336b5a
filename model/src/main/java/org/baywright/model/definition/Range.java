package org.baywright.model.definition;

/**
 * What a number may be.
 *
 * @param low least allowed
 * @param high most allowed
 * @param unit what it counts
 */
public record Range(double low, double high, Unit unit) {
    /** What a number counts. */
    public enum Unit {
        MM("mm", "a length in millimetres"),
        DEGREES("degrees", "an angle in degrees"),
        COUNT("", "a whole number"),
        PERCENT("%", "a percentage"),
        MM2("mm²", "an area in square millimetres"),
        MM_PER_H("mm/h", "rainfall in millimetres an hour"),
        ML("mL", "a volume in millilitres"),
        CELSIUS("°C", "a temperature in degrees Celsius"),
        MINUTES("min", "a time in minutes"),
        HOURS("h", "a time in hours"),
        NUMBER("", "a number");

        private final String symbol;
        private final String words;

        Unit(String symbol, String words) {
            this.symbol = symbol;
            this.words = words;
        }

        /** In plain words, such as "a length in millimetres". */
        public String words() {
            return words;
        }
    }

    /** Checks the order. */
    public Range {
        if (!(low <= high)) {
            throw new IllegalArgumentException("a range runs from low to high");
        }
    }

    /** Whether a number is allowed. */
    public boolean contains(double value) {
        return value >= low && value <= high;
    }

    /** As it is told to a reader, such as "1000 to 60000 mm". */
    @Override
    public String toString() {
        String limits = NumberText.plain(low) + " to " + NumberText.plain(high);
        return unit.symbol.isEmpty() ? limits : limits + " " + unit.symbol;
    }
}
