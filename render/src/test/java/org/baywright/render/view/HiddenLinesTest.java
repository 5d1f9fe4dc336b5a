package org.baywright.render.view;

import static org.baywright.render.view.Scenes.BEAM;
import static org.baywright.render.view.Scenes.TUBE;
import static org.baywright.render.view.Scenes.across;
import static org.baywright.render.view.Scenes.box;
import static org.baywright.render.view.Scenes.text;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.baywright.model.definition.Side;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Profile;
import org.baywright.model.geometry.Solid;
import org.baywright.model.geometry.Vec3;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class HiddenLinesTest {
    private static final Projection FRONT = Projection.front();
    private static final Projection PICTORIAL = Pictorial.isometric(Side.RIGHT);

    /** Scenes seen from the front, x right and z up, y away from the eye; what is seen and what is not. */
    static Stream<Arguments> scenes() {
        return Stream.of(
                Arguments.of(
                        "a box alone: its far edges fall on its near ones",
                        List.of(box("A", 0, 0, 0, 100, 50, 80)),
                        Set.of("0,0 - 100,0 A", "0,80 - 100,80 A", "0,0 - 0,80 A", "100,0 - 100,80 A"),
                        Set.of()),
                Arguments.of(
                        "a lower box partly behind a box",
                        List.of(box("A", 0, 0, 0, 100, 50, 80), box("B", 50, 70, 0, 200, 90, 60)),
                        Set.of(
                                "0,0 - 100,0 A",
                                "0,80 - 100,80 A",
                                "0,0 - 0,80 A",
                                "100,0 - 100,80 A",
                                "100,0 - 200,0 B",
                                "100,60 - 200,60 B",
                                "200,0 - 200,60 B"),
                        Set.of("50,0 - 50,60 B", "50,60 - 100,60 B")),
                Arguments.of(
                        "a rafter behind a column",
                        List.of(box("C", 90, 0, 0, 110, 20, 100), box("R", 0, 20, 40, 300, 40, 60)),
                        Set.of(
                                "90,0 - 110,0 C",
                                "90,100 - 110,100 C",
                                "90,0 - 90,100 C",
                                "110,0 - 110,100 C",
                                "0,40 - 0,60 R",
                                "300,40 - 300,60 R",
                                "0,40 - 90,40 R",
                                "110,40 - 300,40 R",
                                "0,60 - 90,60 R",
                                "110,60 - 300,60 R"),
                        Set.of("90,40 - 110,40 R", "90,60 - 110,60 R")),
                Arguments.of(
                        "two boxes side by side, flush: the seam is drawn",
                        List.of(box("A", 0, 0, 0, 100, 50, 80), box("B", 100, 0, 0, 150, 50, 80)),
                        Set.of(
                                "0,0 - 100,0 A",
                                "0,80 - 100,80 A",
                                "0,0 - 0,80 A",
                                "100,0 - 100,80 A",
                                "100,0 - 150,0 B",
                                "100,80 - 150,80 B",
                                "150,0 - 150,80 B"),
                        Set.of()),
                Arguments.of(
                        "on one line: the nearer part keeps its stretch",
                        List.of(box("B", 50, 70, 0, 150, 90, 80), box("A", 0, 0, 0, 100, 50, 80)),
                        Set.of(
                                "0,0 - 100,0 A",
                                "0,80 - 100,80 A",
                                "0,0 - 0,80 A",
                                "100,0 - 100,80 A",
                                "100,0 - 150,0 B",
                                "100,80 - 150,80 B",
                                "150,0 - 150,80 B"),
                        Set.of("50,0 - 50,80 B")),
                Arguments.of(
                        "one part end to end: one line",
                        List.of(box("G", 0, 0, 0, 100, 50, 20), box("G", 100, 0, 0, 250, 50, 20)),
                        Set.of(
                                "0,0 - 250,0 G",
                                "0,20 - 250,20 G",
                                "0,0 - 0,20 G",
                                "100,0 - 100,20 G",
                                "250,0 - 250,20 G"),
                        Set.of()),
                Arguments.of(
                        "a beam from its side: both edges of each flange, the ends whole",
                        List.of(across("R", BEAM, 500)),
                        Set.of(
                                "0,-100 - 500,-100 R",
                                "0,-90 - 500,-90 R",
                                "0,90 - 500,90 R",
                                "0,100 - 500,100 R",
                                "0,-100 - 0,100 R",
                                "500,-100 - 500,100 R"),
                        Set.of()),
                Arguments.of(
                        "a tube from its side: the bore has no edges along it",
                        List.of(across("R", TUBE, 500)),
                        Set.of("0,-50 - 500,-50 R", "0,50 - 500,50 R", "0,-50 - 0,50 R", "500,-50 - 500,50 R"),
                        Set.of()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("scenes")
    void frontView(String name, List<Item> items, Set<String> visible, Set<String> hidden) {
        ViewLines lines = HiddenLines.all(items, FRONT);
        assertEquals(text(lines.visible()), new java.util.TreeSet<>(visible));
        assertEquals(text(lines.hidden()), new java.util.TreeSet<>(hidden));
        assertEquals(lines.visible(), HiddenLines.visible(items, FRONT), "with or without the hidden lines");
    }

    @Test
    void aBoxFromACornerShowsNineOfItsTwelveEdges() {
        ViewLines lines = HiddenLines.all(List.of(box("A", 0, 0, 0, 100, 50, 80)), PICTORIAL);
        assertEquals(9, lines.visible().size());
        assertEquals(3, lines.hidden().size());
    }

    @Test
    void flushBoxesFromACornerShowTheirSeamAndNothingInside() {
        List<Item> items = List.of(box("A", 0, 0, 0, 100, 50, 80), box("B", 100, 0, 0, 150, 50, 80));
        // Front 2 + 2 + 3, top 2 behind and 3 across, right end 2 more.
        assertEquals(14, HiddenLines.visible(items, PICTORIAL).size());
    }

    @Test
    void theEndOfABeamIsItsOutlineOnly() {
        List<ViewLine> lines = HiddenLines.visible(List.of(across("R", BEAM, 500)), Projection.leftSide());
        assertEquals(12, lines.size());
        assertTrue(lines.stream()
                .noneMatch(l -> l.from().x() < -3.5
                        && l.to().x() > 3.5
                        && Math.abs(l.from().y()) < 95));
    }

    @Test
    void theEndOfATubeShowsItsBore() {
        List<ViewLine> lines = HiddenLines.visible(List.of(across("R", TUBE, 500)), Projection.leftSide());
        assertEquals(8, lines.size());
        assertTrue(text(lines).contains("-25,45 - 25,45 R"), text(lines)::toString);
    }

    @Test
    void aPlateOnATubeHidesItsBore() {
        Item tube = new Item("C", Solid.square(TUBE, 0, 500), Placement.of(Vec3.ZERO, Vec3.UP, Vec3.ACROSS));
        Item cap = box("P", -60, -40, 500, 60, 40, 510);
        ViewLines lines = HiddenLines.all(List.of(tube, cap), Projection.above());
        assertTrue(lines.visible().stream().allMatch(l -> l.part().equals("P")));
        assertEquals(8, lines.hidden().size());
    }

    @Test
    void nothingShowsThroughTheSeamOfTwoParts() {
        for (double lean : new double[] {0, 0.001, 1, 40}) {
            Item rail = new Item(
                    "rail",
                    Solid.square(Profile.rectangle(0.5, 5), -35, 35),
                    Placement.of(new Vec3(100, 200, 40), new Vec3(lean, 0, 40), Vec3.ALONG));
            List<Item> items = List.of(box("A", 0, 0, 0, 100, 50, 80), box("B", 100, 0, 0, 200, 50, 80), rail);
            ViewLines lines = HiddenLines.all(items, FRONT);
            assertTrue(lines.visible().stream().noneMatch(l -> l.part().equals("rail")), "lean " + lean);
            assertTrue(lines.hidden().stream().anyMatch(l -> l.part().equals("rail")), "lean " + lean);
        }
    }

    @Test
    void nothingShowsThroughTheSeamsWithinABeam() {
        // The top of the bar lies level with the underside of the flange, behind the web.
        List<Item> items = List.of(across("R", BEAM, 500), box("bar", 600, -2, 50, 700, 2, 90));
        ViewLines lines = HiddenLines.all(items, Projection.leftSide());
        assertTrue(lines.visible().stream().noneMatch(l -> l.part().equals("bar")));
        assertTrue(text(lines.hidden()).contains("-2,90 - 2,90 bar"), text(lines.hidden())::toString);
    }

    @Test
    void framesBehindEachOtherAreDrawnOnce() {
        List<ViewLine> one = HiddenLines.visible(LongShed.of(0), FRONT);
        assertEquals(text(one), text(HiddenLines.visible(LongShed.of(5), FRONT)));
    }

    @Test
    void aPictorialLooksAtFrameOneAndTheChosenSide() {
        List<Item> items = List.of(box("A", 0, 0, 0, 100, 1000, 80));
        for (Projection view : List.of(Pictorial.isometric(Side.LEFT), Pictorial.dimetric(Side.LEFT))) {
            Set<String> seen = text(HiddenLines.visible(items, view));
            assertTrue(seen.contains(line(view, new Vec3(0, 1000, 0), new Vec3(0, 0, 0))), "long left side");
            assertTrue(seen.contains(line(view, new Vec3(0, 0, 0), new Vec3(100, 0, 0))), "gable");
        }
    }

    private static String line(Projection view, Vec3 from, Vec3 to) {
        return text(List.of(new ViewLine(view.flat(from), view.flat(to), "A")))
                .iterator()
                .next();
    }
}
