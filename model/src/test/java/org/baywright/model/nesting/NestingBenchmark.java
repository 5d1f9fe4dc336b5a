package org.baywright.model.nesting;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.lifecycle.AfterContainer;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Definitions;
import org.baywright.model.parts.Shed;

/** How many of 300 random sheds are cut by a plan proven best, and how long it takes. Run by name, not with the tests. */
class NestingBenchmark {
    private static final int SHEDS = 300;
    private static final List<Double> SECONDS = new ArrayList<>();
    private static int proven;
    private static int sections;
    private static int open;

    @Provide
    Arbitrary<Definition> sheds() {
        return Definitions.clad();
    }

    @Property(tries = SHEDS, seed = "4", shrinking = ShrinkingMode.OFF)
    void plan(@ForAll("sheds") Definition definition) {
        Shed shed = Shed.of(definition);
        long start = System.nanoTime();
        ShedCutting cutting = ShedCutting.of(shed);
        SECONDS.add((System.nanoTime() - start) / 1e9);
        cutting.sections().forEach(BarChecks::areRight);
        proven += cutting.proven() ? 1 : 0;
        sections += cutting.sections().size();
        for (SectionCuts cuts : cutting.sections()) {
            if (!cuts.proven()) {
                open++;
                boolean square = cuts.needs().stream().allMatch(n -> n.blank().isSquare());
                System.out.println(cuts.section().designation() + (square ? " (square)" : "") + " bought "
                        + cuts.purchasedMm() + " bound " + cuts.boundMm());
            }
        }
    }

    @AfterContainer
    static void told() {
        SECONDS.sort(Double::compare);
        System.out.println(proven + " of " + SHEDS + " sheds proven; " + open + " of " + sections + " sections open");
        System.out.println("seconds: median " + SECONDS.get(SHEDS / 2) + ", 99 % " + SECONDS.get(SHEDS * 99 / 100)
                + ", worst " + SECONDS.get(SHEDS - 1));
    }
}
