package org.baywright.model.definition;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import org.baywright.model.problem.Where;

/**
 * Makes something of one value. When it cannot, it says so and returns nothing.
 *
 * @param findings where it says so
 */
record ValueReader(Findings findings) {
    private static final int LONGEST = 200;
    private static final Pattern UNDERSCORE = Pattern.compile("_(.)");
    private static final List<String> YES = List.of("true", "yes", "on");

    /** A number within the range of its key. */
    OptionalDouble number(Located found, Range range) {
        if (!(found instanceof Located.Scalar scalar)) {
            wrongType(found, range.unit().words() + ", " + range);
            return OptionalDouble.empty();
        }
        OptionalDouble value = NumberText.read(scalar.text());
        if (value.isEmpty()) {
            String message = scalar.kind() + " was read; " + range.unit().words() + " is expected, " + range;
            findings.error("not-a-number", found.where(), message, NumberText.remedy(scalar.text(), range.unit()));
        }
        return value.isPresent() && fits(scalar, value.getAsDouble(), range) ? value : OptionalDouble.empty();
    }

    private boolean fits(Located.Scalar scalar, double value, Range range) {
        if (!range.contains(value)) {
            String message = scalar.kind() + " was read; allowed is " + range;
            findings.error("out-of-range", scalar.where(), message, metresMeant(value, range));
            return false;
        }
        if (range.unit() == Range.Unit.COUNT && value != Math.rint(value)) {
            String message = scalar.kind() + " was read; a whole number is expected, " + range;
            findings.error("not-whole", scalar.where(), message, "write a whole number");
            return false;
        }
        return true;
    }

    private static String metresMeant(double value, Range range) {
        boolean metres = range.unit() == Range.Unit.MM && value < range.low() && range.contains(value * 1000);
        return metres
                ? "lengths are in millimetres: if metres were meant, write " + NumberText.plain(value * 1000)
                : "write " + range.unit().words() + " in that range";
    }

    /** Text that can be printed, at most 200 characters. */
    Optional<String> text(Located found) {
        if (!(found instanceof Located.Scalar scalar)) {
            wrongType(found, "text");
            return Optional.empty();
        }
        String text = scalar.text().strip();
        if (text.codePointCount(0, text.length()) > LONGEST) {
            findings.error("too-long", found.where(), "more than " + LONGEST + " characters", "shorten it");
            return Optional.empty();
        }
        if (!text.codePoints().allMatch(Spelling::isPlain)) {
            String message = scalar.kind() + " has control characters or line ends";
            findings.error("control-character", found.where(), message, "keep it to one line of plain text");
            return Optional.empty();
        }
        return Optional.of(text);
    }

    /** One of a few words. */
    Optional<String> word(Located found, List<String> allowed) {
        if (!(found instanceof Located.Scalar scalar)) {
            wrongType(found, "one of " + String.join(", ", allowed));
            return Optional.empty();
        }
        String read = scalar.text().strip();
        Optional<String> word =
                allowed.stream().filter(a -> a.equalsIgnoreCase(read)).findFirst();
        if (word.isEmpty()) {
            String message = scalar.kind() + " was read; allowed: " + String.join(", ", allowed);
            findings.error("not-a-choice", found.where(), message, Spelling.remedy(read, allowed));
        }
        return word;
    }

    /** One of the names of an enum, written as keys are: {@code rollerDoor} for {@code ROLLER_DOOR}. */
    <E extends Enum<E>> Optional<E> choice(Located found, Class<E> type) {
        List<String> allowed =
                Arrays.stream(type.getEnumConstants()).map(ValueReader::written).toList();
        return word(found, allowed).map(w -> type.getEnumConstants()[allowed.indexOf(w)]);
    }

    private static String written(Enum<?> choice) {
        String small = choice.name().toLowerCase(Locale.ROOT);
        return UNDERSCORE.matcher(small).replaceAll(m -> m.group(1).toUpperCase(Locale.ROOT));
    }

    /** True or false, in the words YAML has for it. */
    boolean flag(Located found) {
        List<String> words = List.of("true", "false", "yes", "no", "on", "off");
        return word(found, words).filter(YES::contains).isPresent();
    }

    /** The entries of a list; a lone value is not one. */
    List<Located> list(Located found, String of) {
        if (found instanceof Located.Sequence sequence) {
            return sequence.items();
        }
        wrongType(found, "a list of " + of);
        return List.of();
    }

    void wrongType(Located found, String expected) {
        Where where = found.where();
        findings.error("wrong-type", where, found.kind() + " was read; expected is " + expected, "write " + expected);
    }
}
