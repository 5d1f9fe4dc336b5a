package org.baywright.render.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.baywright.model.geometry.Vec2;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Stroke;
import org.baywright.render.paper.Pen;
import org.baywright.render.paper.Scale;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;

class ViewPortTest {
    private static final ViewPort FULL_SIZE = new ViewPort(new Scale(1), new Vec2(0, 0), new Vec2(0, 0));

    @Test
    void theMiddleOfTheViewLiesInTheMiddleOfTheRoom() {
        ViewPort port = ViewPort.fitted(new Envelope(0, 9000, 0, 5000), new Envelope(20, 220, 10, 130));
        assertEquals(new Scale(50), port.scale());
        assertEquals(new Vec2(120, 70), port.toPaper(new Vec2(4500, 2500)));
        assertEquals(new Vec2(30, 20), port.toPaper(new Vec2(0, 0)));
        assertEquals(20, port.toPaper(1000.0));
        assertThrows(IllegalArgumentException.class, () -> ViewPort.fitted(new Envelope(), new Envelope(0, 1, 0, 1)));
    }

    @Test
    void aRingOfLinesBecomesOneClosedStroke() {
        List<ViewLine> lines = List.of(
                line(0, 0, 100, 0, "A"), line(0, 80, 100, 80, "A"), line(0, 0, 0, 80, "A"), line(100, 0, 100, 80, "A"));
        List<Mark> marks = strokes(lines, FULL_SIZE);
        assertEquals(1, marks.size());
        Stroke stroke = (Stroke) marks.get(0);
        assertTrue(stroke.closed());
        assertEquals(4, stroke.points().size());
        assertEquals("A", stroke.part());
    }

    @Test
    void aChainIsFollowedBothWaysAndStopsAtAnotherPart() {
        ViewPort half = new ViewPort(new Scale(2), new Vec2(0, 0), new Vec2(10, 10));
        List<ViewLine> lines = List.of(
                line(10, 0, 20, 0, "A"), line(0, 10, 10, 0, "A"), line(20, 0, 30, 10, "A"), line(30, 10, 40, 10, "B"));
        List<Mark> marks = strokes(lines, half);
        assertEquals(2, marks.size());
        assertEquals(
                List.of(new Vec2(10, 15), new Vec2(15, 10), new Vec2(20, 10), new Vec2(25, 15)),
                ((Stroke) marks.get(0)).points());
    }

    @Test
    void everyLineIsDrawnOnce() {
        List<ViewLine> lines = HiddenLines.visible(LongShed.of(2), Projection.leftSide());
        double drawn = strokes(lines, FULL_SIZE).stream()
                .mapToDouble(m -> length((Stroke) m))
                .sum();
        assertEquals(lines.stream().mapToDouble(ViewLine::length).sum(), drawn, 1);
    }

    private static double length(Stroke stroke) {
        List<Vec2> points = stroke.points();
        double length = stroke.closed() ? points.get(0).distance(points.get(points.size() - 1)) : 0;
        for (int i = 1; i < points.size(); i++) {
            length += points.get(i - 1).distance(points.get(i));
        }
        return length;
    }

    private static List<Mark> strokes(List<ViewLine> lines, ViewPort port) {
        return ViewPort.strokes(lines, port, Pen.VISIBLE, Layer.STEEL);
    }

    private static ViewLine line(double x0, double y0, double x1, double y1, String part) {
        return new ViewLine(new Vec2(x0, y0), new Vec2(x1, y1), part);
    }
}
