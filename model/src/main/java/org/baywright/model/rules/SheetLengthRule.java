package org.baywright.model.rules;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.baywright.model.cladding.Cladding;
import org.baywright.model.cladding.Surface;
import org.baywright.model.problem.Problem;

/** Advice: sheets longer than can be carried are split and lapped. Looks at a shed that can be built only. */
final class SheetLengthRule implements Rule {
    @Override
    public void check(Asked asked) {
        if (!asked.clad() || asked.found().stream().anyMatch(Problem::isError)) {
            return;
        }
        List<String> split = Cladding.surfaces(asked.definition(), asked.setOut()).stream()
                .map(SheetLengthRule::told)
                .flatMap(Optional::stream)
                .toList();
        if (!split.isEmpty()) {
            double longest = asked.definition().envelope().sheeting().longest();
            asked.advice(
                    "sheet-split",
                    "longestSheet",
                    "sheets longer than " + Asked.mm(longest) + " mm are split and lapped: " + String.join("; ", split),
                    "raise longestSheet if longer ones can be carried and lifted; otherwise see to the laps' sealing");
        }
    }

    /** The longest of a surface's lengths that takes more than one sheet. */
    private static Optional<String> told(Surface surface) {
        return surface.lengths().stream()
                .filter(l -> l.size() > 1)
                .max((a, b) -> Double.compare(length(a), length(b)))
                .map(l -> surface.name() + ", " + Asked.mm(length(l)) + " mm in "
                        + l.stream().map(s -> Asked.mm(s.length())).collect(Collectors.joining(" and ")));
    }

    private static double length(List<Surface.Sheet> lapped) {
        return lapped.get(lapped.size() - 1).high() - lapped.get(0).low();
    }
}
