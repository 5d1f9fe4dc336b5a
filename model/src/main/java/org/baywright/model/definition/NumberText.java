package org.baywright.model.definition;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number as people write it. Only plain decimals are read; whatever could be read in two ways is refused with the
 * spelling that was probably meant.
 */
final class NumberText {
    private static final Pattern PLAIN = Pattern.compile("[-+]?(\\d+\\.?\\d*|\\.\\d+)([eE][-+]?\\d{1,3})?");
    private static final Pattern LEADING_ZERO = Pattern.compile("[-+]?0+(\\d+\\.?\\d*)");
    private static final Pattern THOUSANDS =
            Pattern.compile("[-+]?\\d{1,3}(?:[,_'\\u2019\\s\\u00a0\\u2009\\u202f]\\d{3})+(?:\\.\\d+)?");
    private static final Pattern DECIMAL_COMMA = Pattern.compile("([-+]?\\d+),(\\d+)");
    private static final Pattern WITH_UNIT = Pattern.compile("([-+]?(?:\\d+\\.?\\d*|\\.\\d+))\\s*([a-z°%'\"]+)");

    /** Millimetres in what people write after a length. */
    private static final Map<String, Double> MM_PER = Map.ofEntries(
            Map.entry("mm", 1.0),
            Map.entry("cm", 10.0),
            Map.entry("m", 1000.0),
            Map.entry("metre", 1000.0),
            Map.entry("metres", 1000.0),
            Map.entry("meter", 1000.0),
            Map.entry("meters", 1000.0),
            Map.entry("in", 25.4),
            Map.entry("\"", 25.4),
            Map.entry("ft", 304.8),
            Map.entry("'", 304.8));

    private static final Map<String, Double> DEGREES_PER =
            Map.of("°", 1.0, "deg", 1.0, "degs", 1.0, "degree", 1.0, "degrees", 1.0);

    private NumberText() {}

    /** The number, when the text is a plain finite decimal; a number such as 012 is octal to some and is refused. */
    static OptionalDouble read(String text) {
        String t = text.strip();
        if (!PLAIN.matcher(t).matches() || LEADING_ZERO.matcher(t).matches()) {
            return OptionalDouble.empty();
        }
        double value = Double.parseDouble(t);
        return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
    }

    /** How to write what was probably meant. */
    static String remedy(String text, Range.Unit unit) {
        String t = text.strip().toLowerCase(Locale.ROOT);
        return meant(t, unit).map(v -> "write " + plain(v)).orElse("write " + unit.words() + " in plain digits");
    }

    private static Optional<Double> meant(String t, Range.Unit unit) {
        if (THOUSANDS.matcher(t).matches()) {
            return Optional.of(Double.parseDouble(t.replaceAll("[^-+.0-9]", "")));
        }
        Matcher zero = LEADING_ZERO.matcher(t);
        if (zero.matches()) {
            return Optional.of(Double.parseDouble(zero.group(1)));
        }
        Matcher comma = DECIMAL_COMMA.matcher(t);
        if (comma.matches()) {
            return Optional.of(Double.parseDouble(comma.group(1) + "." + comma.group(2)));
        }
        return withUnit(t, unit);
    }

    private static Optional<Double> withUnit(String t, Range.Unit unit) {
        Map<String, Double> factors = switch (unit) {
            case MM -> MM_PER;
            case DEGREES -> DEGREES_PER;
            case PERCENT -> Map.of("%", 1.0);
            case ML -> Map.of("ml", 1.0);
            case MINUTES -> Map.of("min", 1.0);
            case HOURS -> Map.of("h", 1.0);
            case COUNT, MM2, MM_PER_H, CELSIUS, NUMBER -> Map.of();
        };
        Matcher m = WITH_UNIT.matcher(t);
        return m.matches()
                ? Optional.ofNullable(factors.get(m.group(2))).map(f -> f * Double.parseDouble(m.group(1)))
                : Optional.empty();
    }

    /** A number without exponent and trailing zeros. */
    static String plain(double value) {
        if (!Double.isFinite(value)) {
            return Double.toString(value);
        }
        BigDecimal exact = BigDecimal.valueOf(value);
        BigDecimal shown = exact.scale() > 6 ? exact.setScale(6, RoundingMode.HALF_EVEN) : exact;
        return shown.signum() == 0 ? "0" : shown.stripTrailingZeros().toPlainString();
    }
}
