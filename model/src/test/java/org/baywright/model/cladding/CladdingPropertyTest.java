package org.baywright.model.cladding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.baywright.model.cladding.Surface.Sheet;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Definitions;
import org.baywright.model.definition.Seeds;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.RoofRows;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** Sheets close what they are to close, measured with JTS polygons. */
class CladdingPropertyTest {
    private static final GeometryFactory SHAPES = new GeometryFactory();

    /** Lapped rows lie a thickness aside, and places are rounded to whole millimetres. */
    private static final double MOST_PAST = 4;

    /** Half a lap of 200, and from a channel's back, where the row is set out, to its middle. */
    private static final double HALF_LAP = 100 + 25;

    @Provide
    Arbitrary<Definition> sheds() {
        return Definitions.clad();
    }

    private static Polygon polygon(List<Vec2> ring) {
        List<Coordinate> at = new ArrayList<>();
        ring.forEach(p -> at.add(new Coordinate(p.x(), p.y())));
        at.add(at.get(0));
        return SHAPES.createPolygon(at.toArray(Coordinate[]::new));
    }

    private static Polygon polygon(Sheet s, double top) {
        return polygon(List.of(
                new Vec2(s.left(), s.low()),
                new Vec2(s.right(), s.low()),
                new Vec2(s.right(), Math.min(top, s.high())),
                new Vec2(s.left(), Math.min(top, s.high()))));
    }

    private static Geometry closed(Surface surface) {
        Geometry whole = polygon(surface.outline());
        for (List<Vec2> hole : surface.holes()) {
            whole = whole.difference(polygon(hole));
        }
        return whole;
    }

    /** The opening area deducted is the polygon difference; JTS computes areas from the same corners its own way. */
    @Property(tries = 40, seed = Seeds.SHEDS)
    void deductedAreaIsThePolygonDifference(@ForAll("sheds") Definition definition) {
        for (Surface surface : Cladding.of(Shed.of(definition)).surfaces()) {
            Geometry outline = polygon(surface.outline());
            assertTrue(outline.isValid(), surface.name());
            double difference = outline.getArea() - closed(surface).getArea();
            assertEquals(difference / 1e6, surface.deductedM2(), 1e-6, surface.name());
            assertEquals(closed(surface).getArea() / 1e6, surface.netM2(), 1e-6, surface.name());
        }
    }

    /** Roof sheets never cover less than their plane, and more only by the last sheet, laps and whole steps of 5 mm. */
    @Property(tries = 40, seed = Seeds.SHEDS)
    void roofSheetsCoverTheirPlane(@ForAll("sheds") Definition definition) {
        for (Surface roof : Cladding.of(Shed.of(definition)).surfaces(Surface.Role.ROOF)) {
            double plane = closed(roof).getArea() / 1e6;
            double ordered = roof.orderedM2();
            double width = roof.outline().get(1).x();
            double height = roof.outline().get(2).y();
            double cover = roof.profile().cover();
            long ends = roof.sheets().stream().filter(s -> s.left() < 1).count();
            double most = (Math.ceil(width / cover) * cover) * (height + ends * 5 + (ends - 1) * 200) / 1e6;
            assertTrue(ordered >= plane - 1e-9, () -> ordered + " under " + plane);
            assertTrue(ordered <= most + 1e-9, () -> ordered + " over " + most);
        }
    }

    /** Together the sheets of a wall lie over all of it that is closed. */
    @Property(tries = 40, seed = Seeds.SHEDS)
    void sheetsLeaveNoPartOfAWallOpen(@ForAll("sheds") Definition definition) {
        for (Surface wall : Cladding.of(Shed.of(definition)).surfaces(Surface.Role.WALL)) {
            Geometry open = closed(wall);
            for (Sheet sheet : wall.sheets()) {
                open = open.difference(polygon(sheet, 1e6));
            }
            // Pieces over and under an opening lower than 30 are left to its flashing.
            double most = wall.holes().size() * 2 * 30 * 20_000 + 1;
            Geometry left = open;
            assertTrue(left.getArea() < most, () -> wall.name() + " is open by " + left.getArea());
            if (wall.holes().isEmpty()) {
                assertTrue(left.getArea() < 1, () -> wall.name() + " is open by " + left.getArea());
            }
        }
    }

    /** Every end of a roof sheet lies on a purlin or runs past one by no more than it runs past the eave or ridge row. */
    @Property(tries = 40, seed = Seeds.SHEDS)
    void everyRoofSheetEndsAtARow(@ForAll("sheds") Definition definition) {
        Shed shed = Shed.of(definition);
        int number = 0;
        for (Surface roof : Cladding.of(shed).surfaces(Surface.Role.ROOF)) {
            SheetSupports rows = SheetSupports.of(shed, roof);
            // A lean-to in the same plane has rows under this roof's lower end; its own lowest row is what counts.
            RoofRows own = RoofRows.of(definition, shed.setOut()).get(number++);
            double lowest = own.at().get(0) + own.standOf(0).centroidUp() - own.sheetLow();
            int last = own.at().size() - 1;
            double highest =
                    own.sheetHigh() - own.at().get(last) - own.standOf(last).centroidUp();
            double most = Math.max(HALF_LAP, Math.max(lowest, highest)) + 5 + MOST_PAST;
            for (Sheet sheet : roof.sheets()) {
                for (double end : new double[] {sheet.low(), sheet.high()}) {
                    double past = rows.distance(sheet, end);
                    assertTrue(past <= most, () -> roof.name() + ": an end " + past + " from a row");
                }
            }
        }
    }

    /** Sheets lie side by side without gaps, each as wide as it covers. */
    @Property(tries = 40, seed = Seeds.SHEDS)
    void sheetsLieSideBySide(@ForAll("sheds") Definition definition) {
        for (Surface surface : Cladding.of(Shed.of(definition)).surfaces()) {
            double cover = surface.profile().cover();
            double first = surface.outline().get(0).x();
            for (Sheet sheet : surface.sheets()) {
                assertEquals(cover, sheet.right() - sheet.left(), 1e-9);
                double number = (sheet.left() - first) / cover;
                assertEquals(Math.rint(number), number, 1e-6, surface.name());
            }
        }
    }

    /** What the gutters drain is all the roof: their catchments add up, counting a roof over a lean-to twice. */
    @Property(tries = 40, seed = Seeds.SHEDS)
    void guttersDrainAllRoofs(@ForAll("sheds") Definition definition) {
        Cladding cladding = Cladding.of(Shed.of(definition));
        double caught =
                cladding.gutters().stream().mapToDouble(GutterRun::catchmentM2).sum();
        double plan = cladding.surfaces(Surface.Role.ROOF).stream()
                .mapToDouble(s -> s.grossM2() * s.axes().width().z())
                .sum();
        assertTrue(caught > plan * 0.97, () -> caught + " caught of " + plan);
        cladding.gutters().forEach(g -> assertTrue(!g.downpipes().isEmpty()));
    }
}
