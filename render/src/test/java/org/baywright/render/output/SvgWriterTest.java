package org.baywright.render.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.baywright.model.geometry.Vec2;
import org.baywright.render.mark.Arc;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Stroke;
import org.baywright.render.mark.Text;
import org.baywright.render.paper.Face;
import org.baywright.render.paper.Lettering;
import org.baywright.render.paper.Paper;
import org.baywright.render.paper.Pen;
import org.baywright.render.sheet.Sheet;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

class SvgWriterTest {
    private static Document read(Sheet sheet) throws Exception {
        StringBuilder svg = new StringBuilder();
        SvgWriter.write(sheet, svg);
        byte[] bytes = svg.toString().getBytes(StandardCharsets.UTF_8);
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new ByteArrayInputStream(bytes));
    }

    private static Document read(Mark... marks) throws Exception {
        return read(new Sheet(Paper.A3, "A-01", "One", List.of(marks)));
    }

    private static List<Element> elements(Document svg, String name) {
        var nodes = svg.getElementsByTagName(name);
        return IntStream.range(0, nodes.getLength())
                .mapToObj(i -> (Element) nodes.item(i))
                .toList();
    }

    @Test
    void aSheetOfEverythingIsWellFormedAndTrueToSize() throws Exception {
        Sheet sheet = SampleSheets.everything();
        Document svg = read(sheet);
        assertEquals("420mm", svg.getDocumentElement().getAttribute("width"));
        assertEquals("0 0 420 297", svg.getDocumentElement().getAttribute("viewBox"));
        assertEquals("A-01 Every mark", elements(svg, "title").get(0).getTextContent());
        int drawn = elements(svg, "path").size()
                + elements(svg, "circle").size()
                + elements(svg, "text").size();
        assertEquals(sheet.marks().size(), drawn);
    }

    @Test
    void linesAreFlippedAndNameTheirPartAndLayer() throws Exception {
        Element path = elements(
                        read(new Stroke(
                                List.of(new Vec2(10, 20), new Vec2(30.5, 297)), false, Pen.HIDDEN, Layer.STEEL, "C1")),
                        "path")
                .get(0);
        assertEquals("M10 277L30.5 0", path.getAttribute("d"));
        assertEquals("C1", path.getAttribute("data-part"));
        Element group = (Element) path.getParentNode();
        assertEquals("steel hidden", group.getAttribute("class"));
        assertEquals("0.25", group.getAttribute("stroke-width"));
        assertEquals("3 1.5", group.getAttribute("stroke-dasharray"));
    }

    @Test
    void aQuarterCircleTurnsAnticlockwise() throws Exception {
        Arc quarter = new Arc(new Vec2(100, 97), 10, 0, 90, Pen.VISIBLE, Layer.STEEL, "");
        assertEquals(
                "M110 200A10 10 0 0 0 100 190",
                elements(read(quarter), "path").get(0).getAttribute("d"));
    }

    @Test
    void textIsEscapedAndItsLengthStated() throws Exception {
        Text text = new Text(
                "<a> & \"b\"\u0007\u0000",
                new Vec2(50, 97),
                5,
                Text.Align.CENTRE,
                30,
                Face.BOLD,
                Layer.LABEL,
                "a\u0001&b");
        Element drawn = elements(read(text), "text").get(0);
        assertEquals("<a> & \"b\"", drawn.getTextContent());
        assertEquals("a&b", drawn.getAttribute("data-part"));
        assertEquals("rotate(-30 50 200)", drawn.getAttribute("transform"));
        assertEquals(
                Lettering.width("<a> & \"b\"", 5, Face.BOLD),
                Double.parseDouble(drawn.getAttribute("textLength")),
                0.001);
    }

    @Test
    void titlesFromOutsideCannotBreakTheFile() throws Exception {
        Document svg = read(new Sheet(Paper.A4, "<1>", "]]>\uD83D & \u0002\uFFFF <!--", List.of()));
        assertEquals("<1> ]]> &  <!--", elements(svg, "title").get(0).getTextContent());
        assertTrue(elements(svg, "g").isEmpty());
    }
}
