package org.baywright.render.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.baywright.model.cladding.Building;
import org.baywright.model.setout.OpeningPlace;
import org.baywright.render.dimension.Dimension;
import org.baywright.render.mark.Text;
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

    /** Where a chain has room on neither side the plan says where its figures are, and the schedule has them. */
    @Test
    void anOpeningWithoutRoomForItsChainNamesTheSchedule() {
        Building long100 = Sheds.closed(Sheds.FULL.replace("bays: 4", "bays: 40"), Sheds.openings());
        List<Draft> plan = PlanSheet.of(long100);
        List<Long> printed = plan.stream()
                .flatMap(d -> d.dimensions().stream())
                .map(Dimension::value)
                .map(Math::round)
                .toList();
        List<String> said =
                plan.stream().flatMap(Sheds::texts).map(Text::content).toList();
        long without = long100.shed().openings().stream()
                .filter(o -> !o.isWholeBay())
                .filter(o -> !printed.contains(Math.round(o.width())))
                .count();
        assertEquals(
                without, said.stream().filter("offsets: see schedule"::equals).count());
        assertTrue(without > 0, "the case no longer lacks room");
    }
}
