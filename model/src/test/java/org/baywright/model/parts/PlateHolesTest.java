package org.baywright.model.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Definitions;
import org.baywright.model.definition.Seeds;
import org.baywright.model.geometry.Profile;
import org.baywright.model.geometry.Vec2;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Holes of a plate keep apart and inside its edges, and a mullion's cleat lets the rafter move. */
class PlateHolesTest {
    /** Metal between two holes. @source pitch of 2.5 bolt diameters, steel design standard, from memory; less the hole */
    private static final double BETWEEN = 1.2;

    /** Metal from a hole to the edge, of its diameter. @source 1.25 bolt diameters to the middle, from memory */
    private static final double TO_EDGE = 0.5;

    private static final String SHED =
            "span: 12000\nbays: 2\nbaySpacing: 6000\neaveHeight: 4200\nroofPitch: 10\nenvelope: full\n";

    @Provide
    Arbitrary<Definition> sheds() {
        return Definitions.clad();
    }

    @Property(tries = 40, seed = Seeds.SHEDS)
    void holesKeepApartAndInside(@ForAll("sheds") Definition definition) {
        for (Part plate : Shed.of(definition).parts()) {
            Profile face = plate.solid().profile();
            for (Hole hole : plate.holes()) {
                double end = face.depth() / 2 - Math.abs(hole.at().x()) - hole.length() / 2;
                double side = face.width() / 2 - Math.abs(hole.at().y()) - hole.diameter() / 2;
                assertTrue(Math.min(end, side) >= TO_EDGE * hole.diameter(), () -> plate.mark() + " " + plate.holes());
                plate.holes().stream()
                        .filter(other -> other != hole)
                        .forEach(other -> assertTrue(
                                hole.clearOf(other) >= BETWEEN * hole.diameter(),
                                () -> plate.mark() + " " + plate.holes()));
            }
        }
    }

    /** The bolt in the middle of its slot can go the slip gap either way; narrow uprights have one bolt. */
    @ParameterizedTest
    @CsvSource({
        "SHS 100x100x4, 25, 120, 2, 68, 40",
        "SHS 75x75x4, 25, 120, 1, 68, 0",
        "C150-15, 25, 120, 1, 68, 0",
        "SHS 100x100x4, 60, 180, 2, 138, 40",
        "SHS 100x100x4, 0, 120, 2, 18, 40"
    })
    void mullionCleats(String section, double slip, double length, int bolts, double slot, double gauge) {
        Shed shed = Shed.of(Definitions.of(SHED + "mullions: {section: " + section + ", slipGap: " + slip + "}\n"));
        Part cleat = shed.parts(PartKind.MULLION_CLEAT).get(0);
        assertEquals(length, cleat.solid().profile().depth(), 1e-9);
        assertEquals(bolts, cleat.holes().size());
        assertEquals(slot, cleat.holes().get(0).length(), 1e-9);
        double across =
                cleat.holes().stream().mapToDouble(h -> h.at().y()).max().orElseThrow();
        assertEquals(gauge, 2 * across, 1e-9);
    }

    @ParameterizedTest
    @CsvSource({
        // two round holes; a slot above a hole; beside it; slots end to end
        "0, 0, 40, 0, 22",
        "30, 0, 40, 0, 7",
        "30, 0, 0, 40, 22",
        "30, 30, 70, 0, 22"
    })
    void metalBetweenTwoHoles(double slide, double otherSlide, double along, double across, double clear) {
        Hole one = new Hole(new Vec2(0, 0), 18, slide);
        Hole other = new Hole(new Vec2(along, across), 18, otherSlide);
        assertEquals(clear, one.clearOf(other), 1e-9);
        assertEquals(clear, other.clearOf(one), 1e-9);
    }

    /** A slot is a rectangle and two half circles. */
    @ParameterizedTest
    @CsvSource({"18, 0, 254.469", "18, 50, 1154.469"})
    void areaOfAHole(double diameter, double slide, double area) {
        Hole hole = new Hole(new Vec2(0, 0), diameter, slide);
        assertEquals(area, hole.area(), 1e-3);
        assertEquals(slide, hole.ends().get(0).distance(hole.ends().get(1)), 1e-9);
    }
}
