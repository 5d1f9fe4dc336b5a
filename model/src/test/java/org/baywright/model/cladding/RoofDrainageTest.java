package org.baywright.model.cladding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.Predicate;
import org.baywright.model.definition.Definitions;
import org.baywright.model.definition.Side;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.RoofSlope;
import org.junit.jupiter.api.Test;

/** Which gutter catches which roof. */
class RoofDrainageTest {
    private static final double COS_5 = Math.cos(Math.toRadians(5));
    private static final double TAN_5 = Math.tan(Math.toRadians(5));

    private static final Shed SHED = Shed.of(
            Definitions.of("span: 14000\nbays: 5\nbaySpacing: 5500\neaveHeight: 4500\nroofPitch: 12\nenvelope: full\n"
                    + "leanTos: [{side: right, width: 5000, pitch: 5, fromBay: 2, toBay: 4}]\n"));

    private static GutterRun gutter(Predicate<RoofSlope> wanted) {
        return Cladding.of(SHED).gutters().stream()
                .filter(run -> wanted.test(run.slope()))
                .findFirst()
                .orElseThrow();
    }

    /**
     * Pipes at the lean-to's end frames bring half of the bay past it too, so that more than three of five bays comes down
     * there. Roof areas: AS/NZS 3500.3:2018 cl. 3.4.3.2 by hand.
     */
    @Test
    void aLeanToCatchesWhatThePipesOverItSpill() {
        GutterRun main = gutter(s -> !s.line().leanTo() && s.side() == Side.RIGHT);
        GutterRun lean = gutter(s -> s.line().leanTo());
        double spilt = main.ontoLeanTos(SHED).stream()
                .mapToDouble(GutterRun.Fall::catchmentM2)
                .sum();
        double own = Cladding.of(SHED).surfaces(Surface.Role.ROOF).stream()
                .filter(s -> Math.abs(s.axes().width().z() - COS_5) < 1e-6)
                .mapToDouble(s -> s.grossM2() * COS_5 * (1 + 0.5 * TAN_5))
                .sum();
        assertTrue(spilt > main.catchmentM2() * 3.5 / 5, spilt + " of " + main.catchmentM2());
        assertEquals(own + spilt, lean.catchmentM2(), 0.5);
    }
}
