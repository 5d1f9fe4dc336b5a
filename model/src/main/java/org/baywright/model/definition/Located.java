package org.baywright.model.definition;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.baywright.model.problem.Where;

/** What a file holds, before it means anything: values, lists and groups of keys, each with its place. */
sealed interface Located {
    /** Its place. */
    Where where();

    /** What it is, in plain words. */
    String kind();

    /** A key without a value: the same as the key left out. */
    record Blank(Where where) implements Located {
        @Override
        public String kind() {
            return "nothing";
        }
    }

    /** A value as it was written, without its quotes. */
    record Scalar(Where where, String text) implements Located {
        @Override
        public String kind() {
            return "'" + Spelling.shown(text) + "'";
        }
    }

    /** A list. */
    record Sequence(Where where, List<Located> items) implements Located {
        /** Copies the list. */
        public Sequence {
            items = List.copyOf(items);
        }

        @Override
        public String kind() {
            return "a list";
        }
    }

    /** A group of keys, in the order of the file. */
    record Mapping(Where where, Map<String, Entry> entries) implements Located {
        /** Copies the map; {@code Map.copyOf} would lose its order. */
        public Mapping {
            entries = Collections.unmodifiableMap(new LinkedHashMap<>(entries));
        }

        /** The value of a key, unless it is missing or blank; empty quotes are blank too. */
        Optional<Located> value(String key) {
            return Optional.ofNullable(entries.get(key)).map(Entry::value).filter(v -> !isBlank(v));
        }

        private static boolean isBlank(Located value) {
            return value instanceof Blank
                    || value instanceof Scalar scalar && scalar.text().isBlank();
        }

        /** This group with one key set. */
        Mapping with(String key, Entry entry) {
            Map<String, Entry> changed = new LinkedHashMap<>(entries);
            changed.put(key, entry);
            return new Mapping(where, changed);
        }

        @Override
        public String kind() {
            return "a group of keys";
        }
    }

    /** A value and the place of its key. */
    record Entry(Where key, Located value) {}
}
