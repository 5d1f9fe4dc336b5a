package org.baywright.render.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.baywright.model.geometry.Vec2;
import org.baywright.render.mark.Arc;
import org.baywright.render.mark.Bounds;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Stroke;
import org.baywright.render.mark.Text;
import org.baywright.render.paper.Face;
import org.baywright.render.paper.Paper;
import org.baywright.render.paper.Pen;
import org.baywright.render.sheet.Sheet;
import org.baywright.render.sheet.SheetSet;
import org.junit.jupiter.api.Test;

class PdfContentTest {
    private static final float PIXELS_PER_MM = 4;

    private static String content(Mark... marks) throws IOException {
        try (PDDocument document = new PDDocument()) {
            PdfContent content = new PdfContent(new PdfFonts(document));
            List.of(marks).forEach(content::draw);
            return new String(content.bytes(), StandardCharsets.US_ASCII);
        }
    }

    private static Stroke line(double y, Pen pen) {
        return Stroke.line(new Vec2(1, y), new Vec2(2.5, y), pen, Layer.STEEL);
    }

    @Test
    void aPenIsStatedOnceForTheLinesThatShareIt() throws IOException {
        String stream = content(line(1, Pen.CUT), line(2, Pen.CUT), line(3, Pen.HIDDEN), line(4, Pen.GRID));
        assertEquals("""
                2.8346457 0 0 2.8346457 0 0 cm 1 j
                0.7 w []0 d 1 J
                1 1 m 2.5 1 l 1 2 m 2.5 2 l S
                0.25 w [3 1.5 ]0 d 0 J
                1 3 m 2.5 3 l S
                [8 1.5 1 1.5 ]0 d 0 J
                1 4 m 2.5 4 l S
                """, stream);
    }

    @Test
    void curvesKeepToTheCircle() throws IOException {
        Vec2 centre = new Vec2(100, 100);
        String stream = content(new Arc(centre, 50, 30, 200, Pen.CUT, Layer.STEEL, ""));
        String path = stream.substring(stream.indexOf("1 J\n") + 4);
        double[] n = java.util.Arrays.stream(path.split("[^-0-9.]+"))
                .mapToDouble(Double::parseDouble)
                .toArray();
        Vec2 from = new Vec2(n[0], n[1]);
        assertEquals(2 + 3 * 6, n.length, "three curves for 200 degrees");
        assertEquals(30, degrees(from, centre), 0.01);
        for (int i = 2; i < n.length; i += 6) {
            Vec2 to = new Vec2(n[i + 4], n[i + 5]);
            for (double t = 0; t <= 1; t += 0.05) {
                Vec2 on = from.times(Math.pow(1 - t, 3))
                        .plus(new Vec2(n[i], n[i + 1]).times(3 * t * (1 - t) * (1 - t)))
                        .plus(new Vec2(n[i + 2], n[i + 3]).times(3 * t * t * (1 - t)))
                        .plus(to.times(t * t * t));
                assertEquals(50, on.distance(centre), 50 * 0.0003);
            }
            from = to;
        }
        assertEquals(230 - 360, degrees(from, centre), 0.01);
    }

    private static double degrees(Vec2 point, Vec2 centre) {
        Vec2 arm = point.minus(centre);
        return Math.toDegrees(Math.atan2(arm.y(), arm.x()));
    }

    @Test
    void ringsInsideRingsAreHoles() throws IOException {
        BufferedImage page = render(SampleSheets.everything());
        assertEquals(0xCC, grey(page, 305, 240), 1);
        assertEquals(0xFF, grey(page, 318, 240));
        assertEquals(0, grey(page, 330, 240));
    }

    @Test
    void turnedTextStaysInItsBox() throws IOException {
        for (double turn : new double[] {0, 35, 90, 200}) {
            Text text = new Text("Ægypt|", new Vec2(200, 150), 20, Text.Align.RIGHT, turn, Face.BOLD, Layer.LABEL, "");
            BufferedImage page = render(new Sheet(Paper.A3, "1", "Text", List.of(text)));
            List<Vec2> box = Bounds.corners(text);
            int ink = 0;
            for (double x = 0.5; x < 420; x += 0.5) {
                for (double y = 0.5; y < 297; y += 0.5) {
                    if (grey(page, x, y) < 128) {
                        ink++;
                        assertTrue(inside(box, new Vec2(x, y)), "ink at " + x + " " + y + " turned " + turn);
                    }
                }
            }
            assertTrue(ink > 2000, "letters are drawn");
        }
    }

    private static boolean inside(List<Vec2> box, Vec2 point) {
        double slack = 0.4;
        for (int i = 0; i < 4; i++) {
            Vec2 side = box.get((i + 1) % 4).minus(box.get(i)).unit();
            if (side.cross(point.minus(box.get(i))) < -slack) {
                return false;
            }
        }
        return true;
    }

    private static BufferedImage render(Sheet sheet) throws IOException {
        byte[] pdf = PdfWriterTest.pdf(new SheetSet("t", "", "s", List.of(sheet)));
        try (PDDocument read = Loader.loadPDF(pdf)) {
            return new PDFRenderer(read).renderImage(0, (float) (PIXELS_PER_MM / PdfWriter.POINTS_PER_MM));
        }
    }

    private static int grey(BufferedImage page, double x, double y) {
        int row = (int) (page.getHeight() - y * PIXELS_PER_MM);
        return page.getRGB((int) (x * PIXELS_PER_MM), row) & 0xFF;
    }
}
