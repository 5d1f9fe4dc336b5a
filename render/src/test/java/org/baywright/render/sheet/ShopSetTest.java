package org.baywright.render.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.baywright.model.cladding.Building;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Definitions;
import org.baywright.model.definition.Seeds;
import org.baywright.model.takeoff.Summary;
import org.baywright.render.dimension.Figure;
import org.baywright.render.mark.Text;
import org.junit.jupiter.api.Test;

/** The shop sheets of random sheds can be read, and print the figures of the summary. */
class ShopSetTest {
    @Provide
    Arbitrary<Definition> bare() {
        return Definitions.valid();
    }

    @Provide
    Arbitrary<Definition> clad() {
        return Definitions.clad();
    }

    private static List<Text> texts(Building building) {
        return ShopSet.drafts(building.shed()).stream().flatMap(Sheds::texts).toList();
    }

    private static String words(Building building) {
        return texts(building).stream().map(Text::content).collect(Collectors.joining(" "));
    }

    private static void holds(Definition definition) {
        Building building = Building.of(definition);
        ShopSet.of(building).sheets().forEach(SheetsPropertyTest::assertReadable);
        ShopSet.drafts(building.shed()).forEach(Sheds::assertReadable);
    }

    @Property(tries = 5, seed = Seeds.SHEDS)
    void bareShedsCanBeRead(@ForAll("bare") Definition definition) {
        holds(definition);
    }

    @Property(tries = 5, seed = Seeds.SHEDS)
    void closedShedsCanBeReadAndPrintTheSummary(@ForAll("clad") Definition definition) {
        holds(definition);
        Building building = Building.of(definition);
        Summary summary = Summary.of(building);
        List<String> words = texts(building).stream().map(Text::content).toList();
        assertPrints(words, summary.get("anchorDrillingM"), 2);
        assertPrints(words, summary.get("adhesiveMl"), 0);
        assertPrints(words, summary.get("cartridges"), 0);
        assertPrints(words, summary.get("electrodeKg"), 2);
        assertPrints(words, summary.get("paintL"), 1);
    }

    /** The summary keeps three decimals, and what is half way in them may be rounded either way from all of them. */
    private static void assertPrints(List<String> words, double value, int decimals) {
        List<String> either = List.of(Figure.decimal(value - 5e-4, decimals), Figure.decimal(value + 5e-4, decimals));
        assertTrue(either.stream().anyMatch(words::contains), () -> value + " in " + words);
    }

    @Test
    void theUsersLabelIsNotCalledAnExample() {
        Building usual = Sheds.closed(Sheds.FULL);
        assertTrue(words(usual).contains("example of one product: replace with the label's"));
        Building own = Sheds.closed(
                Sheds.FULL + "anchor: {adhesive: {cure: [{concrete: 17, workable: 13, dry: 3.5, wet: 7}]}}\n");
        String words = words(own);
        assertTrue(words.contains("from the label as entered"), words);
        assertTrue(words.contains("17 13 3.5 7"), words);
    }

    @Test
    void marksInFewWords() {
        assertEquals("BC1–3, 7, C2", MarkRuns.of(List.of("BC3", "BC1", "C2", "BC2", "BC7", "BC1")));
        assertEquals("9 purlins", MarkRuns.of(List.of("9 purlins")));
    }
}
