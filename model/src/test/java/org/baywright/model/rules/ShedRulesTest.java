package org.baywright.model.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import org.baywright.model.catalogue.Catalogue;
import org.baywright.model.definition.DefinitionReader;
import org.baywright.model.definition.Reading;
import org.baywright.model.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What each value allows by itself but the shed does not, just inside and just outside each limit. */
class ShedRulesTest {
    private static final String FIVE = "span: 12000\nbays: 2\nbaySpacing: 6000\neaveHeight: 4200\nroofPitch: 10\n";

    private static List<Problem> found(String more) {
        String kept = FIVE.lines()
                .filter(line ->
                        !more.contains("\n" + line.split(":")[0] + ":") && !more.startsWith(line.split(":")[0] + ":"))
                .collect(Collectors.joining("\n", "", "\n"));
        Reading reading = DefinitionReader.read("test.yaml", kept + more, List.of(), Catalogue.shipped());
        return ShedRules.check(
                reading.definition().orElseThrow(() -> new AssertionError(reading.problems())),
                reading.places()::where);
    }

    private static List<String> errors(String more) {
        return found(more).stream()
                .filter(Problem::isError)
                .map(Problem::code)
                .distinct()
                .collect(Collectors.toList());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "|",
                "leanTos: [{side: left, width: 4000, drop: 0}]|",
                "leanTos: [{side: left, width: 4000, drop: 217}]|lean-to-through-column-top",
                "leanTos: [{side: left, width: 4000, drop: 218}]|",
                "{kneeJoint: butted, leanTos: [{side: left, width: 4000, drop: 50}]}|",
                "{rafterOverhang: 300, leanTos: [{side: left, width: 4000, drop: 0}]}|overhang-meets-lean-to",
                "{rafterOverhang: 300, leanTos: [{side: left, width: 4000, drop: 200, pitch: 5}]}"
                        + "|lean-to-through-column-top",
                "leanTos: [{side: left, width: 9000, pitch: 12, drop: 300}]|lean-to-too-low",
                "leanTos: [{side: left, width: 9000, pitch: 10, drop: 300}]|",
                "leanTos: [{side: right, width: 500, drop: 300}]|",
                "{leanTos: [{side: right, width: 500, drop: 300}], leanToColumn: RHS 400x200x8}|plates-overlap",
                "basePlate: {gaugeX: 230}|",
                "{basePlate: {gaugeX: 230, width: 240}}|hole-off-plate",
                "{basePlate: {gaugeX: 60, gaugeY: 60}}|hole-under-column",
                "{basePlate: {width: 90, gaugeX: 60, depth: 300, gaugeY: 200}}|column-off-plate",
                "{basePlate: {holes: 8, holeDiameter: 90}}|hole-off-plate holes-overlap",
                "{kneeJoint: butted, column: SHS 50x50x3, capPlate: {thickness: 100}}|",
                "{kneeJoint: butted, column: SHS 50x50x3, capPlate: {thickness: 100}, roofPitch: 45}|cap-too-thick",
                "{eaveHeight: 500}|column-too-short",
                "{span: 1000, column: SHS 250x250x9, kneeJoint: butted}|span-too-small",
                "{baySpacing: 500, column: SHS 250x250x9}|bay-too-short frames-too-close",
                "{anchor: {size: M16, embedment: 125, minimumConcrete: 120}}|embedment-through-slab",
            })
    void errorsAtTheLimits(String more, String codes) {
        String flow = more == null ? "" : more.startsWith("{") ? more.substring(1, more.length() - 1) : more;
        assertEquals(codes == null ? List.of() : List.of(codes.split(" ")), errors(lines(flow)));
    }

    /** Top-level keys of a flow group on lines of their own; later keys replace those of the five numbers. */
    private static String lines(String flow) {
        StringBuilder lines = new StringBuilder();
        int depth = 0;
        for (char c : flow.toCharArray()) {
            depth += c == '{' || c == '[' ? 1 : c == '}' || c == ']' ? -1 : 0;
            lines.append(c == ',' && depth == 0 ? '\n' : c);
        }
        return lines.toString().replace("\n ", "\n");
    }

    @Test
    void placesNameTheLineOfTheLeanTo() {
        List<Problem> problems = found("leanTos:\n  - {side: left, width: 4000, drop: 100}\n");
        Problem problem = problems.stream().filter(Problem::isError).findFirst().orElseThrow();
        assertEquals("leanTos[0].drop", problem.where().path());
        assertEquals(7, problem.where().line());
        assertTrue(problem.message().contains("100"), problem.message());
        assertTrue(problem.remedy().contains("218"), problem.remedy());
    }
}
