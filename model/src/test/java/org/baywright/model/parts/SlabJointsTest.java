package org.baywright.model.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Definitions;
import org.baywright.model.definition.Ground;
import org.baywright.model.definition.Seeds;
import org.baywright.model.definition.Slab;
import org.baywright.model.geometry.Convex;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

/** Joints lie where a slab should crack: panels of about 6 m, off the anchors. */
class SlabJointsTest {
    private static final String SHED = "span: 12000\neaveHeight: 4200\nroofPitch: 10\n";

    @Provide
    Arbitrary<Definition> sheds() {
        return Definitions.valid();
    }

    private static Definition withoutThickenings(Definition d) {
        Slab s = d.ground().slab();
        Slab plain = new Slab(
                s.floor(),
                s.thickness(),
                s.beyond(),
                0,
                s.padDepth(),
                s.edgeWidth(),
                s.edgeDepth(),
                s.joints(),
                s.bars());
        return Definitions.with(d, new Ground(plain, d.ground().site()));
    }

    private static SlabJoints joints(String more) {
        Shed shed = Shed.of(Definitions.of(SHED + more));
        return Foundation.of(shed).joints(shed.setOut());
    }

    @Test
    void middleOfEveryBayAndHalfTheSpan() {
        SlabJoints joints = joints("bays: 3\nbaySpacing: 6000\nenvelope: none\n");
        assertEquals(List.of(3000.0, 9000.0, 15000.0), joints.across());
        assertEquals(List.of(6000.0), joints.along());
        assertEquals((3 * 12.3) + 18.3, joints.metres(), 1e-9);
    }

    /** Bays of 8 m take two each: quarter, three quarters. */
    @Test
    void longBaysTakeTwo() {
        assertEquals(
                List.of(2000.0, 6000.0, 10000.0, 14000.0),
                joints("bays: 2\nbaySpacing: 8000\nenvelope: none\n").across());
    }

    @Test
    void noneWhenNotWantedAndNoneInPads() {
        assertTrue(
                joints("bays: 3\nbaySpacing: 6000\nslab: {joints: 0}\n").cuts().isEmpty());
        assertTrue(joints("bays: 3\nbaySpacing: 6000\nslab: {floor: pads}\n")
                .cuts()
                .isEmpty());
    }

    /** The mullion under the ridge stands where the joint would end: it moves aside by its thickening. */
    @Test
    void movesOffAMullion() {
        SlabJoints joints = joints("bays: 3\nbaySpacing: 6000\nmullions: {spacing: 6000}\n");
        assertEquals(300, Math.abs(joints.along().get(0) - 6000), 50);
    }

    /** Without thickenings nothing is cut out round plates, so the places themselves must be clear of most of them. */
    @Test
    void keepsOffPlatesWhereNothingIsThickened() {
        Shed shed = Shed.of(Definitions.of(
                SHED + "bays: 3\nbaySpacing: 6000\nmullions: {spacing: 6000}\nslab: {thickness: 200, padSide: 0}\n"));
        double joint = Foundation.of(shed).joints(shed.setOut()).along().get(0);
        assertTrue(Math.abs(joint - 6000) >= 120, "the plate under the ridge is 240 wide: " + joint);
    }

    /** Mullions so close that a joint along the building is nowhere clear of their plates. */
    @Test
    void aJointWithNoClearPlaceIsTold() {
        String close = "slab: {thickness: 200, padSide: 0, joints: 500}\nmullions: {spacing: 500}\n";
        Shed shed = Shed.of(Definitions.of(SHED + "bays: 3\nbaySpacing: 6000\n" + close));
        assertFalse(Foundation.of(shed).joints(shed.setOut()).under().isEmpty());
        assertEquals(List.of(), joints("bays: 3\nbaySpacing: 6000\n").under());
    }

    /** Plates measured on their solids, on slabs without thickenings too, through which no cut would run anyhow. */
    @Property(tries = 60, seed = Seeds.SHEDS)
    void noCutRunsUnderAPlateUntold(@ForAll("sheds") Definition definition, @ForAll boolean thickened) {
        Shed shed = Shed.of(thickened ? definition : withoutThickenings(definition));
        SlabJoints joints = Foundation.of(shed).joints(shed.setOut());
        for (PlateStand stand : PlateStand.of(shed)) {
            Envelope plate = new Envelope();
            Convex.of(stand.plate().solid(), stand.platePlace().placement())
                    .forEach(lump -> lump.corners().forEach(c -> plate.expandToInclude(c.x(), c.y())));
            plate.expandBy(-1);
            boolean cut = joints.cuts().stream()
                    .anyMatch(c -> plate.intersects(
                            new Coordinate(c.from().x(), c.from().y()), new Coordinate(c.to().x(), c.to().y())));
            assertTrue(!cut || joints.under().contains(stand.grid()), () -> stand.grid() + " " + joints);
        }
        double plateSide = PlateStand.of(shed).stream()
                .mapToDouble(s -> Math.max(
                        s.plate().solid().profile().depth(),
                        s.plate().solid().profile().width()))
                .max()
                .orElse(0);
        if (definition.ground().slab().padSide() > plateSide + 10 && thickened) {
            assertEquals(List.of(), joints.under());
        }
    }

    @Property(tries = 60, seed = Seeds.SHEDS)
    void panelsAreNoLongerThanAsked(@ForAll("sheds") Definition definition) {
        Shed shed = Shed.of(definition);
        SlabJoints joints = Foundation.of(shed).joints(shed.setOut());
        double most = definition.ground().slab().joints() + 1e-6;
        for (List<Double> places : List.of(joints.across(), joints.along())) {
            for (int i = 1; i < places.size(); i++) {
                assertTrue(places.get(i) - places.get(i - 1) <= most, () -> places.toString());
            }
        }
    }
}
