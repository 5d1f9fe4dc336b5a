package org.baywright.render.sheet;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.baywright.model.cladding.Building;
import org.baywright.model.setout.OpeningPlace;
import org.baywright.render.dimension.Dimension;
import org.junit.jupiter.api.Test;

/** The floor plan tells where each opening is in its wall. */
class PlanOpeningsTest {
    @Test
    void everyOpeningIsDimensionedFromTheLinesBesideIt() {
        Building building = Sheds.closed(Sheds.FULL + Sheds.LEAN, Sheds.openings());
        List<Draft> plan = PlanSheet.of(building);
        List<Long> printed = plan.stream()
                .flatMap(d -> d.dimensions().stream())
                .map(Dimension::value)
                .map(Math::round)
                .toList();
        for (OpeningPlace o : building.shed().openings()) {
            if (!o.isWholeBay()) {
                // The first and last bays of a main wall end on string lines, which are frame lines.
                Stream.of(o.left() - o.bay().from(), o.width(), o.bay().to() - o.right())
                        .map(Math::round)
                        .forEach(figure -> assertTrue(printed.contains(figure), o.tag() + ": no " + figure));
            }
        }
        plan.forEach(Sheds::assertReadable);
    }
}
