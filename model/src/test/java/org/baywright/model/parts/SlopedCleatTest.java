package org.baywright.model.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Comparator;
import java.util.List;
import org.baywright.model.definition.Definitions;
import org.baywright.model.geometry.Vec3;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The upper edge of a mullion's cleat under a rafter lies along the rafter, so that it can be welded from end to end. */
class SlopedCleatTest {
    private static final double SPAN = 15_000;
    private static final double COLUMN = 125;

    /** The rafter's underside by hand: eave line, up the slope, less the rafter's depth plumb. */
    private static double underside(double x, double pitchDeg, double eave, double depth) {
        double fromEave = Math.min(x, SPAN - x);
        double pitch = Math.toRadians(pitchDeg);
        return eave + fromEave * Math.tan(pitch) - depth / Math.cos(pitch);
    }

    @ParameterizedTest
    @CsvSource({"5", "10", "22"})
    void upperEdgeLiesAlongTheRafter(double pitch) {
        Shed shed =
                Shed.of(Definitions.of("span: " + SPAN + "\nbays: 2\nbaySpacing: 6000\neaveHeight: 5400\nroofPitch: "
                        + pitch + "\nenvelope: full\ncolumn: SHS 125x125x5\nrafter: RHS 200x100x6\n"));
        List<Part> cleats = shed.parts(PartKind.MULLION_CLEAT);
        int sloped = 0;
        for (Part cleat : cleats) {
            for (Place place : cleat.places()) {
                List<Vec3> top = cleat.solid().profile().outline().stream()
                        .map(p -> place.placement().toWorld(0, p.x(), p.y()))
                        .sorted(Comparator.comparingDouble(Vec3::z).reversed())
                        .limit(2)
                        .toList();
                boolean ridge = Math.abs(place.placement().origin().x() - SPAN / 2) < COLUMN;
                if (!ridge) {
                    sloped++;
                    top.forEach(at -> assertEquals(underside(at.x(), pitch, 5400, 200), at.z(), 0.05));
                }
            }
        }
        assertTrue(sloped >= 4, "two mullions a wall beside the ridge's");
        assertEquals(2, cleats.size(), "both hands are one plate turned about, and one is level under the ridge");
    }
}
