package org.baywright.render.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.baywright.model.cladding.Building;
import org.baywright.model.definition.Definitions;
import org.baywright.model.takeoff.Bill;
import org.baywright.render.mark.Text;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever sheet or schedule a set names, it has. */
class ReferencesTest {
    private static final Pattern NUMBER = Pattern.compile("\\bS\\d+(\\.\\d+)?\\b(?! ?[x×])");

    /** A schedule is named by the words between an article or a stop and the word itself. */
    private static final Pattern SCHEDULE = Pattern.compile("\\bthe ([a-z]+(?:,? [a-z]+){0,4} schedule)\\b");

    /** Openings and a lean-to, a lifting beam, no bracing, and a frame alone: each set names other sheets. */
    static Stream<Building> buildings() {
        String bare = "span: 3000\nbays: 1\nbaySpacing: 3000\neaveHeight: 2400\nroofPitch: 10\nenvelope: none\n";
        return Stream.of(
                Sheds.closed(Sheds.FULL + Sheds.LEAN, Sheds.openings()),
                Building.of(Definitions.of(Sheds.FULL.replace("4200", "4800")
                        + "liftingBeam: {run: along, fromFrame: 2, toFrame: 3, underside: 4200}\n")),
                Sheds.closed(Sheds.FULL + "bracing: {bays: [], flyBraceEvery: 0}\npurlins: {bridging: 0}\n"),
                Building.of(Definitions.of(bare)));
    }

    @ParameterizedTest
    @MethodSource("buildings")
    void aSetHasEverySheetAndScheduleThatItNames(Building building) {
        Bill bill = Bill.of(building);
        for (SetScope scope : SetScope.values()) {
            SheetSet set = DrawingSet.of(building, bill, scope);
            Set<String> known = known(set);
            assertEquals(known.contains(rows(building)), namesRows(building, set), "rows listed and named, " + scope);
            for (Sheet sheet : set.sheets()) {
                Set<String> missing = named(words(sheet));
                missing.removeAll(known);
                assertEquals(Set.of(), missing, sheet.number() + " of " + scope);
            }
        }
    }

    private static String rows(Building building) {
        return RowSchedule.title(building.shed()).toLowerCase(Locale.ROOT);
    }

    /** Whether the framing plan says where punching is listed. */
    private static boolean namesRows(Building building, SheetSet set) {
        return set.sheets().stream()
                .filter(s -> s.title().startsWith("Roof framing plan"))
                .anyMatch(s -> words(s).contains("in the " + rows(building)));
    }

    /** Numbers, series and schedules, the latter in lower case. */
    private static Set<String> known(SheetSet set) {
        Set<String> known = new TreeSet<>();
        for (Sheet sheet : set.sheets()) {
            known.add(sheet.number());
            known.add(sheet.number().replaceAll("\\..*", ""));
            known.add(sheet.title().toLowerCase(Locale.ROOT));
        }
        return known;
    }

    private static Set<String> named(String words) {
        Set<String> named = new TreeSet<>();
        Matcher number = NUMBER.matcher(words);
        while (number.find()) {
            named.add(number.group());
        }
        Matcher schedule = SCHEDULE.matcher(words);
        while (schedule.find()) {
            named.add(schedule.group(1));
        }
        return named;
    }

    /** All words of a sheet in drawing order: the lines of a note follow each other. */
    private static String words(Sheet sheet) {
        return sheet.marks().stream()
                .filter(Text.class::isInstance)
                .map(m -> ((Text) m).content())
                .collect(Collectors.joining(" "));
    }
}
