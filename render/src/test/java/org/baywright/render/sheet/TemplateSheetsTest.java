package org.baywright.render.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.baywright.model.cladding.Building;
import org.baywright.model.definition.Definitions;
import org.baywright.model.geometry.Vec2;
import org.baywright.render.dimension.TurnedBox;
import org.baywright.render.mark.Text;
import org.baywright.render.output.PdfWriter;
import org.junit.jupiter.api.Test;

/** Templates as they come out of a printer at 100 %: measured in the PDF's own points. */
class TemplateSheetsTest {
    private static final String SHED = "span: 12000\nbays: 2\nbaySpacing: 6000\neaveHeight: 4200\nroofPitch: 10\n"
            + "column: SHS 100x100x5\nanchor: {size: M16}\nenvelope: none\n";
    private static final double MM = 25.4 / 72;
    private static final double EXACT = 0.01;

    private record Line(Vec2 from, Vec2 to) {
        boolean isLevel(double length) {
            return Math.abs(from.y() - to.y()) < EXACT && Math.abs(from.distance(to) - length) < EXACT;
        }

        boolean isUpright(double length) {
            return Math.abs(from.x() - to.x()) < EXACT && Math.abs(from.distance(to) - length) < EXACT;
        }

        Vec2 middle() {
            return from.plus(to).times(0.5);
        }
    }

    private static byte[] pdf(String yaml) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        PdfWriter.write(TemplateSheets.of(Building.of(Definitions.of(yaml))), bytes);
        return bytes.toByteArray();
    }

    /** Straight lines of two points, in millimetres of the page, as the content stream puts them there. */
    private static List<Line> lines(PDPage page) throws IOException {
        List<Line> lines = new ArrayList<>();
        List<Double> numbers = new ArrayList<>();
        double scale = 1;
        Vec2 at = null;
        for (Object token : new PDFStreamParser(page).parse()) {
            if (token instanceof COSNumber number) {
                numbers.add((double) number.floatValue());
            } else if (token instanceof Operator operator) {
                int n = numbers.size();
                switch (operator.getName()) {
                    case "cm" -> scale *= numbers.get(n - 6);
                    case "m" -> at = new Vec2(numbers.get(n - 2), numbers.get(n - 1)).times(scale * MM);
                    case "l" -> {
                        Vec2 to = new Vec2(numbers.get(n - 2), numbers.get(n - 1)).times(scale * MM);
                        lines.add(new Line(at, to));
                        at = to;
                    }
                    default -> {
                        // text and pens
                    }
                }
                numbers.clear();
            }
        }
        return lines;
    }

    @Test
    void aPlateOf240FitsOneA3AtTrueSize() throws IOException {
        try (PDDocument pdf = Loader.loadPDF(pdf(SHED))) {
            assertEquals(1, pdf.getNumberOfPages());
            PDPage page = pdf.getPage(0);
            assertEquals(420, page.getMediaBox().getWidth() * MM, EXACT);
            assertEquals(297, page.getMediaBox().getHeight() * MM, EXACT);
            List<Line> lines = lines(page);
            // The column is 100 wide too; the check scales lie outside the plate.
            List<Line> outside = lines.stream()
                    .filter(l -> Math.min(l.from().x(), l.to().x()) < 20)
                    .toList();
            assertEquals(1, outside.stream().filter(l -> l.isLevel(100)).count(), "check scale across");
            assertEquals(1, outside.stream().filter(l -> l.isUpright(100)).count(), "check scale up");
            // A cross over a 22 hole is 30 each way; the holes of BP1 are 170 apart, see PieceSheetsTest.
            List<Vec2> holes =
                    lines.stream().filter(l -> l.isLevel(30)).map(Line::middle).toList();
            assertEquals(4, holes.size());
            assertEquals(170, holes.get(0).distance(holes.get(1)), EXACT);
            assertEquals(170, holes.get(1).distance(holes.get(2)), EXACT);
            assertEquals(170 * Math.sqrt(2), holes.get(0).distance(holes.get(2)), EXACT);
            String words = new PDFTextStripper().getText(pdf);
            assertTrue(
                    words.contains("PRINT AT 100 %, NO FITTING") && words.contains("MEASURE BEFORE YOU DRILL"), words);
        }
    }

    /** The register crosses of neighbouring sheets lie on each other when one is moved by the sheet less the overlap. */
    @Test
    void aLargePlateGoesOverSheetsThatJoin() throws IOException {
        try (PDDocument pdf = Loader.loadPDF(pdf(SHED + "basePlate: {width: 700, depth: 200}\n"))) {
            assertEquals(2, pdf.getNumberOfPages());
            List<Vec2> left = crosses(pdf.getPage(0));
            List<Vec2> right = crosses(pdf.getPage(1));
            assertEquals(2, left.size());
            assertEquals(2, right.size());
            Vec2 first = left.get(0).minus(right.get(0));
            Vec2 second = left.get(1).minus(right.get(1));
            assertEquals(0, first.distance(second), EXACT);
            assertEquals(0, first.y(), EXACT);
            // The same step carries a hole line of the right-hand sheet to the left-hand one: 700 − 2·35 between holes.
            Vec2 a = holes(pdf.getPage(0)).get(0);
            Vec2 b = holes(pdf.getPage(1)).get(0).plus(first);
            assertEquals(630, Math.abs(a.x() - b.x()), EXACT);
        }
    }

    private static List<Vec2> crosses(PDPage page) throws IOException {
        return lines(page).stream()
                .filter(l -> l.isLevel(12))
                .map(Line::middle)
                .distinct()
                .toList();
    }

    private static List<Vec2> holes(PDPage page) throws IOException {
        return lines(page).stream().filter(l -> l.isLevel(30)).map(Line::middle).toList();
    }

    @Test
    void wordsStandClearOnEveryPaper() {
        String mixed = SHED.replace("envelope: none", "envelope: full")
                + "openings:\n  - {type: rollerDoor, wall: front}\nbasePlate: {width: 700, depth: 500}\n";
        for (Sheet sheet : TemplateSheets.of(Building.of(Definitions.of(mixed))).sheets()) {
            List<TurnedBox> boxes = sheet.marks().stream()
                    .filter(Text.class::isInstance)
                    .map(m -> TurnedBox.of((Text) m))
                    .toList();
            for (int i = 0; i < boxes.size(); i++) {
                var box = boxes.get(i).envelope();
                assertTrue(box.getMinX() > 5 && box.getMinY() > 5, () -> sheet.number() + " too near the edge");
                assertTrue(box.getMaxX() < sheet.paper().width() - 5, () -> sheet.number() + " too near the edge");
                for (int j = 0; j < i; j++) {
                    assertTrue(!boxes.get(i).overlaps(boxes.get(j)), () -> sheet.number() + ": words on words");
                }
            }
        }
    }
}
