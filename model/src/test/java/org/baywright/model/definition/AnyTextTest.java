package org.baywright.model.definition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.StringLength;
import org.baywright.model.catalogue.Catalogue;
import org.baywright.model.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** No text makes the reader throw, and it always comes to a definition or to an error with a line. */
class AnyTextTest {
    private static final String[] SCRAPS = {
        "\t",
        "\n",
        "\r",
        ":",
        ": ",
        "- ",
        "[",
        "]",
        "{",
        "}",
        "'",
        "\"",
        "#",
        "&a ",
        "*a",
        "!!float ",
        "!x ",
        "|",
        ">",
        "%",
        "@",
        "`",
        ",",
        "? ",
        "---\n",
        "...\n",
        "<<: *a\n",
        "~",
        "null",
        "\u0000",
        "\u0007",
        "\ufeff",
        "\ud800",
        "\u2028",
        "\\",
        "\\U00110000",
        "\\ud800",
        "-1",
        "0",
        "1e400",
        "9".repeat(400),
        ".nan",
        "0x1F",
        "no",
        "°",
        "ends",
        "%YAML 9.9\n"
    };

    private static void holds(String text, List<String> overrides) {
        Reading reading = DefinitionReader.read("any", text, overrides, Catalogue.shipped());
        List<Problem> errors =
                reading.problems().stream().filter(Problem::isError).toList();
        assertEquals(errors.isEmpty(), reading.definition().isPresent());
        assertTrue(
                errors.stream()
                        .allMatch(
                                p -> p.where().line() > 0 || p.where().source().equals("--set")),
                errors::toString);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "%YAML 99999999999.1\n--- a",
                "a: !%ff b",
                "a: !<%> b",
                "a: \"\\UFFFFFFFF\"",
                "? [a, b]\n: c",
                "? {a: b}\n: c",
                "&a {*a : 1}",
                "&a ? *a\n: b",
                "a: |99\n b",
                "a: |+-\n b",
                "- - - a",
                "!!binary 'x'",
                "\ufeffspan: 1",
                "{\"a\": \"\\"
            })
    void awkwardYaml(String text) {
        holds(text, List.of("name=" + text, "leanTos=[" + text + "]"));
        holds(text, List.of());
    }

    @Test
    void hugeAndDeepText() {
        holds("[".repeat(100_000), List.of());
        holds("{a: ".repeat(5_000), List.of());
        holds("x".repeat(1_500_000), List.of());
        holds("name: " + "x".repeat(190_000), List.of());
        holds("- a\n".repeat(50_000), List.of());
        holds("x".repeat(5000) + ": 1", List.of("a.".repeat(50_000) + "b=1"));
    }

    @Property(tries = 400)
    void randomText(@ForAll @StringLength(max = 60) String text) {
        holds(text, List.of());
    }

    @Property(tries = 400)
    void randomOverrides(@ForAll @StringLength(max = 30) String override, @ForAll int seed) {
        holds(
                "span: 12000",
                List.of(override, "leanTos[0]." + override, "span=" + override, mutated("leanTos[0].pitch=[5]", seed)));
    }

    @Property(tries = 400)
    void mutatedStarters(@ForAll long seed) throws IOException {
        Random random = new Random(seed);
        var starters = StartersTest.starters();
        String text = Files.readString(starters.get(random.nextInt(starters.size())));
        holds(mutated(text, seed), List.of());
    }

    @Property(tries = 300)
    void mutatedJson(@ForAll long seed) {
        String json =
                "{\"span\": 12000, \"bays\": 2, \"baySpacing\": [6000, 5000], \"eaveHeight\": 4200, \"roofPitch\": 10,"
                        + "\"leanTos\": [{\"side\": \"left\", \"width\": 4000}], \"heavier\": [{\"frames\": [1], \"column\": \"SHS 100x100x6\"}]}";
        holds(mutated(json, seed), List.of());
    }

    /** A few cuts, repeats and scraps at random places. */
    private static String mutated(String text, long seed) {
        Random random = new Random(seed);
        StringBuilder mutant = new StringBuilder(text);
        for (int i = random.nextInt(4); i >= 0; i--) {
            int from = random.nextInt(mutant.length() + 1);
            int to = Math.min(mutant.length(), from + random.nextInt(12));
            switch (random.nextInt(4)) {
                case 0 -> mutant.delete(from, to);
                case 1 -> mutant.insert(to, mutant.substring(from, to));
                case 2 -> mutant.replace(from, to, SCRAPS[random.nextInt(SCRAPS.length)]);
                default -> mutant.insert(from, SCRAPS[random.nextInt(SCRAPS.length)]);
            }
        }
        return mutant.toString();
    }
}
