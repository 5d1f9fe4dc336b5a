package org.baywright.model.definition;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.baywright.model.problem.Where;

/**
 * Where every key was read, so that what is found out later about the whole shed can still name a line.
 *
 * @param whole the source as a whole
 * @param byPath each value's place by its dotted key
 */
public record Places(Where whole, Map<String, Where> byPath) {
    /** Copies the map. */
    public Places {
        byPath = Map.copyOf(byPath);
    }

    /** The places in a tree; none when there is no tree. */
    static Places of(String source, Optional<Located> tree) {
        Map<String, Where> byPath = new HashMap<>();
        tree.ifPresent(t -> collect(t, "", byPath));
        return new Places(Where.whole(source), byPath);
    }

    private static void collect(Located found, String path, Map<String, Where> byPath) {
        byPath.put(path, found.where());
        if (found instanceof Located.Mapping mapping) {
            String start = path.isEmpty() ? "" : path + ".";
            mapping.entries().forEach((name, entry) -> collect(entry.value(), start + name, byPath));
        } else if (found instanceof Located.Sequence sequence) {
            List<Located> items = sequence.items();
            for (int i = 0; i < items.size(); i++) {
                collect(items.get(i), path + "[" + i + "]", byPath);
            }
        }
    }

    /** The place of a key such as {@code leanTos[0].pitch}; when it was left out, the nearest group that holds it. */
    public Where where(String path) {
        String group = path;
        while (!group.isEmpty() && !byPath.containsKey(group)) {
            group = group.substring(0, Math.max(0, Math.max(group.lastIndexOf('.'), group.lastIndexOf('['))));
        }
        Where found = byPath.getOrDefault(group, whole);
        return new Where(found.source(), path, found.line(), found.column());
    }
}
