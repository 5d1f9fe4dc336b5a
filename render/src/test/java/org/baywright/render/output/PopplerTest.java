package org.baywright.render.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.baywright.render.paper.Face;
import org.baywright.render.paper.Lettering;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The PDF as another program sees it. */
class PopplerTest {
    private static final double MM = 25.4 / 72;

    @TempDir
    Path folder;

    @Test
    void pageSizeIsReadBack() throws Exception {
        Matcher size = find("Page size: +([0-9.]+) x ([0-9.]+) pts", run("pdfinfo"));
        assertEquals(420, Double.parseDouble(size.group(1)) * MM, 0.01);
        assertEquals(297, Double.parseDouble(size.group(2)) * MM, 0.01);
    }

    @Test
    void levelTextStandsWhereItWasPut() throws Exception {
        String page = run("pdftotext", "-bbox", "-f", "2", "-l", "2");
        Matcher word = find("xMin=\"([0-9.]+)\" yMin=\"([0-9.]+)\" xMax=\"([0-9.]+)\" yMax=\"([0-9.]+)\">C1<", page);
        assertEquals(30, Double.parseDouble(word.group(1)) * MM, 0.01);
        assertEquals(30 + Lettering.width("C1", 5, Face.BOLD), Double.parseDouble(word.group(3)) * MM, 0.02);
        double top = 210 - Double.parseDouble(word.group(2)) * MM;
        double foot = 210 - Double.parseDouble(word.group(4)) * MM;
        assertTrue(foot < 40 && foot > 40 - 3, "foot at " + foot);
        assertTrue(top > 45 && top < 45 + 3, "top at " + top);
    }

    @Test
    void rightAlignedTextEndsAtItsPoint() throws Exception {
        String page = run("pdftotext", "-bbox", "-f", "1", "-l", "1");
        Matcher word = find("xMax=\"([0-9.]+)\" yMax=\"[0-9.]+\">&lt;bold&gt;<", page);
        assertEquals(400, Double.parseDouble(word.group(1)) * MM, 0.02);
    }

    private String run(String program, String... options) throws Exception {
        assumeTrue(onPath(program), program + " is not on this machine");
        Path file = folder.resolve("sample.pdf");
        Files.write(file, PdfWriterTest.pdf(SampleSheets.set()));
        List<String> command = Stream.of(
                        List.of(program),
                        List.of(options),
                        List.of(file.toString()),
                        program.equals("pdftotext") ? List.of("-") : List.<String>of())
                .flatMap(List::stream)
                .toList();
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, process.waitFor(), output);
        return output;
    }

    private static boolean onPath(String program) throws IOException {
        return Stream.of(System.getenv("PATH").split(java.io.File.pathSeparator))
                .anyMatch(folder -> Files.isExecutable(Path.of(folder, program)));
    }

    private static Matcher find(String pattern, String text) {
        Matcher matcher = Pattern.compile(pattern).matcher(text);
        assertTrue(matcher.find(), text);
        return matcher;
    }
}
