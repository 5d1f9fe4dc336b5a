package org.baywright.model.definition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.baywright.model.catalogue.BeamSection;
import org.baywright.model.catalogue.Catalogue;
import org.baywright.model.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DefinitionReaderTest {
    private static final String FIVE = """
            span: 12000
            bays: 3
            baySpacing: 6000
            eaveHeight: 4200
            roofPitch: 10
            """;

    private static Reading read(String text, String... overrides) {
        return DefinitionReader.read("shed.yaml", text, List.of(overrides), Catalogue.shipped());
    }

    private static Problem only(String text, String... overrides) {
        List<Problem> problems = read(text, overrides).problems();
        assertEquals(1, problems.size(), problems.toString());
        return problems.get(0);
    }

    /** Where and what, such as {@code 6:1 unknown-key}. */
    private static List<String> told(String text, String... overrides) {
        return read(text, overrides).problems().stream()
                .map(p -> p.where().line() + ":" + p.where().column() + " " + p.code())
                .toList();
    }

    @Test
    void fiveNumbersAreEnough() {
        Definition d = Definitions.of(FIVE);
        assertEquals(
                new Shape(12000, List.of(6000.0, 6000.0, 6000.0), 4200, 10, RoofShape.GABLE, KneeJoint.SEATED),
                d.shape());
        assertEquals("SHS 100x100x5", d.steel().column().section().designation());
        assertEquals(12, d.plates().capThickness());
        assertEquals(20, d.plates().groutGap());
        assertEquals(4, d.plates().base().holes());
        assertEquals(new Anchor("M16", 16, 18, 125, 80, 80, 165, 22, Cartridge.example(500, 15)), d.anchor());
        assertEquals("Farm shed", d.project().name());
        assertEquals("A", d.project().revision());
        assertTrue(d.leanTos().isEmpty() && d.heavier().isEmpty());
    }

    @Test
    void jsonIsReadTheSame() {
        String json =
                "{\n\t\"span\":12000,\t\"bays\":3,\"baySpacing\":[6000,6000,6000],\"eaveHeight\":4.2e3,\"roofPitch\":10}";
        assertEquals(Definitions.of(FIVE), Definitions.of(json));
    }

    @Test
    void everythingMissingIsToldAtOnce() {
        List<Problem> problems = read("").problems();
        assertEquals(5, problems.size());
        assertTrue(problems.stream()
                .allMatch(p -> p.code().equals("missing-key") && p.where().line() == 1));
    }

    @Test
    void problemsOfEveryKindComeTogetherInOrder() {
        String text = """
                span: 12 m
                bays: 3.5
                baySpacing: [6000, 60]
                eaveHieght: 4200
                roofPitch: 75
                roofShape: gabel
                column: SHS 100x100x5.5
                leanTos:
                  - {side: up, width: 4000}
                span: 12000
                """;
        assertEquals(
                List.of(
                        "1:7 not-a-number",
                        "2:7 not-whole",
                        "3:20 out-of-range",
                        "4:1 unknown-key",
                        "5:12 out-of-range",
                        "6:12 not-a-choice",
                        "7:9 unknown-section",
                        "9:12 not-a-choice",
                        "10:1 duplicate-key"),
                told(text));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "12 m | write 12000",
                "12m | write 12000",
                "12000 mm | write 12000",
                "40 ft | write 12192",
                "12 000 | write 12000",
                "12_000 | write 12000",
                "'12,000' | write 12000",
                "'12,5' | write 12.5",
                "012000 | write 12000",
                "0x2EE0 | write a length in millimetres in plain digits",
                "10:30 | write a length in millimetres in plain digits",
                ".nan | write a length in millimetres in plain digits",
                ".inf | write a length in millimetres in plain digits",
                "1e999 | write a length in millimetres in plain digits",
                "yes | write a length in millimetres in plain digits",
                "wide | write a length in millimetres in plain digits"
            })
    void aNumberThatIsNoneIsAnsweredWithWhatWasMeant(String read, String remedy) {
        Problem p = only(FIVE.replace("12000", read));
        assertEquals("not-a-number", p.code());
        assertEquals(remedy, p.remedy());
        assertTrue(p.message().contains("'" + read + "'") && p.message().contains("1000 to 60000 mm"), p.message());
    }

    @ParameterizedTest
    @ValueSource(strings = {"'12000'", "\"12000\"", "12000.0", "+12000", "1.2e4"})
    void aNumberMayBeWrittenInSeveralWays(String read) {
        assertEquals(12000, Definitions.of(FIVE.replace("12000", read)).shape().span());
    }

    @Test
    void metresAreSuspected() {
        Problem p = only(FIVE.replace("12000", "12"));
        assertEquals("out-of-range", p.code());
        assertTrue(p.remedy().contains("write 12000"), p.remedy());
    }

    @Test
    void degreesAreForgivenNoSignButToldHow() {
        assertEquals(
                "write 10",
                only(FIVE.replace("roofPitch: 10", "roofPitch: 10°")).remedy());
    }

    @ParameterizedTest
    @CsvSource({
        "span, 999, 1000, 60000, 60001",
        "bays, 0, 1, 200, 201",
        "baySpacing, 499, 500, 20000, 20001",
        "eaveHeight, 499, 500, 20000, 20001",
        "roofPitch, -0.1, 0, 60, 60.1",
        "groutGap, -1, 0, 100, 101",
        "rafterOverhang, -1, 0, 2000, 2001",
        "leanToGap, -1, 0, 100, 101",
        "capPlate.thickness, -1, 0, 100, 101",
        "kneePlate.thickness, -1, 0, 100, 101",
        "apexPlate.thickness, -1, 0, 100, 101",
        "basePlate.thickness, 5, 6, 100, 101"
    })
    void rangesEndWhereTheySay(String key, String below, String low, String high, String above) {
        assertEquals("out-of-range", only(FIVE, key + "=" + below).code());
        assertEquals(List.of(), told(FIVE, key + "=" + low));
        assertEquals(List.of(), told(FIVE, key + "=" + high));
        assertEquals("out-of-range", only(FIVE, key + "=" + above).code());
    }

    @ParameterizedTest
    @CsvSource({
        "eave_height: 1, did you mean eaveHeight?",
        "pitch: 1, did you mean roofPitch?",
        "collumn: 1, did you mean column?",
        "embedment: 1, embedment belongs under anchor"
    })
    void anUnknownKeyIsAnsweredWithTheNearest(String line, String remedy) {
        Problem p = only(FIVE + line);
        assertEquals("unknown-key", p.code());
        assertEquals(6, p.where().line());
        assertEquals(remedy, p.remedy());
    }

    @Test
    void anUnknownSectionIsAnsweredWithTheNearest() {
        Problem p = only(FIVE + "rafter: RHS 200x100x5.5");
        assertTrue(p.remedy().contains("RHS 200x100x5"), p.remedy());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "span: 12000\\nbays: [3 | 2 | [ ]",
                "span: 12000\\n\\tbays: 3 | 2 | tab",
                "span: 12000\\nname: a: b | 2 | ':'",
                "name: \"open | 1 | quote",
                "span: 12000\\n  bays: 3 | 2 | ':'",
                "span: *wide | 1 | alias",
                "span: 1\\n---\\nspan: 2 | 2 | document",
                "name: \\u0007 | 1 | unprintable"
            })
    void syntaxIsToldInPlainWordsWithItsLine(String text, int line, String word) {
        Problem p = only(text.replace("\\n", "\n").replace("\\t", "\t").replace("\\u0007", "\u0007"));
        assertEquals("syntax", p.code());
        assertEquals(line, p.where().line(), p.toString());
        assertTrue(p.message().contains(word), p.message());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "bays: 3\\nspan 12000\\nroofPitch: 10 | 2 | write span: 12000",
                "span 12000\\nbays: 3 | 1 | write span: 12000",
                "bays: 3\\nroofPitch 10 # steep | 2 | write roofPitch: 10",
                "span:12000\\nbays: 3 | 1 | write span: 12000",
                "bays: 3\\nleanTos:\\n  - side: left\\n    width 3000\\n    pitch: 4 | 4 | write width: 3000",
                "bays: 3\\nleanTos\\n  - side: left | 2 | write leanTos:",
                "span 12000 | 1 | write span: 12000",
                "bays: 3\\nsapn 12000\\nroofPitch: 10 | 2 | write sapn: 12000"
            })
    void aKeyWithoutItsColonIsToldOnItsOwnLine(String text, int line, String remedy) {
        Problem p = only(text.replace("\\n", "\n"));
        assertEquals("syntax", p.code());
        assertEquals(line, p.where().line(), p.toString());
        assertEquals(remedy, p.remedy());
    }

    @Test
    void everyLineWithoutItsColonIsTold() {
        assertEquals(List.of("1:1 syntax", "3:1 syntax"), told("span=12000\nbays: 3\nbaySpacing 6000\nroofPitch: 10"));
        assertEquals(List.of("1:1 syntax", "2:1 syntax"), told("span 12000\nbays 3"));
    }

    @Test
    void aMisspeltKeyIsOneErrorAndNotMissingToo() {
        assertEquals(List.of("4:1 unknown-key"), told(FIVE.replace("eaveHeight", "eaveHieght")));
        assertEquals("did you mean bays?", only(FIVE.replace("bays:", "bay:")).remedy());
        assertEquals(
                "did you mean bracing or baySpacing?",
                only(FIVE.replace("baySpacing:", "spacing:")).remedy());
        assertEquals(
                "did you mean type?",
                only(FIVE + "openings: [{typ: door, wall: front}]").remedy());
    }

    @Test
    void textKeepsWhatYamlWouldReadAsSomethingElse() {
        Project p = Definitions.of(FIVE + "name: no\nproject: {revision: 2, date: 2026-03-01, owner: 0x10}")
                .project();
        assertEquals("no", p.name());
        assertEquals("2", p.revision());
        assertEquals("2026-03-01", p.date());
        assertEquals("0x10", p.owner());
    }

    @Test
    void textIsShortAndPlain() {
        assertEquals("too-long", only(FIVE + "name: " + "x".repeat(201)).code());
        assertEquals(List.of(), told(FIVE + "name: " + "x".repeat(200)));
        Problem p = only(FIVE + "name: \"a\\u0007b\"");
        assertEquals("control-character", p.code());
        assertFalse(p.message().contains("\u0007"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"\\U00110000", "\\UFFFFFFFF", "\\ud800", "\\q", "\\u12"})
    void escapesThatNameNoCharacterAreProblems(String escape) {
        assertEquals(6, only(FIVE + "name: \"a" + escape + "\"").where().line());
    }

    @Test
    void jsonEscapesAreRead() {
        String name = "{\"name\": \"a\\/b\\\\/\\ud83d\\ude9c\", " + FIVE.strip().replace("\n", ", ") + "}";
        assertEquals("a/b\\/\uD83D\uDE9C", Definitions.of(name).project().name());
    }

    @Test
    void aWrongTypeSaysWhatIsExpected() {
        assertEquals(
                List.of("6:11 wrong-type", "7:12 wrong-type", "8:10 wrong-type", "9:7 wrong-type"),
                told(FIVE + "capPlate: 12\nbasePlate: [1]\nleanTos: {side: left}\nname: [a]\n"));
        assertEquals(List.of("1:1 wrong-type"), told("- a\n- b"));
    }

    @Test
    void baySpacingNeedsOnePerBay() {
        Problem p = only(FIVE.replace("baySpacing: 6000", "baySpacing: [6000, 5000]"));
        assertEquals("bay-count", p.code());
        assertTrue(p.message().contains("2") && p.message().contains("3 bays"));
    }

    @Test
    void leanTosOnOneSideMayNotShareAFrame() {
        String two = FIVE
                + "leanTos:\n  - {side: left, width: 3000, toBay: 1}\n  - {side: left, width: 3000, fromBay: %d}\n";
        assertEquals(List.of("8:5 lean-tos-overlap"), told(two.formatted(2)));
        assertEquals(List.of(), told(two.formatted(3)));
        assertEquals(List.of(), told(two.formatted(1).replaceFirst("left", "right")));
    }

    @Test
    void leanToBaysMustExistAndThreeAreTooMany() {
        String leanTo = "  - {side: left, width: 3000, fromBay: 3, toBay: 4}\n";
        assertEquals(List.of("7:50 no-such-bay"), told(FIVE + "leanTos:\n" + leanTo));
        assertEquals(List.of("7:40 bay-order"), told(FIVE + "leanTos:\n" + leanTo.replace("4", "2")));
        String three = "leanTos:\n  - {side: left, width: 3000}\n  - {side: right, width: 3000}\n  - {width: 3000}\n";
        assertEquals(List.of("9:5 too-many-lean-tos", "9:5 missing-key"), told(FIVE + three));
        LeanTo usual = Definitions.of(FIVE + "leanTos: [{side: right, width: 3000}]")
                .leanTos()
                .get(0);
        assertEquals(new LeanTo(Side.RIGHT, 3000, 5, 300, 1, 3), usual);
    }

    @Test
    void unknownBaysCauseNoSecondProblem() {
        String rest =
                "leanTos: [{side: left, width: 3000, toBay: 9}]\nheavier: [{frames: [9], column: SHS 150x150x6}]\n";
        assertEquals(List.of("2:7 not-a-number"), told(FIVE.replace("bays: 3", "bays: x") + rest));
    }

    @Test
    void heavierFramesAreNumbersOrWords() {
        String entry = FIVE + "heavier: [{frames: %s, side: left, column: SHS 150x150x6}]";
        assertEquals(
                List.of(1, 4),
                Definitions.of(entry.formatted("ends")).heavier().get(0).frames());
        assertEquals(
                List.of(2, 3),
                Definitions.of(entry.formatted("interior")).heavier().get(0).frames());
        assertEquals(
                List.of(1, 2, 3, 4),
                Definitions.of(entry.formatted("all")).heavier().get(0).frames());
        Heavier one = Definitions.of(entry.formatted("[4, 2, 4]")).heavier().get(0);
        assertEquals(List.of(4, 2), one.frames());
        assertEquals(Set.of(Side.LEFT), one.sides());
        assertEquals("no-such-frame", only(entry.formatted("[5]")).code());
        assertEquals("not-a-choice", only(entry.formatted("end")).code());
    }

    @Test
    void aSkillionRafterHasNoSide() {
        String entry = FIVE + "roofShape: skillion\nheavier: [{frames: all, side: %s, rafter: 200UB25.4}]";
        assertEquals("skillion-rafter-side", only(entry.formatted("left")).code());
        assertEquals(List.of(), told(entry.formatted("both")));
    }

    @Test
    void aButtedRafterDoesNotOverhang() {
        assertEquals(
                "overhang-butted",
                only(FIVE + "kneeJoint: butted\nrafterOverhang: 1").code());
        assertEquals(List.of(), told(FIVE + "kneeJoint: butted\nrafterOverhang: 0"));
    }

    @Test
    void leanToPlatesFollowTheMainOnesKeyByKey() {
        Plates plates = Definitions.of(FIVE + "basePlate: {width: 300, holes: 6}\nleanToBasePlate: {width: 200}")
                .plates();
        assertEquals(200, plates.leanToBase().width().orElseThrow());
        assertEquals(6, plates.leanToBase().holes());
        assertTrue(plates.base().depth().isEmpty());
        assertEquals("not-a-choice", only(FIVE + "basePlate: {holes: 5}").code());
    }

    @Test
    void ownSectionsAreFoundFirst() {
        String own = FIVE + """
                sections:
                  - {name: Box, shape: hollow, depth: 120, width: 80, thickness: 5}
                  - {name: Beam, shape: beam, depth: 240, width: 120, flangeThickness: 10, webThickness: 6}
                column: {section: box, turned: yes}
                rafter: Beam
                """;
        Steel steel = Definitions.of(own).steel();
        assertEquals(80, steel.column().depth());
        assertTrue(steel.rafter().section() instanceof BeamSection);
        assertEquals(
                "bad-section",
                only(own.replace("thickness: 5", "thickness: 45")).code());
        assertEquals("missing-key", only(own.replace(", thickness: 5", "")).code());
        assertEquals(
                "shape-key",
                only(own.replace("depth: 120", "webThickness: 5, depth: 120")).code());
        assertEquals(
                "duplicate-section",
                read(own.replace("Beam", "BOX")).problems().get(0).code());
        Reading hidden = read(own.replace("name: Box", "name: SHS 100x100x5").replace("section: box", "section: Beam"));
        assertTrue(hidden.definition().isPresent());
        assertEquals("section-hidden", hidden.problems().get(0).code());
    }

    @Test
    void anAnchorOfYourOwnNeedsItsFigures() {
        Problem p = only(FIVE + "anchor: {size: M24, embedment: 210}");
        assertEquals("unknown-anchor", p.code());
        assertTrue(p.message().contains("holeDiameter, minimumEdge, minimumConcrete"), p.message());
        String all = "anchor: {size: M24, holeDiameter: 28, embedment: 210, minimumEdge: 120, minimumConcrete: 270}";
        assertEquals(
                new Anchor("M24", 24, 28, 210, 120, 120, 270, 30, Cartridge.example(500, 15)),
                Definitions.of(FIVE + all).anchor());
        assertEquals("anchor-hole", only(FIVE + "anchor: {holeDiameter: 16}").code());
        assertEquals(20, Definitions.of(FIVE + "anchor: {size: m 20}").anchor().rodDiameter());
    }

    @Test
    void aliasesAreReadAndTheirEndlessUseIsNot() {
        String shared = FIVE + "basePlate: &p {width: 300}\nleanToBasePlate: *p\n";
        assertEquals(300, Definitions.of(shared).plates().leanToBase().width().orElseThrow());
        String laughs = "a0: &a0 [x, x]\n"
                + IntStream.range(1, 25)
                        .mapToObj(i -> "a%d: &a%d [*a%d, *a%d]\n".formatted(i, i, i - 1, i - 1))
                        .collect(Collectors.joining());
        assertEquals("too-large", only(laughs).code());
        assertEquals("too-large", only("a: &a [*a]").code());
    }

    @Test
    void placesAreKnownAfterwards() {
        Places places =
                read(FIVE + "leanTos:\n  - side: left\n    width: 3000\n").places();
        assertEquals(8, places.where("leanTos[0].width").line());
        assertEquals(7, places.where("leanTos[0].drop").line());
        assertEquals("leanTos[0].drop", places.where("leanTos[0].drop").path());
        assertEquals(1, places.where("groutGap").line());
    }

    private static final String CURE = "anchor: {adhesive: {cartridge: 400, priming: 20, cure: [";

    /** The user's label comes coldest first, and is no longer called an example. */
    @Test
    void theLabelsTimesReplaceOurs() {
        Cartridge own = Definitions.of(FIVE + CURE
                        + "{concrete: 25, workable: 6, dry: 0.75, wet: 1.5}, {concrete: 5, workable: 20, dry: 2,"
                        + " wet: 4}]}}\n")
                .anchor()
                .cartridge();
        assertEquals(
                new Cartridge(400, 20, List.of(new CureTime(5, 20, 2, 4), new CureTime(25, 6, 0.75, 1.5)), false), own);
        assertTrue(Definitions.of(FIVE).anchor().cartridge().example());
    }

    @Test
    void aLabelWithGapsIsTold() {
        assertEquals(
                "missing-key",
                only(FIVE + CURE + "{concrete: 25, workable: 6, dry: 1}]}}").code());
        assertEquals(
                "priming",
                only(FIVE + "anchor: {adhesive: {cartridge: 100, priming: 100}}")
                        .code());
        assertEquals("wrong-type", only(FIVE + "anchor: {adhesive: {cure: 20}}").code());
    }
}
