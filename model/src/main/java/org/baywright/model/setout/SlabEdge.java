package org.baywright.model.setout;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.baywright.model.definition.Definition;
import org.baywright.model.geometry.Vec2;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.union.UnaryUnionOp;

/**
 * The edge of the slab in plan: so far beyond the columns' outside faces of the main building and of every lean-to,
 * with the corners that reach back in where a lean-to ends.
 */
public final class SlabEdge {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    private final Geometry shape;

    private SlabEdge(Geometry shape) {
        this.shape = shape;
    }

    /** The edge of a definition's slab. */
    public static SlabEdge of(Definition definition, SetOut setOut) {
        return of(definition, setOut, definition.ground().slab().beyond());
    }

    /** The edge of a slab that reaches so far beyond the columns' outside faces. */
    public static SlabEdge of(Definition definition, SetOut setOut, double beyond) {
        List<Geometry> floors = new ArrayList<>();
        floors.add(floor(0, setOut.span(), 0, setOut.length(), beyond));
        for (ColumnLine line : setOut.leanTos()) {
            floors.add(floor(
                    setOut.main(line.side()).x(),
                    line.x(),
                    WallFace.endLine(definition, setOut, line, true),
                    WallFace.endLine(definition, setOut, line, false),
                    beyond));
        }
        return new SlabEdge(UnaryUnionOp.union(floors));
    }

    /** The edge of concrete of another shape: of pads by themselves. */
    public static SlabEdge round(Geometry shape) {
        return new SlabEdge(shape.copy());
    }

    private static Geometry floor(double x0, double x1, double y0, double y1, double beyond) {
        Envelope floor = new Envelope(new Coordinate(x0, y0), new Coordinate(x1, y1));
        floor.expandBy(beyond);
        return GEOMETRY.toGeometry(floor);
    }

    /** The floor inside the edge, across and along the building. */
    public Geometry shape() {
        return shape.copy();
    }

    /** Its corners ring by ring, the first again at the end of each: one ring for a slab, one for each pad by itself. */
    public List<List<Vec2>> rings() {
        Geometry boundary = shape.getBoundary();
        return IntStream.range(0, boundary.getNumGeometries())
                .mapToObj(i -> Stream.of(boundary.getGeometryN(i).getCoordinates())
                        .map(c -> new Vec2(c.x, c.y))
                        .toList())
                .toList();
    }

    /** From a place on the floor to the nearest edge; below zero when it lies off the slab. */
    public double distance(Vec2 at) {
        Geometry point = GEOMETRY.createPoint(new Coordinate(at.x(), at.y()));
        double distance = shape.getBoundary().distance(point);
        return shape.covers(point) ? distance : -distance;
    }
}
