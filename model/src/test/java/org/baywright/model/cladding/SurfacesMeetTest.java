package org.baywright.model.cladding;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.baywright.model.cladding.Surface.Role;
import org.baywright.model.cladding.Surface.Sheet;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Definitions;
import org.baywright.model.definition.Seeds;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.parts.Shed;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** Surfaces meet at their edges and go through each other nowhere; wall sheets end on steel. */
class SurfacesMeetTest {
    private static final GeometryFactory SHAPES = new GeometryFactory();

    /** Less than this of two surfaces in one another is a common edge. */
    private static final double EDGE = 2;

    /** Short girts between jamb and corner are left out: jamb 100, girt 250, column and corner 250. */
    private static final double BESIDE = 600;

    /** A strip over a lean-to lower than this hangs from the eave purlin. */
    private static final double STRIP = 450;

    @Provide
    Arbitrary<Definition> sheds() {
        return Definitions.clad();
    }

    @Property(tries = 60, seed = Seeds.SHEDS)
    void noSurfaceGoesThroughAnother(@ForAll("sheds") Definition definition) {
        List<Surface> surfaces = Cladding.of(Shed.of(definition)).surfaces();
        for (int i = 0; i < surfaces.size(); i++) {
            for (int j = i + 1; j < surfaces.size(); j++) {
                Surface a = surfaces.get(i);
                Surface b = surfaces.get(j);
                double shared = shared(a, b);
                assertTrue(shared <= most(definition, a, b), () -> a.name() + " and " + b.name() + " share " + shared);
            }
        }
    }

    /**
     * A lean-to that carries the main roof on in its plane lies under its lap; its end is cut round the side wall that
     * goes on.
     */
    private static double most(Definition definition, Surface a, Surface b) {
        boolean carriedOn = definition.leanTos().stream().anyMatch(l -> l.drop() == 0);
        if (!carriedOn || a.name().contains("lean-to") == b.name().contains("lean-to")) {
            return EDGE;
        }
        boolean roofs = a.role() == Role.ROOF && b.role() == Role.ROOF;
        boolean onePlane = a.axes().width().distance(b.axes().width()) < 1e-9;
        return isEnd(a) || isEnd(b) ? 80 : roofs && !onePlane ? EDGE : Double.POSITIVE_INFINITY;
    }

    private static boolean isEnd(Surface surface) {
        return surface.name().startsWith("front") || surface.name().startsWith("rear");
    }

    /** Length of the line, or root of the area, in which both lie inside their edges. */
    private static double shared(Surface a, Surface b) {
        Vec3 na = a.axes().width();
        Vec3 nb = b.axes().width();
        Geometry pa = closed(a);
        if (Math.abs(Math.abs(na.dot(nb)) - 1) < 1e-9) {
            Vec3 apart = a.axes().toLocal(b.axes().origin());
            return Math.abs(apart.z()) > EDGE
                    ? 0
                    : Math.sqrt(pa.intersection(in(a, b)).getArea());
        }
        // b's corners above and below a's plane: b's outline cut at that plane is a line in a.
        Geometry lineInA = cut(a, b).intersection(pa.buffer(-EDGE));
        return lineInA.getLength();
    }

    /** The other surface's outline in a surface's own axes. */
    private static Polygon in(Surface a, Surface b) {
        return polygon(b.outline().stream()
                .map(p -> a.axes().toLocal(b.axes().toWorld(p.x(), p.y(), 0)))
                .map(p -> new Vec2(p.x(), p.y()))
                .toList());
    }

    /** Where another surface, short of its own edges, goes through the plane of a surface. */
    private static Geometry cut(Surface a, Surface b) {
        Geometry inner = closed(b).buffer(-EDGE);
        Coordinate[] ring = inner.getCoordinates();
        List<Coordinate> through = new ArrayList<>();
        for (int i = 0; i + 1 < ring.length; i++) {
            Vec3 p = a.axes().toLocal(b.axes().toWorld(ring[i].x, ring[i].y, 0));
            Vec3 q = a.axes().toLocal(b.axes().toWorld(ring[i + 1].x, ring[i + 1].y, 0));
            if (p.z() * q.z() < 0) {
                double share = p.z() / (p.z() - q.z());
                through.add(new Coordinate(p.x() + share * (q.x() - p.x()), p.y() + share * (q.y() - p.y())));
            }
        }
        return through.size() < 2
                ? SHAPES.createEmpty(1)
                : SHAPES.createLineString(new Coordinate[] {through.get(0), through.get(through.size() - 1)});
    }

    /** A roof is cut back where a flatter lean-to carries it on; walls count whole, openings and all. */
    private static Geometry closed(Surface surface) {
        Geometry whole = polygon(surface.outline());
        for (List<Vec2> hole : surface.role() == Role.ROOF ? surface.holes() : List.<List<Vec2>>of()) {
            whole = whole.difference(polygon(hole));
        }
        return whole;
    }

    private static Polygon polygon(List<Vec2> ring) {
        List<Coordinate> at = new ArrayList<>();
        ring.forEach(p -> at.add(new Coordinate(p.x(), p.y())));
        at.add(at.get(0));
        return SHAPES.createPolygon(at.toArray(Coordinate[]::new));
    }

    /** Every lower end of a wall sheet that is not cut for an opening is within 300 of a girt, header or sill under it. */
    @Property(tries = 60, seed = Seeds.SHEDS)
    void everyWallSheetStartsAtARow(@ForAll("sheds") Definition definition) {
        Shed shed = Shed.of(definition);
        for (Surface wall : Cladding.of(shed).surfaces(Role.WALL)) {
            SheetSupports rows = SheetSupports.of(shed, wall);
            for (Sheet sheet : wall.sheets()) {
                double past = isCut(wall, sheet) || sheet.length() < STRIP ? 0 : rows.distance(sheet, sheet.low());
                assertTrue(past <= 300, () -> wall.name() + ": a sheet at " + sheet.left() + " starts " + past);
            }
        }
    }

    /** Cut for an opening, or between one and a column close by, where there is no room for a girt. */
    private static boolean isCut(Surface wall, Sheet sheet) {
        return wall.holes().stream().anyMatch(h -> {
            double left = h.get(0).x();
            double right = h.get(1).x();
            boolean beside = right <= sheet.left() && right > sheet.left() - BESIDE
                    || left >= sheet.right() && left < sheet.right() + BESIDE;
            boolean over = left < sheet.right() && right > sheet.left();
            return beside || over && h.get(0).y() < sheet.low() + 1 && h.get(2).y() > sheet.low();
        });
    }

    /** No pipe drains more than 12 m of gutter, none hangs in front of an opening, and none is off its gutter. */
    @Property(tries = 60, seed = Seeds.SHEDS)
    void downpipesStayClearOfOpenings(@ForAll("sheds") Definition definition) {
        Shed shed = Shed.of(definition);
        for (GutterRun gutter : Cladding.of(shed).gutters()) {
            for (Vec3 pipe : gutter.downpipes()) {
                assertTrue(pipe.y() >= gutter.from().y() - 1
                        && pipe.y() <= gutter.to().y() + 1);
                boolean blocked = shed.openings().stream()
                        .filter(o -> !o.isWholeBay())
                        .filter(o -> o.face().leanTo().isPresent()
                                == gutter.slope().line().leanTo())
                        .filter(o -> Math.abs(o.face().axes().origin().x()
                                        - gutter.slope().eave())
                                < 1)
                        .filter(o -> !o.face().wall().isEnd())
                        .anyMatch(o -> {
                            double a = o.face().toWorld(o.left(), 0, 0).y();
                            double b = o.face().toWorld(o.right(), 0, 0).y();
                            return pipe.y() > Math.min(a, b) && pipe.y() < Math.max(a, b);
                        });
                assertTrue(!blocked, () -> "a pipe in front of an opening at " + pipe);
            }
        }
    }
}
