package org.baywright.model.definition;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.baywright.model.problem.Where;

/**
 * One override from the command line: {@code leanTos[0].pitch=7}. It changes the tree before anything is made of it,
 * so that it is checked as if it stood in the file.
 */
final class Setting {
    /** The source of everything that came from an override. */
    static final String SOURCE = "--set";

    private static final Pattern PATH = Pattern.compile("[^.\\[\\]]+(?:\\.[^.\\[\\]]+|\\[\\d{1,4}]){0,9}");
    private static final Pattern STEP = Pattern.compile("[^.\\[\\]]+");
    private static final Pattern INDEX = Pattern.compile("\\d{1,4}");
    /** Keys whose value may be a section's name alone; setting a key inside keeps that name. */
    private static final Set<String> MEMBERS = Set.of("column", "rafter", "leanToColumn", "leanToRafter");

    private final List<String> steps;
    private final Located value;
    private final Findings findings;

    private Setting(List<String> steps, Located value, Findings findings) {
        this.steps = steps;
        this.value = value;
        this.findings = findings;
    }

    /** The tree with every override applied in order. */
    static Located apply(Located root, List<String> overrides, Findings findings) {
        Located tree = root;
        for (String text : overrides) {
            Located before = tree;
            tree = read(text, findings)
                    .flatMap(s -> s.put(Optional.of(before), 0))
                    .orElse(before);
        }
        return tree;
    }

    /** Reads an override; empty when it cannot be read, which has then been told. */
    static Optional<Setting> read(String text, Findings findings) {
        int equals = text.indexOf('=');
        String path = (equals < 0 ? text : text.substring(0, equals)).strip();
        if (equals < 0 || !PATH.matcher(path).matches()) {
            String read = "'" + Spelling.shown(text) + "' is not an override";
            findings.error("bad-override", where(Spelling.shown(path)), read, "write key=value, such as span=12000");
            return Optional.empty();
        }
        List<String> steps = STEP.matcher(path).results().map(r -> r.group()).toList();
        return SyntaxTree.ofValue(where(path(steps)), text.substring(equals + 1), findings)
                .map(v -> new Setting(steps, v, findings));
    }

    private Optional<Located> put(Optional<Located> old, int depth) {
        if (depth == steps.size()) {
            return Optional.of(value);
        }
        boolean fresh = old.isEmpty() || old.get() instanceof Located.Blank;
        if (INDEX.matcher(steps.get(depth)).matches() && (fresh || old.get() instanceof Located.Sequence)) {
            return item(old, fresh, depth);
        }
        return group(old, fresh, depth).flatMap(g -> key(g, depth));
    }

    private Optional<Located> item(Optional<Located> old, boolean fresh, int depth) {
        List<Located> items = new ArrayList<>(fresh ? List.of() : ((Located.Sequence) old.get()).items());
        int index = Integer.parseInt(steps.get(depth));
        if (index > items.size()) {
            return refuse(path(steps.subList(0, depth)) + " has " + items.size() + " entries, counted from 0");
        }
        Optional<Located> before = index < items.size() ? Optional.of(items.get(index)) : Optional.empty();
        return put(before, depth + 1).map(changed -> {
            if (before.isPresent()) {
                items.set(index, changed);
            } else {
                items.add(changed);
            }
            Where where =
                    fresh ? where(path(steps.subList(0, depth))) : old.get().where();
            return new Located.Sequence(where, items);
        });
    }

    /** The group that the next step is a key of. */
    private Optional<Located.Mapping> group(Optional<Located> old, boolean fresh, int depth) {
        Where here = where(path(steps.subList(0, depth)));
        if (fresh) {
            // A file that is empty keeps its place, so that what is missing from it is told there.
            return Optional.of(new Located.Mapping(old.map(Located::where).orElse(here), Map.of()));
        }
        if (old.get() instanceof Located.Mapping mapping) {
            return Optional.of(mapping);
        }
        if (old.get() instanceof Located.Scalar name && depth > 0 && MEMBERS.contains(steps.get(depth - 1))) {
            return Optional.of(
                    new Located.Mapping(name.where(), Map.of("section", new Located.Entry(name.where(), name))));
        }
        String place = depth == 0 ? "the file" : path(steps.subList(0, depth));
        return refuse(place + " is " + old.get().kind() + " and has no keys inside");
    }

    private Optional<Located> key(Located.Mapping group, int depth) {
        String name = steps.get(depth);
        Optional<Located.Entry> old = Optional.ofNullable(group.entries().get(name));
        boolean last = depth + 1 == steps.size();
        Where here = old.filter(e -> !last).map(Located.Entry::key).orElse(where(path(steps.subList(0, depth + 1))));
        return put(old.map(Located.Entry::value), depth + 1)
                .map(changed -> group.with(name, new Located.Entry(here, changed)));
    }

    private <T> Optional<T> refuse(String message) {
        findings.error("bad-override", where(path(steps)), message, "set the whole of it instead");
        return Optional.empty();
    }

    private static Where where(String path) {
        return new Where(SOURCE, path, 0, 0);
    }

    /** As the file's own paths are written: {@code leanTos[0].pitch}. */
    private static String path(List<String> steps) {
        StringBuilder path = new StringBuilder();
        for (String step : steps) {
            if (INDEX.matcher(step).matches()) {
                path.append('[').append(step).append(']');
            } else {
                path.append(path.isEmpty() ? "" : ".").append(Spelling.shown(step));
            }
        }
        return path.toString();
    }
}
