package org.baywright.model.rules;

import java.util.List;
import org.baywright.model.definition.LeanTo;

/** Advice: a lean-to that has no braced bay of its own leans on the main building, which the engineer must know. */
final class LeanToBracedRule implements Rule {
    @Override
    public void check(Asked asked) {
        List<Integer> braced = asked.definition().envelope().bracing().bays();
        for (int i = 0; i < asked.definition().leanTos().size(); i++) {
            LeanTo leanTo = asked.definition().leanTos().get(i);
            boolean none = braced.stream().noneMatch(bay -> bay >= leanTo.firstFrame() && bay < leanTo.lastFrame());
            if (asked.clad() && !braced.isEmpty() && none) {
                asked.advice(
                        "lean-to-unbraced",
                        "leanTos[" + i + "]",
                        "no bay of this lean-to is braced: braced are " + bays(braced) + ", it stands over bays "
                                + leanTo.firstFrame() + " to " + (leanTo.lastFrame() - 1),
                        "add one of its bays to bracing.bays, or have the engineer say how it is held");
            }
        }
    }

    private static String bays(List<Integer> bays) {
        return (bays.size() == 1 ? "bay " : "bays ")
                + String.join(", ", bays.stream().map(String::valueOf).toList());
    }
}
