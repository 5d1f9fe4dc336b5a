package org.baywright.render.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.baywright.model.definition.Side;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Plane;
import org.baywright.model.geometry.Profile;
import org.baywright.model.geometry.Solid;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;

/** Against casting rays one at a time, on scenes of anything anywhere and on scenes where everything lines up. */
class HiddenLinesPropertyTest {
    private static final double NEAR = 3 * Edge.FINE;

    @Property(tries = 80, edgeCases = EdgeCasesMode.NONE)
    void agreesWithRaysAnywhere(
            @ForAll("anything") List<Item> items, @ForAll("directions") Projection view, @ForAll Random random) {
        agreesWithRays(items, view, random);
    }

    @Property(tries = 80, edgeCases = EdgeCasesMode.NONE)
    void agreesWithRaysWhereThingsLineUp(
            @ForAll("blocks") List<Item> items, @ForAll("straight") Projection view, @ForAll Random random) {
        agreesWithRays(items, view, random);
    }

    private static void agreesWithRays(List<Item> items, Projection view, Random random) {
        ViewLines lines = HiddenLines.all(items, view);
        List<Edge> edges =
                items.stream().flatMap(i -> Edge.of(i, view).stream()).toList();
        RayCast rays = new RayCast(items, view);
        for (ViewLine line : lines.visible()) {
            assertTrue(
                    along(line, edges, view).stream().anyMatch(p -> !rays.surelyHidden(p)),
                    () -> "drawn though hidden: " + line);
        }
        for (ViewLine line : lines.hidden()) {
            assertTrue(
                    line.length() < 1 || along(line, edges, view).stream().anyMatch(rays::perhapsHidden),
                    () -> "hidden though seen: " + line);
        }
        for (Edge edge : edges) {
            Vec3 position = at(edge, random.nextDouble());
            boolean drawn = lies(Edge.flat(position), lines.visible());
            assertTrue(drawn || lies(Edge.flat(position), lines.hidden()), () -> "lost: " + position + edge);
            assertTrue(drawn || rays.perhapsHidden(world(position, view)), () -> "not drawn: " + position + edge);
        }
    }

    @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
    void nothingIsLost(@ForAll("anything") List<Item> items, @ForAll("directions") Projection view) {
        List<Edge> edges =
                items.stream().flatMap(i -> Edge.of(i, view).stream()).toList();
        Assume.that(edges.stream()
                .allMatch(e ->
                        edges.stream().filter(f -> share(flat(e), flat(f))).count() == 1));
        ViewLines lines = HiddenLines.all(items, view);
        double expected = edges.stream().mapToDouble(Edge::flatLength).sum();
        double found = lines.visible().stream().mapToDouble(ViewLine::length).sum()
                + lines.hidden().stream().mapToDouble(ViewLine::length).sum();
        assertEquals(expected, found, 0.5);
    }

    @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
    void noTwoLinesLieOnEachOther(@ForAll("blocks") List<Item> items, @ForAll("straight") Projection view) {
        ViewLines all = HiddenLines.all(items, view);
        List<ViewLine> lines = new ArrayList<>(all.visible());
        lines.addAll(all.hidden());
        for (ViewLine line : lines) {
            long here = lines.stream().filter(l -> onEachOther(line, l)).count();
            assertEquals(1, here, () -> "drawn twice: " + line);
        }
    }

    @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
    void theOrderOfItemsDoesNotMatter(
            @ForAll("blocks") List<Item> items, @ForAll("straight") Projection view, @ForAll Random random) {
        List<Item> shuffled = new ArrayList<>(items);
        Collections.shuffle(shuffled, random);
        assertEquals(HiddenLines.all(items, view), HiddenLines.all(shuffled, view));
    }

    @Provide
    Arbitrary<List<Item>> anything() {
        Arbitrary<Profile> profiles =
                Arbitraries.of(Scenes.BEAM, Scenes.TUBE, Profile.rectangle(300, 20), Profile.rectangle(80, 80));
        Arbitrary<Plane> cuts = vectors(0.8).map(v -> Plane.through(new Vec3(600, 0, 0), new Vec3(1, v.y(), v.z())));
        Arbitrary<Placement> places = Combinators.combine(vectors(500), vectors(1), vectors(1))
                .filter((o, a, d) -> a.length() > 0.1 && a.cross(d).length() > 0.1)
                .as((o, a, d) -> Placement.of(o, a, a.cross(d)));
        return Combinators.combine(profiles, cuts, places)
                .as((profile, cut, place) ->
                        new Item("part", new Solid(profile, new Plane(new Vec3(-1, 0, 0), 0), cut), place))
                .list()
                .ofMinSize(1)
                .ofMaxSize(7);
    }

    @Provide
    Arbitrary<Projection> directions() {
        return vectors(1)
                .filter(v -> Math.hypot(v.x(), v.y()) > 0.1)
                .map(v -> Projection.of(
                        Vec3.UP.cross(v).unit(), v.cross(Vec3.UP.cross(v)).unit()));
    }

    private static Arbitrary<Vec3> vectors(double limit) {
        Arbitrary<Double> numbers = Arbitraries.randomValue(r -> limit * (2 * r.nextDouble() - 1));
        return Combinators.combine(numbers, numbers, numbers).as(Vec3::new);
    }

    /** Blocks on a coarse grid: they touch, overlap and stand behind each other. */
    @Provide
    Arbitrary<List<Item>> blocks() {
        Arbitrary<Integer> at = Arbitraries.integers().between(0, 5);
        Arbitrary<Integer> size = Arbitraries.integers().between(1, 3);
        return Combinators.combine(at, at, at, size, size, size, Arbitraries.of("A", "B", "C"))
                .as((x, y, z, w, d, h, part) ->
                        Scenes.box(part, 10 * x, 10 * y, 10 * z, 10 * (x + w), 10 * (y + d), 10 * (z + h)))
                .list()
                .ofMinSize(1)
                .ofMaxSize(10);
    }

    @Provide
    Arbitrary<Projection> straight() {
        return Arbitraries.of(
                Projection.front(),
                Projection.rear(),
                Projection.leftSide(),
                Projection.above(),
                Pictorial.isometric(Side.LEFT),
                Pictorial.dimetric(Side.RIGHT));
    }

    /** Near the middle, but not where two joined edges of a tidy scene would meet. */
    private static Vec2 middle(ViewLine line) {
        return line.from().plus(line.to().minus(line.from()).times(0.4371));
    }

    /** The positions of the building that appear at the middle of a line, on the edges that run along it. */
    private static List<Vec3> along(ViewLine line, List<Edge> edges, Projection view) {
        Vec2 point = middle(line);
        List<Vec3> found = edges.stream()
                .filter(e -> lies(point, List.of(flat(e))) && parallel(line, flat(e)))
                .map(e -> world(at(e, share(point, Edge.flat(e.from()), Edge.flat(e.to()))), view))
                .toList();
        assertFalse(found.isEmpty(), () -> "no edge appears along " + line);
        return found;
    }

    private static ViewLine flat(Edge edge) {
        return new ViewLine(Edge.flat(edge.from()), Edge.flat(edge.to()), edge.part());
    }

    private static Vec3 at(Edge edge, double share) {
        return edge.from().plus(edge.to().minus(edge.from()).times(share));
    }

    private static Vec3 world(Vec3 p, Projection view) {
        return view.right()
                .times(p.x())
                .plus(view.up().times(p.y()))
                .plus(view.towards().times(p.z()));
    }

    private static boolean lies(Vec2 point, List<ViewLine> lines) {
        return lines.stream().anyMatch(l -> {
            Vec2 nearest = l.from().plus(l.to().minus(l.from()).times(share(point, l.from(), l.to())));
            return nearest.distance(point) < NEAR;
        });
    }

    private static double share(Vec2 point, Vec2 from, Vec2 to) {
        Vec2 step = to.minus(from);
        return Math.max(0, Math.min(1, point.minus(from).dot(step) / step.dot(step)));
    }

    private static boolean onEachOther(ViewLine a, ViewLine b) {
        return parallel(a, b) && lies(middle(a), List.of(b));
    }

    /** Whether two lines run on one another anywhere, and so would be drawn as one there. */
    private static boolean share(ViewLine a, ViewLine b) {
        Vec2 along = a.to().minus(a.from()).unit();
        double from = b.from().minus(a.from()).dot(along);
        double to = b.to().minus(a.from()).dot(along);
        double common = Math.min(a.length(), Math.max(from, to)) - Math.max(0, Math.min(from, to));
        return parallel(a, b) && Math.abs(along.cross(b.from().minus(a.from()))) < NEAR && common > 0;
    }

    private static boolean parallel(ViewLine a, ViewLine b) {
        return Math.abs(a.to().minus(a.from())
                        .unit()
                        .cross(b.to().minus(b.from()).unit()))
                < 1e-6;
    }
}
