package org.baywright.model.definition;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.baywright.model.problem.Where;

/**
 * Reads one group of keys. A value that is missing or wrong is told once and a stand-in is returned, so that reading
 * can go on; nothing is built from stand-ins, because a Definition is made only when there was no error.
 */
final class GroupReader {
    private final Located.Mapping found;
    private final KeyGroup keys;
    private final ValueReader values;
    private final boolean whole;

    private GroupReader(Located.Mapping found, KeyGroup keys, ValueReader values, boolean whole) {
        this.found = found;
        this.keys = keys;
        this.values = values;
        this.whole = whole;
    }

    /** Reads a group and tells its unknown keys; a blank one has no keys. */
    static GroupReader of(Located found, KeyGroup keys, ValueReader values) {
        if (found instanceof Located.Mapping mapping) {
            GroupReader reader = new GroupReader(mapping, keys, values, true);
            reader.tellUnknown();
            return reader;
        }
        boolean blank = found instanceof Located.Blank;
        if (!blank) {
            tellNoGroup(found, keys, values);
        }
        return new GroupReader(new Located.Mapping(found.where(), Map.of()), keys, values, blank);
    }

    private static void tellNoGroup(Located found, KeyGroup keys, ValueReader values) {
        String read = found.kind() + " was read; expected is a group of keys, each as key: value";
        values.findings().error("wrong-type", found.where(), read, "keys here: " + String.join(", ", keys.names()));
    }

    private void tellUnknown() {
        found.entries().forEach((name, entry) -> {
            if (!keys.has(name)) {
                String message = "'" + Spelling.shown(name) + "' is not a key here";
                values.findings().error("unknown-key", entry.key(), message, meant(name));
            }
        });
    }

    /** The nearest key here, or where else the key belongs. */
    private String meant(String name) {
        List<String> near = near(name);
        String elsewhere = Keys.ALL.stream()
                .filter(g -> g.has(name))
                .map(g -> g.title().isEmpty() ? "the top of the file" : g.title())
                .collect(Collectors.joining("; "));
        if (near.isEmpty() && !elsewhere.isEmpty()) {
            return name + " belongs under " + elsewhere;
        }
        return Spelling.remedy(name, near.isEmpty() ? keys.names() : near);
    }

    /** The keys close to a name; those that the group has already are not what was meant, unless no other is close. */
    private List<String> near(String name) {
        List<String> open =
                keys.names().stream().filter(k -> found.value(k).isEmpty()).toList();
        List<String> near = Spelling.near(name, open);
        return near.isEmpty() ? Spelling.near(name, keys.names()) : near;
    }

    /** Whether a key that is missing stands there misspelt, which has been told. */
    private boolean isMisspelt(String key) {
        return found.entries().keySet().stream()
                .filter(name -> !keys.has(name))
                .anyMatch(name -> near(name).contains(key));
    }

    /** The place of a key's value, or of the group when the key is not in it. */
    Where where(String key) {
        return found.value(key).map(Located::where).orElse(missing(key));
    }

    private Where missing(String key) {
        Where group = found.where();
        String path = group.path().isEmpty() ? key : group.path() + "." + key;
        return new Where(group.source(), path, group.line(), group.column());
    }

    /** The value as it was written; empty when the key is missing or blank. */
    Optional<Located> given(String key) {
        return found.value(key);
    }

    /** The value as it was written, else what is usual; a required key that is missing is told. */
    Optional<Located> value(String key) {
        Key known = keys.key(key);
        Optional<Located> value =
                found.value(key).or(() -> known.usual().map(u -> new Located.Scalar(missing(key), u)));
        if (value.isEmpty() && known.required() && whole && !isMisspelt(key)) {
            String message = "'" + key + "' is missing: " + known.meaning();
            String range = known.range().map(r -> " (" + r + ")").orElse("");
            values.findings().error("missing-key", missing(key), message, "add " + key + range);
        }
        return value;
    }

    /** What a number may be. */
    Range range(String key) {
        return keys.key(key).range().orElseThrow();
    }

    /** A number: as written, else usual, else (already told) the least allowed. */
    double number(String key) {
        Range range = keys.key(key).range().orElseThrow();
        return numberIfGiven(key).orElse(range.low());
    }

    /** A number as written, else usual; empty when there is neither or it is wrong. */
    OptionalDouble numberIfGiven(String key) {
        Range range = keys.key(key).range().orElseThrow();
        return value(key).map(v -> values.number(v, range)).orElse(OptionalDouble.empty());
    }

    /** Text as written, else usual, else empty. */
    String text(String key) {
        return value(key).flatMap(values::text).orElse("");
    }

    /** One of an enum's names, else its first. */
    <E extends Enum<E>> E choice(String key, Class<E> type) {
        return choiceIfGiven(key, type).orElse(type.getEnumConstants()[0]);
    }

    /** One of an enum's names; empty when it is missing or wrong. */
    <E extends Enum<E>> Optional<E> choiceIfGiven(String key, Class<E> type) {
        return value(key).flatMap(v -> values.choice(v, type));
    }

    /** A whole number as written, else usual; empty when there is neither or it is wrong. */
    OptionalInt wholeIfGiven(String key) {
        OptionalDouble number = numberIfGiven(key);
        return number.isPresent() ? OptionalInt.of((int) number.getAsDouble()) : OptionalInt.empty();
    }

    /** True or false: as written, else usual. */
    boolean flag(String key) {
        return value(key).map(values::flag).orElse(false);
    }

    /** The entries of a list; none when it is missing. */
    List<Located> list(String key, String of) {
        return found.value(key).map(v -> values.list(v, of)).orElse(List.of());
    }

    /** A group inside this one; an absent one has no keys. */
    GroupReader group(String key, KeyGroup inner) {
        return of(found.value(key).orElse(new Located.Blank(missing(key))), inner, values);
    }

    /** The reader of single values. */
    ValueReader values() {
        return values;
    }

    /** Where problems go. */
    Findings findings() {
        return values.findings();
    }

    /** The place of the group. */
    Where where() {
        return found.where();
    }
}
