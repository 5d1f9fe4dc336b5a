package org.baywright.render.mark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.baywright.model.geometry.Vec2;
import org.baywright.render.paper.Face;
import org.baywright.render.paper.Lettering;
import org.baywright.render.paper.Pen;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;

class BoundsTest {
    private static final double EXACT = 1e-9;

    private static void assertBox(double left, double low, double right, double top, Envelope box) {
        assertEquals(left, box.getMinX(), EXACT);
        assertEquals(low, box.getMinY(), EXACT);
        assertEquals(right, box.getMaxX(), EXACT);
        assertEquals(top, box.getMaxY(), EXACT);
    }

    @Test
    void aLineIsAsWideAsItsPen() {
        Mark line = Stroke.line(new Vec2(0, 0), new Vec2(10, 0), Pen.OUTLINE, Layer.STEEL);
        assertBox(-0.25, -0.25, 10.25, 0.25, Bounds.of(line));
    }

    @Test
    void anArcReachesWhereItTurnsBack() {
        double half = Pen.VISIBLE.width() / 2;
        Arc overTop = new Arc(new Vec2(0, 0), 10, 60, 60, Pen.VISIBLE, Layer.STEEL, "");
        assertBox(-5 - half, 10 * Math.sin(Math.PI / 3) - half, 5 + half, 10 + half, Bounds.of(overTop));
        Arc circle = Arc.circle(new Vec2(1, 2), 10, Pen.VISIBLE, Layer.STEEL, "");
        assertBox(-9 - half, -8 - half, 11 + half, 12 + half, Bounds.of(circle));
        Arc pastZero = new Arc(new Vec2(0, 0), 10, 350, 20, Pen.VISIBLE, Layer.STEEL, "");
        assertEquals(10 + half, Bounds.of(pastZero).getMaxX(), EXACT);
    }

    @Test
    void textStandsOnItsPointByItsAlignment() {
        double width = Lettering.width("C12", 5, Face.REGULAR);
        double up = Lettering.ascent(5, Face.REGULAR);
        double down = Lettering.descent(5, Face.REGULAR);
        Vec2 at = new Vec2(100, 50);
        Text left = Text.level("C12", at, 5, Text.Align.LEFT, Layer.LABEL);
        assertBox(100, 50 - down, 100 + width, 50 + up, Bounds.of(left));
        Text right = new Text("C12", at, 5, Text.Align.RIGHT, 90, Face.REGULAR, Layer.LABEL, "");
        assertBox(100 - up, 50 - width, 100 + down, 50, Bounds.of(right));
        Text centre = new Text("C12", at, 5, Text.Align.CENTRE, 180, Face.REGULAR, Layer.LABEL, "");
        assertBox(100 - width / 2, 50 - up, 100 + width / 2, 50 + down, Bounds.of(centre));
        assertTrue(up > 5 && down > 1);
    }

    @Test
    void severalMarksShareABox() {
        Mark fill =
                new Fill(List.of(List.of(new Vec2(-3, 0), new Vec2(4, 1), new Vec2(0, 9))), 0.5, Layer.CONCRETE, "");
        Mark line = Stroke.line(new Vec2(0, 0), new Vec2(10, 0), Pen.OUTLINE, Layer.STEEL);
        assertBox(-3, -0.25, 10.25, 9, Bounds.of(List.of(fill, line)));
        assertTrue(Bounds.of(List.<Mark>of()).isNull());
    }
}
