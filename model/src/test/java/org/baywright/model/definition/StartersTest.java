package org.baywright.model.definition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.baywright.model.catalogue.Catalogue;
import org.baywright.model.problem.Problem;
import org.baywright.model.rules.ShedRules;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every shipped starter reads without error, breaks no rule and shows every key. */
class StartersTest {
    private static final Path TEMPLATES = Path.of("..", "templates");

    static List<Path> starters() throws IOException {
        try (Stream<Path> files = Files.list(TEMPLATES)) {
            return files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
        }
    }

    private static Reading read(String text) {
        return DefinitionReader.read("starter", text, List.of(), Catalogue.shipped());
    }

    @Test
    void thereAreSix() throws IOException {
        assertTrue(starters().size() >= 6);
    }

    @ParameterizedTest
    @MethodSource("starters")
    void readsWithoutAProblem(Path starter) throws IOException {
        assertEquals(List.of(), read(Files.readString(starter)).problems());
    }

    @ParameterizedTest
    @MethodSource("starters")
    void breaksNoRule(Path starter) throws IOException {
        Reading reading = read(Files.readString(starter));
        List<Problem> found = ShedRules.check(
                reading.definition().orElseThrow(), p -> reading.places().where(p));
        assertEquals(List.of(), found.stream().filter(Problem::isError).toList());
    }

    @ParameterizedTest
    @MethodSource("starters")
    void showsEveryKeyWithItsMeaning(Path starter) throws IOException {
        String text = Files.readString(starter);
        for (Key key : Keys.ALL.stream()
                .filter(g -> g != Keys.MEMBER)
                .flatMap(g -> g.keys().stream())
                .toList()) {
            Pattern line = Pattern.compile("(?m)^(# )?[ -]*(# )?" + key.name() + ":.*  .*[a-z]");
            boolean heading = key.name().equals("project");
            assertTrue(heading || line.matcher(text).find(), starter + " lacks " + key.name());
        }
    }

    /** A commented-out line must work when its # is taken away. */
    @ParameterizedTest
    @MethodSource("starters")
    void everySwitchedOffKeyIsAKey(Path starter) throws IOException {
        String on = Files.readString(starter).replaceAll("(?m)^(\\s*)# ([ -]*[a-zA-Z]+: *[^ ]* +.*# .*)$", "$1$2");
        List<Problem> problems = read(on).problems();
        assertEquals(List.of(), problems, on);
    }
}
