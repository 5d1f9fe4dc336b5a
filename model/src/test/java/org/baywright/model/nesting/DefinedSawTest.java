package org.baywright.model.nesting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.baywright.model.catalogue.Catalogue;
import org.baywright.model.definition.DefinitionReader;
import org.baywright.model.definition.Reading;
import org.baywright.model.parts.Shed;
import org.baywright.model.problem.Problem;
import org.junit.jupiter.api.Test;

/** The saw and its bars as the definition has them. */
class DefinedSawTest {
    private static final String SHED = """
            span: 12000
            bays: 3
            baySpacing: 5000
            eaveHeight: 4200
            roofPitch: 10
            envelope: none
            """;

    private static Reading read(String saw) {
        return DefinitionReader.read("shed.yaml", SHED + saw, List.of(), Catalogue.shipped());
    }

    private static ShedCutting cutting(String saw) {
        return ShedCutting.of(Shed.of(read(saw).definition().orElseThrow()));
    }

    private static SectionCuts columns(ShedCutting cutting) {
        return cutting.sections().stream()
                .filter(c -> c.section().designation().equals("SHS 100x100x5"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void lengthsOfTheDefinitionStandInForTheCatalogues() {
        String saw = """
                saw:
                  kerf: 1.5
                  trim: 20
                  stock:
                    - section: SHS 100x100x5
                      lengths: [4400]
                    - lengths: 13000
                """;
        ShedCutting cutting = cutting(saw);
        assertEquals(1.5, cutting.saw().kerfMm());
        assertEquals(20, cutting.saw().endTrimMm());
        assertTrue(columns(cutting).bars().stream().allMatch(b -> b.stock().lengthMm() == 4400));
        cutting.sections().stream()
                .filter(c -> c != columns(cutting))
                .forEach(c ->
                        assertTrue(c.bars().stream().allMatch(b -> b.stock().lengthMm() == 13_000)));
    }

    @Test
    void pricesAreMadeLeast() {
        String saw = """
                saw:
                  stock:
                    - {section: SHS 100x100x5, lengths: [4400, 9000], prices: [10, 40]}
                """;
        SectionCuts columns = columns(cutting(saw));
        assertEquals(80, columns.cost(), 1e-9);
        assertEquals(80, columns.boundCost(), 1e-9);
    }

    @Test
    void theYardIsOfItsSection() {
        SectionCuts columns = columns(cutting("saw: {yard: [{section: SHS 100x100x5, length: 4400, count: 2}]}"));
        assertEquals(
                2,
                columns.bars().stream()
                        .filter(b -> b.stock().isOffcut())
                        .mapToInt(LaidBar::times)
                        .sum());
    }

    @Test
    void faultsAreToldWithTheirLine() {
        String saw = """
                saw:
                  kref: 3
                  stock:
                    - section: SHS 100x100x55
                      lengths: [6500, 8000]
                      prices: [50]
                  yard:
                    - length: 3000
                """;
        List<Problem> problems = read(saw).problems();
        assertEquals(
                List.of("unknown-key", "unknown-section", "prices-and-lengths", "missing-key"),
                problems.stream().map(Problem::code).toList());
        assertEquals(
                List.of(8, 10, 12, 14),
                problems.stream().map(p -> p.where().line()).toList());
        assertTrue(problems.get(0).remedy().contains("kerf"), problems.get(0).remedy());
    }
}
