package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.baywright.model.definition.Slab;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.ColumnLine;
import org.baywright.render.mark.Layer;
import org.baywright.render.paper.Pen;
import org.baywright.render.view.ViewLine;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.union.UnaryUnionOp;

/**
 * The concrete where a plane across the building cuts it at a frame: slab, edge beams and thickenings, or pads.
 *
 * @param shed what stands on it
 * @param frame where
 */
record SlabSection(Shed shed, int frame) {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    private Slab slab() {
        return shed.definition().ground().slab();
    }

    private List<ColumnLine> columnLines() {
        return shed.setOut().columnLines().stream()
                .filter(l -> l.has(frame))
                .sorted(Comparator.comparingDouble(ColumnLine::x))
                .toList();
    }

    private Geometry shape() {
        List<ColumnLine> lines = columnLines();
        double left = lines.get(0).x() - slab().beyond();
        double right = lines.get(lines.size() - 1).x() + slab().beyond();
        List<Geometry> parts = new ArrayList<>();
        for (ColumnLine line : lines) {
            double middle = line.x()
                    + line.inward() * line.column(shed.definition(), frame).depth() / 2;
            double a = middle - slab().padSide() / 2;
            double b = middle + slab().padSide() / 2;
            parts.add(
                    slab().isPads()
                            ? box(a, b, slab().padDepth())
                            : box(Math.max(left, a), Math.min(right, b), slab().padDepth()));
        }
        if (!slab().isPads()) {
            parts.add(box(left, right, slab().thickness()));
            parts.add(box(left, left + slab().edgeWidth(), slab().edgeDepth()));
            parts.add(box(right - slab().edgeWidth(), right, slab().edgeDepth()));
        }
        return UnaryUnionOp.union(
                parts.stream().filter(part -> part.getArea() > 0).toList());
    }

    private static Geometry box(double left, double right, double depth) {
        return GEOMETRY.toGeometry(new Envelope(left, right, -depth, 0));
    }

    /** What it covers of the view. */
    Envelope bounds() {
        return shape().getEnvelopeInternal();
    }

    void draw(PlacedView view) {
        view.draw(lines(), Pen.VISIBLE, Layer.CONCRETE);
    }

    /** Its outline. */
    List<ViewLine> lines() {
        List<ViewLine> lines = new ArrayList<>();
        Geometry boundary = shape().getBoundary();
        for (int i = 0; i < boundary.getNumGeometries(); i++) {
            Coordinate[] ring = boundary.getGeometryN(i).getCoordinates();
            for (int j = 1; j < ring.length; j++) {
                lines.add(new ViewLine(at(ring[j - 1]), at(ring[j]), ""));
            }
        }
        return lines;
    }

    private static Vec2 at(Coordinate c) {
        return new Vec2(c.x, c.y);
    }
}
