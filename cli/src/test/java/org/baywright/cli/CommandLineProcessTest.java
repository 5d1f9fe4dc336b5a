package org.baywright.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The commands in a process of their own, as a user runs them. */
class CommandLineProcessTest {
    private static final String FIVE_NUMBERS =
            "span: 12000\nbays: 3\nbaySpacing: 6000\neaveHeight: 4200\nroofPitch: 10\n";

    @TempDir
    private Path folder;

    private record Run(int code, String out, String err) {}

    private Run run(String input, String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                "org.baywright.cli.Baywright"));
        command.addAll(Arrays.asList(arguments));
        Path out = folder.resolve("stdout");
        Path err = folder.resolve("stderr");
        Path in = Files.writeString(folder.resolve("stdin"), input);
        Process process = new ProcessBuilder(command)
                .redirectInput(in.toFile())
                .redirectOutput(out.toFile())
                .redirectError(err.toFile())
                .start();
        return new Run(process.waitFor(), Files.readString(out), Files.readString(err));
    }

    private static Set<String> names(Path in) throws IOException {
        try (Stream<Path> files = Files.list(in)) {
            return files.map(f -> f.getFileName().toString()).collect(Collectors.toSet());
        }
    }

    @Test
    void makeWritesEverythingFromFiveNumbersAndTwiceTheSame() throws Exception {
        Path first = folder.resolve("first");
        Run run = run(FIVE_NUMBERS, "make", "-", "--out", first.toString());
        assertEquals(Baywright.DONE, run.code, run.err);
        Set<String> documents = new TreeSet<>(names(first));
        assertTrue(documents.removeIf(name -> name.matches("plate-[A-Z]+[0-9]+\\.dxf")), "plates for profile cutting");
        assertEquals(
                Set.of(
                        "drawings.pdf",
                        "order.pdf",
                        "order.xlsx",
                        "bill-of-materials.csv",
                        "setout.pdf",
                        "setout.csv",
                        "piece-drawings.pdf",
                        "templates.pdf",
                        "shop.pdf",
                        "cut-list.pdf",
                        "cut-list.csv",
                        "cutting-plan.pdf",
                        "cutting-plan.csv",
                        "parts.csv",
                        "summary.json"),
                documents);
        JsonNode summary =
                new ObjectMapper().readTree(first.resolve("summary.json").toFile());
        assertEquals(4, summary.get("frames").asInt());
        assertEquals(8, summary.get("columns").asInt());
        assertEquals(48, summary.get("anchors").asInt());
        assertEquals(5258.0, summary.get("apexHeightMm").asDouble(), 0.05);
        assertTrue(Files.readString(first.resolve("parts.csv"))
                .startsWith("mark,part,section,grade,quantity,stock_length_mm,long_edge_mm,short_edge_mm,"
                        + "cut_a_deg,cut_b_deg,cut_form,mass_each_kg,mass_total_kg\r\nC1,column,"));

        Path second = folder.resolve("second");
        assertEquals(Baywright.DONE, run(FIVE_NUMBERS, "make", "-", "--out", second.toString()).code);
        for (String name : names(first)) {
            assertArrayEquals(Files.readAllBytes(first.resolve(name)), Files.readAllBytes(second.resolve(name)), name);
        }
    }

    /** Columns of 3957.54 along the middle pair up: two and their cut in 8000, as 8 columns in 4 bars. */
    @Test
    void cutPlansAShedAndTheOrderBuysTheSameBars() throws Exception {
        Path out = folder.resolve("cut");
        Run run = run(FIVE_NUMBERS, "cut", "-", "--out", out.toString());
        assertEquals(Baywright.DONE, run.code, run.err);
        assertTrue(run.out.contains("SHS 100x100x5: 4 bars, 1 layout, 32.0 m bought"), run.out);
        String[] lines = run.out.strip().split("\n");
        String sum = lines[lines.length - 1];
        assertTrue(sum.matches("bars \\d+ purchased_mm \\d+ lower_bound_mm \\d+ proven (true|false)"), sum);
        JsonNode summary =
                new ObjectMapper().readTree(out.resolve("summary.json").toFile());
        assertTrue(sum.startsWith("bars " + summary.get("barsToBuy").asInt() + " "), sum);
        assertTrue(summary.get("cuttingProven").isBoolean());
        assertTrue(Files.readString(out.resolve("cutting-plan.csv")).contains("SHS 100x100x5,4,1,8000.0,stock,2,C1,"));
        assertTrue(Files.readString(out.resolve("cut-list.csv"))
                .contains("SHS 100x100x5,C1,column,8,3966.4,3966.4,3948.7,0.00,,10.00,top,depth,"));

        Path order = folder.resolve("order");
        String yard = "SHS 100x100x5:8000x3";
        Run ordered = run(FIVE_NUMBERS, "order", "-", "--out", order.toString(), "--offcuts", yard);
        assertEquals(Baywright.DONE, ordered.code, ordered.err);
        String bill = Files.readString(order.resolve("bill-of-materials.csv"));
        assertTrue(bill.contains("SHS 100x100x5,C350L0 AS/NZS 1163,8000.0,1,m"), bill);

        Run both = run(FIVE_NUMBERS, "cut", "-", "--list", "-", "--stock", "8000");
        assertEquals(Baywright.WRONG_USE, both.code);
        assertTrue(both.err.contains("not both"), both.err);
        assertEquals(Baywright.WRONG_USE, run("", "cut", "--stock", "8000").code);
        Run unknown = run(FIVE_NUMBERS, "cut", "-", "--stock", "SHS 1x1x1:8000");
        assertEquals(Baywright.WRONG_USE, unknown.code);
        assertTrue(unknown.err.contains("SHS 100x100x5"), unknown.err);
        Run list = run("length_mm,quantity\n3000,4\n", "cut", "--list", "-", "--stock", "6020");
        assertTrue(list.out.strip().endsWith("bars 2 purchased_mm 12040 lower_bound_mm 12040 proven true"), list.out);
    }

    @Test
    void piecesThatOnlyTheYardTakesAreToldWhenItHasTooFew() throws Exception {
        Path out = folder.resolve("out");
        String stock = "SHS 100x100x5:3000";
        String yard = "SHS 100x100x5:4000x3";
        Run order = run(FIVE_NUMBERS, "order", "-", "--out", out.toString(), "--stock", stock, "--offcuts", yard);
        assertEquals(Baywright.DONE, order.code, order.err);
        assertTrue(order.err.contains("advice: --offcuts: the yard's bars take all but 5 of piece C1"), order.err);
        assertTrue(order.err.contains("ordered as 5 of 3980"), order.err);
        String bill = Files.readString(out.resolve("bill-of-materials.csv"));
        assertTrue(bill.contains("SHS 100x100x5,C350L0 AS/NZS 1163,3980.0,5,m"), bill);

        Run list = run("length_mm,quantity\n5000,3\n", "cut", "--list", "-", "--stock", "3000", "--offcuts", "6000x2");
        assertEquals(Baywright.PROBLEMS, list.code);
        assertTrue(list.err.contains(":2:1 length_mm: no way was found to cut 3 x 5000.0"), list.err);
    }

    @Test
    void setoutWritesSheetsAndCoordinatesAndTellsOfBars() throws Exception {
        Path out = folder.resolve("out");
        Run run = run(
                FIVE_NUMBERS + "slab: {bars: {diameter: 12, spacing: [200, 210], offset: 135}}\n",
                "setout",
                "-",
                "--out",
                out.toString());
        assertEquals(Baywright.DONE, run.code, run.err);
        assertEquals(Set.of("setout.pdf", "setout.csv", "parts.csv", "summary.json"), names(out));
        assertTrue(run.err.contains("[anchor-hits-bar]"), run.err);
        List<String> lines = Files.readAllLines(out.resolve("setout.csv"));
        assertEquals(1 + 12 + 48, lines.size());
        assertEquals("A/1,BP1,C1,hole,3,135.0,135.0,0,0.0,20.0,36.0,hit", lines.get(4));
        Run wrong = run(FIVE_NUMBERS, "setout", "-", "--out", out.toString(), "--set", "slab.beyond=114");
        assertEquals(Baywright.PROBLEMS, wrong.code);
        assertTrue(wrong.err.contains("[anchor-off-edge]"), wrong.err);
    }

    @Test
    void shopWritesItsSheetsAndTheSummaryCarriesTheirFigures() throws Exception {
        Path out = folder.resolve("out");
        Run run = run(FIVE_NUMBERS, "shop", "-", "--out", out.toString());
        assertEquals(Baywright.DONE, run.code, run.err);
        assertEquals(Set.of("shop.pdf", "parts.csv", "summary.json"), names(out));
        JsonNode summary =
                new ObjectMapper().readTree(out.resolve("summary.json").toFile());
        for (String figure : Set.of(
                "anchorDrillingM", "adhesiveMl", "cartridges", "concreteM3", "meshSheets", "electrodeKg", "paintL")) {
            assertTrue(summary.path(figure).asDouble() > 0, figure);
        }
    }

    @Test
    void pricesReachSummaryAndBillAndFaultsInThemWriteNothing() throws Exception {
        Path out = folder.resolve("out");
        Path prices = Files.writeString(
                folder.resolve("prices.csv"), "item,unit,price,currency\nSHS 100x100x5,m,10,AUD\nRHS 1x1x1,m,1,AUD\n");
        Run run = run(FIVE_NUMBERS, "order", "-", "--out", out.toString(), "--prices", prices.toString());
        assertEquals(Baywright.DONE, run.code, run.err);
        JsonNode summary =
                new ObjectMapper().readTree(out.resolve("summary.json").toFile());
        assertTrue(summary.get("costOfPricedLines").asDouble() > 0);
        assertFalse(summary.has("totalCost"), "a part of the cost is not the total");
        assertTrue(summary.get("unpricedLines").asInt() > 0);
        assertTrue(run.err.contains("without a price"), run.err);
        assertTrue(run.err.contains("RHS 200x100x5 (per m)"), run.err);
        assertTrue(run.err.contains("not in this bill: RHS 1x1x1"), run.err);
        assertTrue(Files.readString(out.resolve("bill-of-materials.csv")).contains("price,price_unit,cost,currency"));

        Path bad = Files.writeString(folder.resolve("bad.csv"), "item,unit,price\nSHS 100x100x5,m,ten\n");
        Path none = folder.resolve("none");
        Run failed = run(FIVE_NUMBERS, "make", "-", "--out", none.toString(), "--prices", bad.toString());
        assertEquals(Baywright.PROBLEMS, failed.code);
        assertTrue(failed.err.contains("bad.csv:2:1 price: 'ten' is not a price"), failed.err);
        assertFalse(Files.exists(none));
        assertEquals(
                Baywright.NO_FILE,
                run(FIVE_NUMBERS, "order", "-", "--out", none.toString(), "--prices", "nowhere.csv").code);
    }

    @Test
    void theSamplePriceListReadsAndNamesThingsOfAUsualShed() throws Exception {
        Path out = folder.resolve("out");
        Path sample = Path.of("..", "templates", "price-list.csv");
        Run run = run(
                FIVE_NUMBERS + "envelope: full\n",
                "order",
                "-",
                "--out",
                out.toString(),
                "--prices",
                sample.toString());
        assertEquals(Baywright.DONE, run.code, run.err);
        assertTrue(Files.readString(sample).startsWith("# Invented prices"));
    }

    /** With the sample list every line of every starter's bill has a price. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "hay-shed",
                "lean-shelter",
                "lifting-shed",
                "machinery-shed",
                "own-section",
                "twin-lean-to",
                "workshop"
            })
    void theSamplePriceListPricesTheStarters(String starter) throws Exception {
        Path out = folder.resolve(starter);
        Path templates = Path.of("..", "templates");
        String list = templates.resolve("price-list.csv").toString();
        String file = templates.resolve(starter + ".yaml").toString();
        Run run = run("", "order", file, "--out", out.toString(), "--time", "1", "--prices", list);
        assertEquals(Baywright.DONE, run.code, run.err);
        JsonNode summary =
                new ObjectMapper().readTree(out.resolve("summary.json").toFile());
        assertEquals(0, summary.get("unpricedLines").asInt(), run.err);
        assertTrue(summary.get("totalCost").asDouble() > 0);
    }

    @Test
    void problemsAreAllToldAndNothingIsWritten() throws Exception {
        Path out = folder.resolve("out");
        Run run = run(
                "span: -3\nbays: 0\nbaySpacing: 6000\neaveHieght: 4200\nroofPitch: 10\n",
                "make",
                "-",
                "--out",
                out.toString());
        assertEquals(Baywright.PROBLEMS, run.code);
        assertTrue(run.err.contains("standard input:1:7 span"), run.err);
        assertTrue(run.err.contains("standard input:2:7 bays"), run.err);
        assertTrue(run.err.contains("did you mean eaveHeight?"), run.err);
        assertEquals("", run.out);
        assertFalse(Files.exists(out));
    }

    @Test
    void formerOutputStaysWhenTheDefinitionIsWrong() throws Exception {
        Path out = folder.resolve("out");
        assertEquals(Baywright.DONE, run(FIVE_NUMBERS, "order", "-", "--out", out.toString()).code);
        byte[] before = Files.readAllBytes(out.resolve("parts.csv"));
        assertEquals(
                Baywright.PROBLEMS,
                run(FIVE_NUMBERS, "order", "-", "--out", out.toString(), "--set", "roofPitch=99").code);
        assertArrayEquals(before, Files.readAllBytes(out.resolve("parts.csv")));
    }

    /** Told to stop while files are being written, as by Ctrl-C. */
    @Test
    void aStoppedRunLeavesNoHalfWrittenFile() throws Exception {
        Path out = folder.resolve("out");
        Path shed = Files.writeString(folder.resolve("shed.yaml"), FIVE_NUMBERS);
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        "org.baywright.cli.Baywright",
                        "make",
                        shed.toString(),
                        "--out",
                        out.toString())
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("log").toFile())
                .start();
        while (process.isAlive() && (Files.notExists(out) || names(out).isEmpty())) {
            Thread.sleep(1);
        }
        process.destroy();
        assertTrue(process.waitFor() != Baywright.DONE);
        assertFalse(Files.exists(out));
    }

    @Test
    void exitCodes() throws Exception {
        assertEquals(Baywright.DONE, run("", "--help").code);
        assertEquals(Baywright.DONE, run("", "check", "--help").code);
        assertEquals(Baywright.DONE, run("", "--version").code);
        assertEquals(Baywright.WRONG_USE, run("", "chekc").code);
        assertEquals(Baywright.WRONG_USE, run("", "draw", "-").code);
        assertEquals(
                Baywright.NO_FILE, run("", "check", folder.resolve("none.yaml").toString()).code);
        Path file = Files.writeString(folder.resolve("file"), "in the way");
        assertEquals(
                Baywright.NO_FILE,
                run(FIVE_NUMBERS, "draw", "-", "--out", file.resolve("sub").toString()).code);
    }

    /** What is wrong comes first and the whole help never: it would push the message out of sight. */
    @Test
    void wrongUseIsToldInALineWithWhatWasMeant() throws Exception {
        assertEquals(
                "baywright: 'mkae' is not a command; did you mean make?\n       for help: baywright --help\n",
                run("", "mkae").err);
        assertEquals(
                "baywright: there is no starter 'hayshed'; did you mean hay-shed?\n"
                        + "       for help: baywright start --help\n",
                run("", "start", "hayshed").err);
        assertEquals(
                "baywright: '--ouy=x' is not an option here; did you mean --out?\n"
                        + "       for help: baywright draw --help\n",
                run("", "draw", "-", "--ouy=x").err);
        assertTrue(run("", "check", "-", "b.yaml").err.startsWith("baywright: 'b.yaml' is one word too many"));
        assertTrue(run("", "order", "-", "--out", "x", "--kerf", "3f").err.contains("'3f' is not a number"));
        Run missing = run("", "draw", "-");
        assertTrue(missing.err.contains("'--out=DIR'") && missing.err.lines().count() == 2, missing.err);
    }

    @Test
    void theHelpOfMakeNamesEveryFileItWrites() throws Exception {
        String help = run("", "make", "--help").out.replaceAll("\\s+", "");
        Stream.concat(Outputs.DOCUMENTS.stream(), Stream.of("parts.csv", "summary.json", "plate-MARK.dxf"))
                .forEach(name -> assertTrue(help.contains(name), name));
    }

    @Test
    void theCouncilSetIsAskedForByName() throws Exception {
        String out = folder.resolve("council").toString();
        assertEquals(Baywright.DONE, run(FIVE_NUMBERS, "draw", "-", "--out", out, "--sheets", "council").code);
        Run wrong = run(FIVE_NUMBERS, "draw", "-", "--out", out, "--sheets", "counsel");
        assertEquals(Baywright.WRONG_USE, wrong.code);
        assertTrue(wrong.err.contains("'counsel' is no set of sheets; write council or all"), wrong.err);
    }

    @Test
    void overridesReachTheModelAndFiguresArePrinted() throws Exception {
        Run run = run(
                FIVE_NUMBERS, "check", "-", "--set", "roofPitch=15", "--set", "leanTos=[{side: left, width: 3500}]");
        assertEquals(Baywright.DONE, run.code, run.err);
        assertTrue(run.out.contains("15 degrees"), run.out);
        assertTrue(run.out.contains("4 lean-to columns"), run.out);
    }

    @Test
    void everyStarterIsListedCopiedOnceAndMakes() throws Exception {
        Run list = run("", "start");
        assertEquals(
                Starters.names(), list.out.lines().map(l -> l.split(" ")[0]).toList());
        Path copy = folder.resolve("mine.yaml");
        assertEquals(Baywright.DONE, run("", "start", "hay-shed", copy.toString()).code);
        assertEquals(Baywright.NO_FILE, run("", "start", "hay-shed", copy.toString()).code);
        assertEquals(Baywright.WRONG_USE, run("", "start", "palace").code);
        Run made =
                run("", "draw", copy.toString(), "--out", folder.resolve("out").toString(), "--svg");
        assertEquals(Baywright.DONE, made.code, made.err);
        assertTrue(names(folder.resolve("out")).contains("sheet-S0.svg"));
    }

    @Test
    void startersAreThoseInTheTemplatesFolder() throws Exception {
        assertEquals(
                names(Path.of("..", "templates")).stream()
                        .filter(n -> n.endsWith(".yaml"))
                        .collect(Collectors.toSet()),
                Starters.names().stream().map(n -> n + ".yaml").collect(Collectors.toSet()));
        for (String name : Starters.names()) {
            String text = new String(Starters.text(name), StandardCharsets.UTF_8);
            Run run = run(text, "check", "-");
            assertEquals(Baywright.DONE, run.code, name + ": " + run.err);
        }
    }
}
