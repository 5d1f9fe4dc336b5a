package org.baywright.render.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.baywright.model.catalogue.Catalogue;
import org.baywright.model.catalogue.SheetProfile;
import org.baywright.model.cladding.Building;
import org.baywright.model.cladding.Surface;
import org.baywright.model.definition.Opening;
import org.baywright.model.definition.Wall;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Profile;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.setout.OpeningPlace;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Stroke;
import org.baywright.render.paper.Pen;
import org.baywright.render.view.HiddenLines;
import org.baywright.render.view.Item;
import org.baywright.render.view.Projection;
import org.baywright.render.view.ThinLine;
import org.baywright.render.view.ViewLine;
import org.junit.jupiter.api.Test;

/** What sheets and leaves hide, and the ribs on them. */
class EnvelopesTest {
    private static final SheetProfile SHEET =
            Catalogue.shipped().sheet("corrugated 0.42").orElseThrow();
    private static final double RIBS = SHEET.ribPitch();
    private static final Projection FRONT = Projection.front();

    /** A wall seen from the front, 60 ribs wide: 3000 high at its sides, 3600 in the middle, with one opening. */
    private static SheetedPlane wall(List<List<Vec2>> holes) {
        double width = 60 * RIBS;
        // u to the right, v up, and so outward towards the eye.
        Placement axes = Placement.of(Vec3.ZERO, Vec3.ACROSS, Vec3.UP);
        List<Vec2> outline = List.of(
                new Vec2(0, 0),
                new Vec2(width, 0),
                new Vec2(width, 3000),
                new Vec2(width / 2, 3600),
                new Vec2(0, 3000));
        return new SheetedPlane(new Surface("front wall", Surface.Role.WALL, SHEET, axes, outline, holes, List.of()));
    }

    private static final List<Vec2> HOLE = Profile.box(1000, 800, 2000, 2000);

    private static List<ViewLine> behind(List<Item> blinds, ThinLine... lines) {
        return HiddenLines.visible(List.of(), blinds, List.of(lines), FRONT);
    }

    private static ThinLine behind(double x0, double z0, double x1, double z1) {
        return new ThinLine(new Vec3(x0, 500, z0), new Vec3(x1, 500, z1), "behind");
    }

    @Test
    void theAxesFaceTheEye() {
        assertTrue(wall(List.of()).surface().axes().width().dot(FRONT.towards()) > 0.99);
    }

    @Test
    void whatIsBehindShowsThroughTheHoleOnly() {
        List<Item> blinds = wall(List.of(HOLE)).blinds();
        List<ViewLine> level = behind(blinds, behind(-500, 1500, 60 * RIBS + 500, 1500));
        List<List<Double>> seen = level.stream()
                .map(l -> List.of((double) Math.round(l.from().x()), (double) Math.round(l.to().x())))
                .toList();
        double width = Math.round(60 * RIBS);
        assertEquals(
                List.of(List.of(-500.0, 0.0), List.of(1000.0, 2000.0), List.of(width, width + 500)),
                seen.stream()
                        .sorted((a, b) -> Double.compare(a.get(0), b.get(0)))
                        .toList());
        List<ViewLine> upright = behind(blinds, behind(1500, 0, 1500, 4500));
        assertEquals(
                List.of("800 2000", "3394 4500"),
                upright.stream()
                        .map(l -> Math.round(l.from().y()) + " " + Math.round(l.to().y()))
                        .sorted(Comparator.comparingInt(t -> Integer.parseInt(t.split(" ")[0])))
                        .toList());
    }

    /** A jamb stands right on the line where the sheet is parted for drawing; it may not shine through there. */
    @Test
    void nothingShowsThroughTheSeams() {
        List<Item> blinds = wall(List.of(HOLE)).blinds();
        for (double x : new double[] {1000, 2000}) {
            List<ViewLine> jamb = behind(blinds, behind(x, 0, x, 3000));
            assertEquals(1, jamb.size(), "jamb at " + x);
            assertEquals(800, jamb.get(0).from().y(), 0.1);
            assertEquals(2000, jamb.get(0).to().y(), 0.1);
        }
        assertEquals(List.of(), behind(blinds, behind(30 * RIBS, 0, 30 * RIBS, 3590)));
    }

    @Test
    void ribsStandAtTheirPitchAndStopAtTheHole() {
        List<ThinLine> all = wall(List.of()).ribs(1);
        assertEquals(59, all.size());
        for (int i = 0; i < all.size(); i++) {
            assertEquals((i + 1) * RIBS, all.get(i).from().x(), 1e-6);
            double x = all.get(i).from().x();
            double top = 3600 - 600 * Math.abs(x - 30 * RIBS) / (30 * RIBS);
            assertEquals(top, all.get(i).to().z(), 1e-6);
        }
        assertEquals(14, wall(List.of()).ribs(4).size());
        long across = all.stream()
                .filter(r -> r.from().x() > 1000 && r.from().x() < 2000)
                .count();
        List<ThinLine> holed = wall(List.of(HOLE)).ribs(1);
        assertEquals(59 + across, holed.size());
        assertTrue(across > 10);
        assertTrue(holed.stream()
                .filter(r -> r.from().x() > 1000 && r.from().x() < 2000)
                .allMatch(r -> r.to().z() <= 800 || r.from().z() >= 2000));
    }

    /** On the sheet: so many millimetres of paper between ribs, and no two closer than can be told apart. */
    @Test
    void ribsOnPaperStandAtTheirPitch() {
        Building building = Sheds.closed(Sheds.FULL);
        Draft ends = ElevationSheets.of(building).get(0);
        double n = Double.parseDouble(ends.scale().split("[: ]")[1]);
        int every = Envelopes.every(SHEET, n);
        double step = every * RIBS / n;
        assertTrue(step >= 0.7 && step < 2, "ribs " + step + " mm apart on paper");
        List<Stroke> ribs = ends.marks().stream()
                .filter(m -> m instanceof Stroke s && s.pen() == Pen.HATCH && s.layer() == Layer.CLADDING)
                .map(m -> (Stroke) m)
                .toList();
        double middle = ribs.stream()
                .mapToDouble(r -> r.points().get(0).y())
                .summaryStatistics()
                .getAverage();
        TreeSet<Double> at = ribs.stream()
                .filter(r -> r.points().get(0).y() > middle)
                .map(r -> Math.round(r.points().get(0).x() * 1000) / 1000.0)
                .collect(Collectors.toCollection(TreeSet::new));
        List<Double> xs = new ArrayList<>(at);
        for (int i = 1; i < xs.size(); i++) {
            double steps = (xs.get(i) - xs.get(i - 1)) / step;
            assertEquals(Math.round(steps), steps, 0.01, "between ribs");
        }
        Surface front = building.cladding().surfaces(Surface.Role.WALL).stream()
                .filter(s -> s.axes().width().dot(FRONT.towards()) > 0.9)
                .findFirst()
                .orElseThrow();
        double width = front.outline().stream().mapToDouble(Vec2::x).max().orElseThrow()
                - front.outline().stream().mapToDouble(Vec2::x).min().orElseThrow();
        // Downpipes and corners at the ends may stand before a rib or two.
        assertEquals(width / (every * RIBS), xs.size(), 3);
    }

    @Test
    void aLeafCoversAndAnOpeningDoesNot() {
        Building building = Sheds.closed(Sheds.FULL, Sheds.openings());
        for (OpeningPlace place : building.shed().openings()) {
            Leaf leaf = new Leaf(place, 166);
            Vec3 out = place.face().axes().width();
            Vec3 at = place.face().toWorld(place.left() + 50, (place.sill() + place.head()) / 2, -500);
            ThinLine inside =
                    new ThinLine(at, at.plus(place.face().axes().along().times(100)), "inside");
            Projection view = Projection.of(place.face().axes().along(), Vec3.UP);
            assertTrue(view.towards().dot(out) > 0.99);
            List<ViewLine> seen = HiddenLines.visible(List.of(), leaf.blinds(), List.of(inside), view);
            boolean open = place.opening().type() == Opening.Type.OPEN;
            assertEquals(open ? 1 : 0, seen.size(), place.tag());
        }
    }

    /** A leaf that has no room on its wall to slide aside as one is drawn as two. */
    @Test
    void tracksStayOnTheirWall() {
        Building building = Sheds.closed(
                Sheds.FULL,
                new Opening(
                        Opening.Type.SLIDING_DOOR,
                        Wall.FRONT,
                        Optional.empty(),
                        OptionalInt.empty(),
                        Optional.of(new Opening.Size(5000, 3300, 0)),
                        OptionalDouble.empty()));
        List<ThinLine> lines = new Leaf(building.shed().openings().get(0), 166).lines();
        double left = lines.stream().mapToDouble(l -> l.from().x()).min().orElseThrow();
        double right = lines.stream().mapToDouble(l -> l.to().x()).max().orElseThrow();
        assertTrue(left >= 0 && right <= 12000, left + " to " + right);
    }

    /** Through the open bay of a lean-to the sheets and the doors of the wall behind are seen, not only its steel. */
    @Test
    void anOpenBayShowsTheWallBehind() {
        Building building = Sheds.closed(Sheds.FULL + Sheds.LEAN, Sheds.openings());
        Projection view = Projection.rightSide();
        List<ViewLine> low = Envelopes.scene(building, 100, (part, place) -> true).seen(view).stream()
                .filter(l -> Math.max(l.from().y(), l.to().y()) < 3000)
                .toList();
        // The door of bay 2 is in the wall opposite; a lean-to stands before bays 1 and 2.
        assertTrue(low.stream().anyMatch(l -> l.part().equals(Scene.LEAF) && isBetween(l, 6000, 12000)));
        assertTrue(low.stream()
                        .filter(l -> l.part().equals(Scene.RIB) && isBetween(l, 500, 5500))
                        .count()
                > 10);
    }

    private static boolean isBetween(ViewLine line, double from, double to) {
        return Math.min(line.from().x(), line.to().x()) > from
                && Math.max(line.from().x(), line.to().x()) < to;
    }

    /** Nothing of the inside of a closed shed is drawn on its elevations. */
    @Test
    void aClosedShedHidesItsFrame() {
        Building building = Sheds.closed(Sheds.FULL);
        Scene scene = Envelopes.scene(building, 100, (part, place) -> true);
        for (Projection view : List.of(Projection.front(), Projection.rear())) {
            List<String> steel = scene.seen(view).stream()
                    .map(ViewLine::part)
                    .filter(p -> p.matches("[CRMJ]\\d+"))
                    .distinct()
                    .toList();
            assertEquals(List.of(), steel);
        }
    }
}
