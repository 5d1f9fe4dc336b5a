package org.baywright.model.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.baywright.model.definition.Definitions;
import org.baywright.model.problem.Problem;
import org.baywright.model.problem.Where;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A lean-to that no braced bay reaches is told, whole or in part. */
class LeanToBracedRuleTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "fromBay: 1, toBay: 5 | [1] | 0",
                "fromBay: 2, toBay: 5 | [1] | 1",
                "fromBay: 2, toBay: 5 | [2] | 0",
                "fromBay: 2, toBay: 4 | [5] | 1",
                "fromBay: 2, toBay: 4 | [4] | 0",
                "fromBay: 2, toBay: 4 | none | 0"
            })
    void toldWhereNoBracedBayReaches(String bays, String braced, int advice) {
        String yaml = "span: 12000\nbays: 5\nbaySpacing: 6000\neaveHeight: 4200\nroofPitch: 10\n"
                + "bracing: {bays: " + braced + "}\n"
                + "leanTos: [{side: left, width: 4000, drop: 400, " + bays + "}]\n";
        List<Problem> found = ShedRules.check(Definitions.of(yaml), Where::whole);
        assertEquals(
                advice,
                found.stream().filter(p -> p.code().equals("lean-to-unbraced")).count());
    }
}
