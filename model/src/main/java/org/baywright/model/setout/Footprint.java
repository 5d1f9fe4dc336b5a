package org.baywright.model.setout;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Girts;
import org.baywright.model.definition.Side;
import org.baywright.model.definition.Wall;
import org.baywright.model.geometry.Vec2;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/**
 * The ground that a building takes, lean-tos with it, over the outside of its wall sheets, or over its string lines
 * when it is a bare frame. Eaves and gutters overhang it.
 *
 * @param outline across and along the building, mm, anticlockwise from its lower left corner
 * @param beyond from the string lines to the outline
 */
public record Footprint(List<Vec2> outline, double beyond) {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    /** Copies the list. */
    public Footprint {
        outline = List.copyOf(outline);
    }

    /** The footprint of a definition. */
    public static Footprint of(Definition definition, SetOut setOut) {
        double beyond = definition.envelope().isFull() ? wall(definition) : 0;
        List<Geometry> rooms = new ArrayList<>();
        rooms.add(room(0, setOut.span(), 0, setOut.length(), beyond));
        for (ColumnLine lean : setOut.leanTos()) {
            double main = setOut.main(lean.side()).x();
            double from = setOut.frameLine(lean.firstFrame());
            double to = setOut.frameLine(lean.lastFrame());
            rooms.add(room(Math.min(main, lean.x()), Math.max(main, lean.x()), from, to, beyond));
        }
        Polygon whole = (Polygon) rooms.stream().reduce(Geometry::union).orElseThrow();
        return new Footprint(corners(whole), beyond);
    }

    /** The outermost edge from above: the roof sheets and the gutters past the walls; as built of a bare frame. */
    static Footprint withEaves(Definition definition, SetOut setOut) {
        Footprint walls = of(definition, setOut);
        if (!definition.envelope().isFull()) {
            return walls;
        }
        List<WallCover> covers = WallCover.of(definition, setOut, WallFace.of(definition, setOut));
        Geometry all = RoofRows.of(definition, setOut).stream()
                .map(rows -> (Geometry) GEOMETRY.toGeometry(roof(definition, rows, covers)))
                .reduce(GEOMETRY.createPolygon(ring(walls.outline())), Geometry::union);
        return new Footprint(corners((Polygon) all), walls.beyond());
    }

    /** A slope's sheets on plan, with its gutter, whose outer face is a gutter's width past its back. */
    private static Envelope roof(Definition definition, RoofRows rows, List<WallCover> covers) {
        double gutter = definition.envelope().roofWater().gutter().width();
        double low = rows.gutterBack(definition, covers) - rows.slope().line().inward() * gutter;
        double sheets = rows.place(rows.sheetLow(), 0, rows.sheetPlane()).x();
        double high = rows.place(rows.sheetHigh(), 0, rows.sheetPlane()).x();
        Envelope roof = new Envelope(low, high, rows.from(), rows.to());
        roof.expandToInclude(sheets, rows.from());
        return roof;
    }

    private static Coordinate[] ring(List<Vec2> outline) {
        return Stream.concat(outline.stream(), Stream.of(outline.get(0)))
                .map(v -> new Coordinate(v.x(), v.y()))
                .toArray(Coordinate[]::new);
    }

    private static double wall(Definition definition) {
        Girts girts = definition.envelope().walls().girts();
        double sheet = definition.envelope().sheeting().walls().profile().depth();
        return (girts.flush() ? 0 : girts.member().depth()) + sheet;
    }

    private static Geometry room(double left, double right, double front, double rear, double beyond) {
        Envelope room = new Envelope(left, right, front, rear);
        room.expandBy(beyond);
        return GEOMETRY.toGeometry(room);
    }

    /** Corners of a ring, those on a straight side left out. */
    private static List<Vec2> corners(Polygon polygon) {
        List<Vec2> ring = new ArrayList<>();
        Coordinate[] all = polygon.norm().reverse().getCoordinates();
        for (int i = 0; i < all.length - 1; i++) {
            Vec2 before = at(all[(i + all.length - 2) % (all.length - 1)]);
            Vec2 here = at(all[i]);
            Vec2 after = at(all[i + 1]);
            if (Math.abs(here.minus(before).cross(after.minus(here))) > 1e-6) {
                ring.add(here);
            }
        }
        return ring;
    }

    private static Vec2 at(Coordinate c) {
        return new Vec2(c.x, c.y);
    }

    /** The walls that a place on the outline belongs to: one, or two at a corner. */
    List<Wall> wallsAt(Vec2 place) {
        List<Wall> walls = new ArrayList<>();
        for (int i = 0; i < outline.size(); i++) {
            Vec2 from = outline.get(i);
            Vec2 along = outline.get((i + 1) % outline.size()).minus(from);
            Vec2 step = place.minus(from);
            double at = step.dot(along.unit());
            boolean on = Math.abs(step.cross(along.unit())) < 1e-3 && at > -1e-3 && at < along.length() + 1e-3;
            if (on) {
                walls.add(wall(along));
            }
        }
        return walls;
    }

    /** Which way a side looks that is walked anticlockwise. */
    private static Wall wall(Vec2 along) {
        if (Math.abs(along.x()) > Math.abs(along.y())) {
            return along.x() > 0 ? Wall.FRONT : Wall.REAR;
        }
        return Wall.of(along.y() > 0 ? Side.RIGHT : Side.LEFT);
    }
}
