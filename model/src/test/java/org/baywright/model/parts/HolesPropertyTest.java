package org.baywright.model.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Definitions;
import org.baywright.model.definition.Seeds;
import org.baywright.model.definition.Side;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Profile;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.junit.jupiter.api.Test;

/** Every hole of every plate has steel round it. */
class HolesPropertyTest {
    /** Steel between two holes, and from a hole to the plate's edge, as a share of the hole. Common practice. */
    private static final double LIGAMENT = 1.0;

    private static final double TO_EDGE = 0.6;

    @Provide
    Arbitrary<Definition> sheds() {
        return Definitions.clad();
    }

    @Property(tries = 12, seed = Seeds.SHEDS)
    void holesKeepApartAndFromTheEdges(@ForAll("sheds") Definition definition) {
        for (Part plate : Shed.of(definition).parts()) {
            List<Hole> holes = plate.holes();
            for (int i = 0; i < holes.size(); i++) {
                double least = holes.get(i).diameter();
                double toEdge = toEdge(plate, holes.get(i));
                assertTrue(toEdge >= TO_EDGE * least, () -> plate.mark() + " has " + toEdge + " to an edge");
                for (int j = 0; j < i; j++) {
                    double between = between(holes.get(i), holes.get(j));
                    assertTrue(between >= LIGAMENT * least, () -> plate.mark() + " has " + between + " between holes");
                }
            }
        }
    }

    private static double toEdge(Part plate, Hole hole) {
        Profile face = plate.solid().profile();
        return hole.outline().stream()
                .mapToDouble(p -> Math.min(face.depth() / 2 - Math.abs(p.x()), face.width() / 2 - Math.abs(p.y())))
                .min()
                .orElseThrow();
    }

    private static double between(Hole a, Hole b) {
        return a.outline().stream()
                .flatMapToDouble(p -> b.outline().stream().mapToDouble(p::distance))
                .min()
                .orElseThrow();
    }

    /** An upright's top is held where the rafter may come down by the whole slip gap, and go up as far. */
    @Property(tries = 12, seed = Seeds.SHEDS)
    void mullionCleatsLetTheRafterDown(@ForAll("sheds") Definition definition) {
        double slip = definition.envelope().walls().mullions().slipGap();
        Shed shed = Shed.of(definition);
        List<Part> cleats = shed.parts(PartKind.MULLION_CLEAT).stream()
                .filter(c -> !c.isSeat())
                .toList();
        assertTrue(cleats.stream().mapToInt(Part::quantity).sum() >= shed.count(PartKind.MULLION));
        for (Part cleat : cleats) {
            for (Hole slot : cleat.holes()) {
                assertEquals(slip, Math.abs(slot.run().x()) / 2, 1e-9, "up and down");
                assertEquals(0, slot.run().y(), 1e-9);
                // The upright starts a slip gap under the rafter; its own hole has its edge distance there.
                double down = cleat.solid().profile().depth() / 2 - slot.at().x();
                assertTrue(down - slip >= 1.5 * (slot.diameter() - 2), () -> cleat.mark() + ": " + down);
            }
        }
    }

    @Test
    void aSlotIsTheRoundHoleSweptAlongIt() {
        Hole slot = Hole.slot(new Vec2(10, -5), 18, 68, new Vec2(0, 2));
        assertEquals(68, slot.length(), 1e-9);
        assertEquals(18 * 50 + Math.PI * 81, slot.area(), 1e-9);
        assertEquals(-5 + 34, slot.outline().stream().mapToDouble(Vec2::y).max().orElseThrow(), 1e-9);
        assertEquals(10 + 9, slot.outline().stream().mapToDouble(Vec2::x).max().orElseThrow(), 1e-9);
        assertTrue(!Hole.slot(new Vec2(0, 0), 18, 18, new Vec2(1, 0)).isSlot());
    }

    /** Second moments of a slotted plate by summing small squares. */
    @Test
    void slotsAreTakenOutOfSecondMoments() {
        Hole slot = Hole.slot(new Vec2(0, 0), 20, 60, new Vec2(3, 4));
        Place here = new Place(Placement.of(Vec3.ZERO, Vec3.UP, Vec3.ACROSS), 1, Side.LEFT);
        Profile face = PlateMaker.plate(PartKind.MULLION_CLEAT, 120, 100, 8, List.of(slot), here)
                .solid()
                .profile();
        double depth = 0;
        double width = 0;
        double step = 0.25;
        for (double x = -60 + step / 2; x < 60; x += step) {
            for (double y = -50 + step / 2; y < 50; y += step) {
                Vec2 at = new Vec2(x, y);
                double along = Math.max(-20, Math.min(20, at.dot(new Vec2(0.6, 0.8))));
                boolean open = at.distance(new Vec2(0.6, 0.8).times(along)) < 10;
                depth += open ? 0 : x * x * step * step;
                width += open ? 0 : y * y * step * step;
            }
        }
        assertEquals(depth, face.inertiaDepth(), depth * 1e-4);
        assertEquals(width, face.inertiaWidth(), width * 1e-4);
    }
}
