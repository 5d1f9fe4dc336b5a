package org.baywright.model.rules;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.baywright.model.parts.Assemblies;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Shed;

/** Advice: plates that meet no member that could carry them, such as girt cleats in a corner between two walls. */
final class LooseCleatRule implements Rule {
    @Override
    public void check(Asked asked) {
        asked.shed()
                .map(LooseCleatRule::told)
                .filter(words -> !words.isEmpty())
                .ifPresent(words -> asked.advice(
                        "plates-meet-nothing",
                        "envelope",
                        "no member meets " + words,
                        "the drawings mark them; the engineer shows what carries them before they are cut"));
    }

    /** The plates of a shed that meet nothing, by kind; empty when there are none. */
    static String told(Shed shed) {
        return loose(shed).values().stream().map(Loose::words).collect(Collectors.joining(", "));
    }

    private static Map<PartKind, Loose> loose(Shed shed) {
        Assemblies assemblies = Assemblies.of(shed);
        Map<PartKind, Loose> kinds = new LinkedHashMap<>();
        shed.parts().stream()
                .filter(part -> assemblies.loose(part) > 0)
                .sorted(Comparator.comparing(Part::kind))
                .forEach(part -> kinds.merge(
                        part.kind(), new Loose(part.kind(), assemblies.loose(part), List.of(part.mark())), Loose::and));
        return kinds;
    }

    private record Loose(PartKind kind, int count, List<String> marks) {
        Loose and(Loose other) {
            List<String> all = new ArrayList<>(marks);
            all.addAll(other.marks);
            return new Loose(kind, count + other.count, all);
        }

        String words() {
            return count + " of " + kind.label() + " " + String.join(", ", marks);
        }
    }
}
