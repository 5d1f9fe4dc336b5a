package org.baywright.model.definition;

import java.util.Optional;

/**
 * One key of the definition file.
 *
 * @param name as it is written
 * @param meaning in one line
 * @param range of a number
 * @param usual what is taken when the key is left out, as it would be written
 * @param required whether the file must have it
 */
public record Key(String name, String meaning, Optional<Range> range, Optional<String> usual, boolean required) {
    /** A key that may be left out. */
    static Key of(String name, String meaning) {
        return new Key(name, meaning, Optional.empty(), Optional.empty(), false);
    }

    /** A length that may be left out. */
    static Key mm(String name, double low, double high, String meaning) {
        return of(name, meaning).within(new Range(low, high, Range.Unit.MM));
    }

    /** An angle that may be left out. */
    static Key degrees(String name, double low, double high, String meaning) {
        return of(name, meaning).within(new Range(low, high, Range.Unit.DEGREES));
    }

    /** A whole number that may be left out. */
    static Key count(String name, double low, double high, String meaning) {
        return of(name, meaning).within(new Range(low, high, Range.Unit.COUNT));
    }

    /** A number of some unit that may be left out. */
    static Key number(String name, double low, double high, Range.Unit unit, String meaning) {
        return of(name, meaning).within(new Range(low, high, unit));
    }

    private Key within(Range allowed) {
        return new Key(name, meaning, Optional.of(allowed), usual, required);
    }

    /** This key with what is taken when it is left out. */
    Key usually(String value) {
        return new Key(name, meaning, range, Optional.of(value), required);
    }

    /** This key, not to be left out. */
    Key must() {
        return new Key(name, meaning, range, usual, true);
    }
}
