package org.baywright.render.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.baywright.model.cladding.Building;
import org.baywright.model.definition.Definitions;
import org.baywright.model.definition.Slab;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PartKind;
import org.baywright.model.takeoff.Weld;
import org.baywright.model.takeoff.Welds;
import org.baywright.render.dimension.Dimension;
import org.baywright.render.mark.Bounds;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Stroke;
import org.baywright.render.mark.Text;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.algorithm.RectangleLineIntersector;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

/** Joints close up: what the base stands in, and how each plate is welded. */
class JointDetailTest {
    private static final Building BUILDING = Sheds.closed(Sheds.FULL);

    private static Draft joints() {
        return SectionSheets.of(BUILDING).stream()
                .filter(d -> d.dimensions().stream().anyMatch(n -> n.value() == anchorDepth()))
                .findFirst()
                .orElseThrow();
    }

    private static double anchorDepth() {
        return BUILDING.shed().definition().anchor().embedment();
    }

    @Test
    void theBaseShowsConcreteToItsEdgeAndDepth() {
        Slab slab = BUILDING.shed().definition().ground().slab();
        List<Long> printed = joints().dimensions().stream()
                .map(Dimension::value)
                .map(Math::round)
                .toList();
        assertTrue(slab.edgeDepth() > slab.thickness());
        assertTrue(printed.contains(Math.round(slab.thickness())), printed::toString);
        double deepest = Math.max(slab.edgeDepth(), slab.padDepth());
        assertTrue(printed.contains(Math.round(deepest - slab.thickness())), printed::toString);
        double plate = 240;
        double column = 100;
        assertTrue(printed.contains(Math.round(slab.beyond() - (plate - column) / 2)), printed::toString);
    }

    /** A rafter of 200 at 10 degrees is 203.1 deep at its plumb end, whose top is that of the 220 deep plate. */
    @Test
    void theApexPlateIsMeasuredWhereTheRafterEnds() {
        double below = 220 - 200 / Math.cos(Math.toRadians(10));
        List<Double> printed =
                joints().dimensions().stream().map(Dimension::value).toList();
        assertTrue(printed.stream().anyMatch(v -> Math.abs(v - below) < 0.05), printed::toString);
    }

    /** Hole, rod, washer and nut of each of the two anchors that the cut shows, closed outlines all. */
    @Test
    void anchorsAreRodsInHoles() {
        long boxes = strokes(Layer.ANCHOR).stream()
                .filter(s -> s.closed() && s.points().size() == 4)
                .count();
        assertEquals(2 * 4, boxes);
    }

    /** Each plate of the joints has the leg that the weld list gives it, and its mark in the tail. */
    @Test
    void everyPlateHasTheWeldOfTheList() {
        List<String> said = Sheds.texts(joints()).map(Text::content).toList();
        for (PartKind kind : List.of(PartKind.BASE_PLATE, PartKind.CAP_PLATE, PartKind.APEX_PLATE)) {
            Part plate = BUILDING.shed().parts(kind).get(0);
            Weld listed = Welds.of(BUILDING.shed()).list().stream()
                    .filter(w -> w.plate().equals(plate.mark()))
                    .findFirst()
                    .orElseThrow();
            assertTrue(said.contains("z" + Math.round(listed.leg())), said::toString);
            assertTrue(said.stream().anyMatch(w -> w.matches(plate.mark() + "(, or as engineer)?")), plate.mark());
        }
        assertTrue(String.join(" ", said).contains("engineer"));
        Sheds.assertReadable(joints());
    }

    /** The base of a wide column: neither concrete nor anchors run through the leg or the mark of its weld. */
    @Test
    void theWeldOfABaseLiesClearOfConcreteAndAnchors() {
        Building wide = Building.of(Definitions.of(
                Sheds.FULL + Sheds.LEAN.replace("toBay: 2", "toBay: 4") + "column: 200UB25.4\nrafter: 310UB40.4\n"));
        Draft sheet = SectionSheets.of(wide).stream()
                .filter(d -> Sheds.texts(d).anyMatch(t -> t.content().startsWith("BASE, LINE A")))
                .findFirst()
                .orElseThrow();
        String mark = wide.shed().parts(PartKind.BASE_PLATE).get(0).mark();
        List<Envelope> said = Sheds.texts(sheet)
                .filter(t -> t.content().matches(mark + "(,.*)?"))
                .map(Bounds::of)
                .toList();
        assertEquals(1, said.size());
        for (Mark line : sheet.marks()) {
            if (line instanceof Stroke s && (s.layer() == Layer.CONCRETE || s.layer() == Layer.ANCHOR)) {
                assertFalse(crosses(s, said.get(0)), s::toString);
            }
        }
    }

    private static boolean crosses(Stroke line, Envelope words) {
        RectangleLineIntersector room = new RectangleLineIntersector(words);
        List<Coordinate> points =
                line.points().stream().map(p -> new Coordinate(p.x(), p.y())).toList();
        return IntStream.range(1, points.size()).anyMatch(i -> room.intersects(points.get(i - 1), points.get(i)));
    }

    private static List<Stroke> strokes(Layer layer) {
        return joints().marks().stream()
                .filter(Stroke.class::isInstance)
                .map(Stroke.class::cast)
                .filter(s -> s.layer() == layer)
                .toList();
    }
}
