package org.baywright.render.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.baywright.model.cladding.Building;
import org.baywright.model.definition.Slab;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PartKind;
import org.baywright.model.takeoff.Weld;
import org.baywright.model.takeoff.Welds;
import org.baywright.render.dimension.Dimension;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Stroke;
import org.baywright.render.mark.Text;
import org.junit.jupiter.api.Test;

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

    private static List<Stroke> strokes(Layer layer) {
        return joints().marks().stream()
                .filter(Stroke.class::isInstance)
                .map(Stroke.class::cast)
                .filter(s -> s.layer() == layer)
                .toList();
    }
}
