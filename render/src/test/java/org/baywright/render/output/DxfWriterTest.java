package org.baywright.render.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.baywright.model.definition.Definitions;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.parts.Hole;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.Shed;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Plates as another program reads them: ezdxf, of Debian's python3-ezdxf, which shares nothing with the writer. */
class DxfWriterTest {
    private static final String SHED = "span: 12000\nbays: 3\nbaySpacing: 5500\neaveHeight: 4300\nroofPitch: 11\n"
            + "basePlate: {holes: 6}\nenvelope: full\n"
            + "leanTos:\n  - {side: right, width: 4000, pitch: 5, drop: 600}\n";

    /** Prints each file's version, closed outlines and circles, and whatever the program's own check complains of. */
    private static final String READER = String.join(
            "\n",
            "import sys, ezdxf",
            "from ezdxf.disassemble import make_primitive",
            "for name in sys.argv[1:]:",
            "    doc = ezdxf.readfile(name)",
            "    print('file', doc.dxfversion, len(doc.audit().errors), len(list(doc.modelspace())))",
            "    for e in doc.modelspace():",
            "        if e.dxftype() == 'POLYLINE' and e.dxf.layer == 'HOLES':",
            "            p = list(make_primitive(e).path.flattening(0.0001))",
            "            q = p[1:] + p[:1]",
            "            area = sum(a.x * b.y - b.x * a.y for a, b in zip(p, q)) / 2",
            "            xs = [v.x for v in p]; ys = [v.y for v in p]",
            "            print('slot', e.dxf.layer, e.is_closed, '%.6f %.6f %.6f' % (round((min(xs) + max(xs)) / 2, 3) + 0,"
                    + " round((min(ys) + max(ys)) / 2, 3) + 0, round(area, -1)))",
            "        elif e.dxftype() == 'POLYLINE':",
            "            print('outline', e.dxf.layer, e.is_closed,"
                    + " ' '.join('%.6f,%.6f' % (v.dxf.location.x, v.dxf.location.y) for v in e.vertices))",
            "        else:",
            "            print(e.dxftype(), e.dxf.layer,"
                    + " '%.6f %.6f %.6f' % (e.dxf.center.x, e.dxf.center.y, 2 * e.dxf.radius))");

    @TempDir
    Path folder;

    @Test
    void anotherProgramReadsTheSameOutlinesAndHoles() throws Exception {
        Optional<String> python = python();
        assumeTrue(python.isPresent(), "no Python with ezdxf on this machine");
        List<Part> plates = Shed.of(Definitions.of(SHED)).parts().stream()
                .filter(p -> !p.kind().isMember())
                .toList();
        assertTrue(plates.size() > 8, "plates " + plates.size());
        List<String> command = new ArrayList<>(List.of(python.get(), "-c", READER));
        List<String> expected = new ArrayList<>();
        for (Part plate : plates) {
            Path file = folder.resolve(plate.mark() + ".dxf");
            Files.writeString(file, dxf(plate), StandardCharsets.US_ASCII);
            command.add(file.toString());
            expected.addAll(model(plate));
        }
        assertEquals(expected, run(command).lines().toList());
    }

    /** What the reader must find, from the model alone. */
    private static List<String> model(Part plate) {
        List<String> lines = new ArrayList<>();
        lines.add("file AC1009 0 " + (1 + plate.holes().size()));
        List<Vec2> ring = plate.solid().profile().outline();
        lines.add("outline OUTLINE True "
                + String.join(
                        " ",
                        ring.stream().map(v -> six(v.x()) + "," + six(v.y())).toList()));
        for (Hole h : plate.holes()) {
            lines.add(
                    h.isSlot()
                            ? "slot HOLES True " + middle(h) + " " + six(10 * Math.rint(h.area() / 10))
                            : "CIRCLE HOLES " + middle(h) + " " + six(h.diameter()));
        }
        return lines;
    }

    private static String middle(Hole h) {
        return six(h.at().x()) + " " + six(h.at().y());
    }

    /** To a thousandth, as the file holds it, with six places. */
    private static String six(double mm) {
        return String.format(Locale.ROOT, "%.6f", Math.round(mm * 1000) / 1000.0 + 0.0);
    }

    @Test
    void linesArePairsOfCodeAndValueInAscii() throws IOException {
        Part plate = Shed.of(Definitions.of(SHED)).parts().stream()
                .filter(p -> p.mark().equals("BP1"))
                .findFirst()
                .orElseThrow();
        String[] lines = dxf(plate).split("\r\n", -1);
        assertEquals(1, lines.length % 2, "pairs and an empty end");
        for (int i = 0; i + 1 < lines.length; i += 2) {
            assertEquals(3, lines[i].length());
            Integer.parseInt(lines[i].strip());
        }
        assertTrue(dxf(plate).chars().allMatch(c -> c < 128));
        assertTrue(dxf(plate).contains("millimetres"));
    }

    private static String dxf(Part plate) throws IOException {
        StringWriter text = new StringWriter();
        DxfWriter.write(plate, text);
        return text.toString();
    }

    private static Optional<String> python() {
        return Stream.of("/usr/bin/python3", "python3")
                .filter(name -> {
                    try {
                        run(List.of(name, "-c", "import ezdxf"));
                        return true;
                    } catch (Exception | AssertionError e) {
                        return false;
                    }
                })
                .findFirst();
    }

    private static String run(List<String> command) throws Exception {
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, process.waitFor(), output);
        return output;
    }
}
