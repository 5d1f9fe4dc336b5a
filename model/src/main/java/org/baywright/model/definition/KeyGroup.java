package org.baywright.model.definition;

import java.util.List;

/**
 * The keys that may stand together.
 *
 * @param title where they stand, such as {@code leanTos}; empty for the top of the file
 * @param keys in the order they are best written
 */
public record KeyGroup(String title, List<Key> keys) {
    /** Copies the list. */
    public KeyGroup {
        keys = List.copyOf(keys);
    }

    /** The key of that name, which must exist. */
    Key key(String name) {
        return keys.stream().filter(k -> k.name().equals(name)).findFirst().orElseThrow();
    }

    /** Whether a key of that name exists. */
    boolean has(String name) {
        return keys.stream().anyMatch(k -> k.name().equals(name));
    }

    /** The names. */
    List<String> names() {
        return keys.stream().map(Key::name).toList();
    }
}
