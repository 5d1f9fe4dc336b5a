package org.baywright.model.definition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.statistics.Statistics;
import org.baywright.model.problem.Problem;
import org.baywright.model.problem.Where;
import org.baywright.model.rules.ShedRules;

/** The random definitions are valid, stand up geometrically and cover every shape. */
class DefinitionsTest {
    @Provide
    Arbitrary<Definition> valid() {
        return Definitions.valid();
    }

    @Provide
    Arbitrary<Definition> clad() {
        return Definitions.clad();
    }

    @Property(tries = 120)
    void theCladOnesBreakNoRuleAndHaveEverything(@ForAll("clad") Definition d) {
        theyBreakNoRule(d);
        Envelope e = d.envelope();
        assertTrue(e.isFull());
        covers("openings", e.openings().isEmpty() ? "none" : "some", "none", "some");
        covers("flush", e.walls().girts().flush(), true, false);
        covers("lean-to walls", e.sheeting().leanToWalls(), true, false);
        covers("beam", e.liftingBeam().isPresent(), true, false);
        covers("site", d.ground().site().isPresent(), true, false);
        covers("overhang", d.plates().rafterOverhang() > 0, true, false);
        for (Opening.Type type : Opening.Type.values()) {
            covers(type.label(), e.openings().stream().anyMatch(o -> o.type() == type), true, false);
        }
        covers("in a lean-to", e.openings().stream().anyMatch(o -> o.leanTo().isPresent()), true, false);
    }

    private static <T> void covers(String what, T value, T one, T other) {
        Statistics.label(what).collect(value).coverage(c -> {
            c.check(one).percentage(p -> p > 0);
            c.check(other).percentage(p -> p > 0);
        });
    }

    @Property(tries = 300)
    void theyBreakNoRule(@ForAll("valid") Definition d) {
        List<Problem> errors = ShedRules.check(d, Where::whole).stream()
                .filter(Problem::isError)
                .toList();
        assertEquals(List.of(), errors, d.toString());
    }

    @Property(tries = 300)
    void theyCoverEveryShape(@ForAll("valid") Definition d) {
        Statistics.label("shape")
                .collect(d.shape().roofShape(), d.shape().kneeJoint())
                .coverage(c -> {
                    for (RoofShape roof : RoofShape.values()) {
                        for (KneeJoint knee : KneeJoint.values()) {
                            c.check(roof, knee).percentage(p -> p > 5);
                        }
                    }
                });
        Statistics.label("lean-tos").collect(d.leanTos().size()).coverage(c -> {
            c.check(0).percentage(p -> p > 5);
            c.check(1).percentage(p -> p > 5);
            c.check(2).percentage(p -> p > 5);
        });
        Statistics.label("other frames")
                .collect(d.heavier().isEmpty())
                .coverage(c -> c.check(false).percentage(p -> p > 5));
        assertTrue(d.shape().bays() >= 1 && d.shape().bays() <= 12);
    }
}
