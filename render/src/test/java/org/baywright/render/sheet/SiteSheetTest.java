package org.baywright.render.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Definitions;
import org.baywright.model.definition.Ground;
import org.baywright.model.definition.Site;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.SitePlan;
import org.baywright.render.dimension.Figure;
import org.baywright.render.dimension.TurnedBox;
import org.baywright.render.mark.Text;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SiteSheetTest {
    private static final String SHED =
            "name: Machinery shed\nspan: 12000\nbays: 4\nbaySpacing: 6000\neaveHeight: 4200\n"
                    + "roofPitch: 10\nleanTos:\n  - {side: right, width: 4000, pitch: 5, drop: 450, fromBay: 1, toBay: 2}\n";

    private static final List<Vec2> LAND = List.of(
            new Vec2(0, 0),
            new Vec2(80_000, 5_000),
            new Vec2(85_000, 60_000),
            new Vec2(40_000, 75_000),
            new Vec2(0, 60_000));
    private static final List<Vec2> BARN = List.of(
            new Vec2(55_000, 15_000), new Vec2(70_000, 15_000), new Vec2(70_000, 25_000), new Vec2(55_000, 25_000));

    static Shed shed(Site site) {
        Definition d = Definitions.of(SHED);
        return Shed.of(Definitions.with(d, new Ground(d.ground().slab(), Optional.of(site))));
    }

    static Stream<Site> sites() {
        List<Vec2> farm = LAND.stream().map(v -> v.times(20)).toList();
        return Stream.of(
                new Site(LAND, new Vec2(20_000, 20_000), 0, 0, List.of(BARN)),
                new Site(LAND, new Vec2(15_000, 30_000), 30, -20, List.of()),
                new Site(LAND, new Vec2(100, 20_000), 0, 90, List.of(BARN)),
                new Site(farm, new Vec2(300_000, 300_000), 75, 0, List.of()));
    }

    @ParameterizedTest
    @MethodSource("sites")
    void wordsStandApartInsideTheFrame(Site site) {
        for (Draft draft : SiteSheet.of(shed(site))) {
            List<TurnedBox> boxes = texts(draft).map(TurnedBox::of).toList();
            assertTrue(boxes.size() > 40, "little said");
            for (int i = 0; i < boxes.size(); i++) {
                assertTrue(SheetFrame.aboveBand().covers(boxes.get(i).envelope()), "runs out");
                for (int j = 0; j < i; j++) {
                    assertFalse(boxes.get(i).overlaps(boxes.get(j)), "words on words");
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("sites")
    void everySetbackIsPrintedInTheTableAndOnThePlan(Site site) {
        Shed shed = shed(site);
        SitePlan plan = SitePlan.of(shed.definition(), shed.setOut(), site);
        assertTrue(plan.setbacks().size() >= 3);
        Draft draft = SiteSheet.of(shed).get(0);
        for (SitePlan.Distance way : plan.setbacks()) {
            String figure = Figure.length(way.length());
            long printed = texts(draft).filter(t -> t.content().equals(figure)).count();
            assertTrue(printed >= 2, figure + " is printed " + printed + " times");
        }
    }

    @Test
    void noSiteNoSheet() {
        assertEquals(List.of(), SiteSheet.of(Shed.of(Definitions.of(SHED))));
    }

    @Test
    void bearingsAreInDegreesAndMinutes() {
        assertEquals("90°00'", SiteSheet.bearing(90));
        assertEquals("86°25'", SiteSheet.bearing(86.4237));
        assertEquals("0°00'", SiteSheet.bearing(359.9999));
    }

    private static Stream<Text> texts(Draft draft) {
        return draft.marks().stream().filter(Text.class::isInstance).map(Text.class::cast);
    }
}
