package org.baywright.render.sheet;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Marks in few words: {@code BC1–4, 7, C1, 2}. */
final class MarkRuns {
    private MarkRuns() {}

    /** Marks by their letters, numbers that follow each other joined; whatever is no mark comes as it is. */
    static String of(Collection<String> marks) {
        Map<String, TreeSet<Integer>> byLetters = new LinkedHashMap<>();
        marks.stream().distinct().forEach(mark -> {
            String letters = mark.replaceAll("[0-9]+$", "");
            TreeSet<Integer> numbers = byLetters.computeIfAbsent(letters, k -> new TreeSet<>());
            if (letters.length() < mark.length()) {
                numbers.add(Integer.valueOf(mark.substring(letters.length())));
            }
        });
        return byLetters.entrySet().stream()
                .map(e -> e.getKey() + PlateUse.runs(e.getValue().stream().toList()))
                .collect(Collectors.joining(", "));
    }
}
