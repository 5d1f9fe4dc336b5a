package org.baywright.render.dimension;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.baywright.model.geometry.Vec2;
import org.baywright.render.mark.Bounds;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Text;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** Looks for text on text with polygon overlay, which the layout itself does not use. */
final class Overlaps {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    private Overlaps() {}

    static void assertNone(List<? extends Mark> marks, Envelope frame) {
        List<Text> texts =
                marks.stream().filter(m -> m instanceof Text).map(m -> (Text) m).toList();
        for (int i = 0; i < texts.size(); i++) {
            Geometry box = polygon(Bounds.corners(texts.get(i)));
            assertTrue(frame.covers(box.getEnvelopeInternal()), "out of the frame: " + texts.get(i));
            for (int j = 0; j < i; j++) {
                Geometry other = polygon(Bounds.corners(texts.get(j)));
                boolean near = box.getEnvelopeInternal().intersects(other.getEnvelopeInternal());
                boolean apart = !near || box.intersection(other).getArea() < 1e-3;
                assertTrue(apart, "text on text: " + texts.get(i) + " " + texts.get(j));
            }
        }
    }

    static Geometry polygon(List<Vec2> corners) {
        Coordinate[] ring = new Coordinate[corners.size() + 1];
        for (int i = 0; i < ring.length; i++) {
            Vec2 c = corners.get(i % corners.size());
            ring[i] = new Coordinate(c.x(), c.y());
        }
        return GEOMETRY.createPolygon(ring);
    }
}
