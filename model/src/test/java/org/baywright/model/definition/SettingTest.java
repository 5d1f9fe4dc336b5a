package org.baywright.model.definition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.baywright.model.catalogue.Catalogue;
import org.baywright.model.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SettingTest {
    private static final String SHED = """
            span: 12000
            bays: 2
            baySpacing: 6000
            eaveHeight: 4200
            roofPitch: 10
            rafter: 200UB25.4
            leanTos:
              - {side: left, width: 3000}
            """;

    private static Reading read(String... overrides) {
        return DefinitionReader.read("shed.yaml", SHED, List.of(overrides), Catalogue.shipped());
    }

    private static Definition with(String... overrides) {
        Reading reading = read(overrides);
        return reading.definition().orElseThrow(() -> new AssertionError(reading.problems()));
    }

    @Test
    void aLaterOneWins() {
        assertEquals(9000, with("span=8000", "span = 9000").shape().span());
    }

    @ParameterizedTest
    @ValueSource(strings = {"leanTos.0.pitch=7", "leanTos[0].pitch=7"})
    void aListIsCountedFromZeroInEitherSpelling(String override) {
        assertEquals(7, with(override).leanTos().get(0).pitchDeg());
        assertEquals(3000, with(override).leanTos().get(0).width());
    }

    @Test
    void aListGrowsAtItsEnd() {
        assertEquals(
                2,
                with("leanTos[1].side=right", "leanTos[1].width=4000").leanTos().size());
        assertEquals(
                "bad-override", read("leanTos[2].side=right").problems().get(0).code());
    }

    @Test
    void aMemberKeepsItsSectionWhenTurned() {
        assertTrue(with("rafter.turned=true").steel().rafter().turned());
        assertEquals(
                "200UB25.4",
                with("rafter.turned=true").steel().rafter().section().designation());
        assertTrue(with("column.turned=true").steel().column().turned());
        assertEquals(
                "SHS 100x100x5",
                with("column.turned=true").steel().column().section().designation());
    }

    @Test
    void flowListsAreRead() {
        assertEquals(
                List.of(6000.0, 5000.0), with("baySpacing=[6000,5000]").shape().baySpacings());
        assertTrue(with("leanTos=[]").leanTos().isEmpty());
        assertEquals("Shed #2: new", with("name=Shed #2: new").project().name());
        assertEquals("Ram = ewe", with("project.owner=Ram = ewe").project().owner());
    }

    @Test
    void nothingMeansTheUsual() {
        assertEquals("RHS 200x100x5", with("rafter=").steel().rafter().section().designation());
    }

    @Test
    void problemsArePlacedAtTheOverride() {
        Problem p = read("leanTos.0.pitch=steep").problems().get(0);
        assertEquals("--set leanTos[0].pitch", p.where().toString());
        Problem unknown = read("basePlate.widht=300").problems().get(0);
        assertEquals("--set basePlate.widht", unknown.where().toString());
        assertTrue(unknown.remedy().contains("width"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "span",
                "=5",
                "",
                ".=1",
                "a..b=1",
                "leanTos[x]=1",
                "span.deep=1",
                "baySpacing[1]=5",
                "span=[1",
                "a]=1"
            })
    void whatCannotBeReadIsTold(String override) {
        Reading reading = read(override);
        assertTrue(reading.definition().isEmpty());
        Problem p = reading.problems().get(reading.problems().size() - 1);
        assertEquals("--set", p.where().source());
        assertTrue(List.of("bad-override", "syntax").contains(p.code()), p.toString());
    }

    @Test
    void theyMakeAShedOfAnEmptyFile() {
        List<String> five = List.of("span=9000", "bays=1", "baySpacing=5000", "eaveHeight=3000", "roofPitch=5");
        Reading reading = DefinitionReader.read("-", "", five, Catalogue.shipped());
        assertEquals(List.of(), reading.problems());
        assertEquals(
                5,
                DefinitionReader.read("-", "", five.subList(0, 1), Catalogue.shipped())
                                .problems()
                                .size()
                        + 1);
    }
}
