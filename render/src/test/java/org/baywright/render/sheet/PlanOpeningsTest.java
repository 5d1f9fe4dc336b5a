package org.baywright.render.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
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

    /** Where a chain has room on neither side the plan says where its figures are, and the schedule has them. */
    @Test
    void anOpeningWithoutRoomForItsChainNamesTheSchedule() {
        Building building = Sheds.closed(Sheds.FULL, Sheds.openings());
        Plan plan = new Plan(building.shed());
        Strip whole = new Strip(1, 5, 0, SheetFrame.room());
        SheetBuilder sheet = new SheetBuilder("S2", "Floor plan");
        PlacedView view = sheet.view("PLAN", whole.cell(), plan.bounds(whole), new Margins(20, 20, 20, 20));
        PlanWalls walls = new PlanWalls(building, SlabLine.edgeOf(building.shed(), plan.axes()));
        view.keepClear(SheetFrame.room());
        List<OpeningPlace> without = walls.dimension(view, plan.axes(), 0, 24_000);
        assertEquals(3, without.size());
        walls.name(view, plan.axes(), 0, 24_000, without);
        assertEquals(
                3,
                Sheds.texts(sheet.build())
                        .filter(t -> t.content().equals("offsets: see schedule"))
                        .count());
    }
}
