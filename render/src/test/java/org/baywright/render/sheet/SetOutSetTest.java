package org.baywright.render.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.baywright.model.cladding.Building;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Definitions;
import org.baywright.model.definition.Ground;
import org.baywright.model.definition.Seeds;
import org.baywright.model.definition.Slab;
import org.baywright.model.definition.SlabBars;
import org.baywright.model.parts.PlateStand;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.SetOut;
import org.baywright.render.dimension.Dimension;
import org.baywright.render.dimension.Figure;
import org.baywright.render.dimension.TurnedBox;
import org.baywright.render.mark.Text;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;

/** The set-out sheets of random sheds can be read and give the model's figures. */
class SetOutSetTest {
    private static final String FIVE = "span: 12000\nbays: 4\nbaySpacing: 6000\neaveHeight: 4200\nroofPitch: 10\n";

    @Provide
    Arbitrary<Definition> bare() {
        return Definitions.valid();
    }

    @Provide
    Arbitrary<Definition> clad() {
        return Definitions.clad();
    }

    private static Stream<Text> texts(Draft draft) {
        return draft.marks().stream().filter(Text.class::isInstance).map(Text.class::cast);
    }

    private static Set<String> words(List<Draft> drafts) {
        return drafts.stream().flatMap(SetOutSetTest::texts).map(Text::content).collect(Collectors.toSet());
    }

    private static void holds(Definition definition) {
        Building building = Building.of(definition);
        SetOutSet.of(building).sheets().forEach(SheetsPropertyTest::assertReadable);
        Envelope room = SheetFrame.aboveBand();
        for (Draft draft : SetOutSet.drafts(building.shed())) {
            texts(draft)
                    .forEach(t -> assertTrue(
                            room.covers(TurnedBox.of(t).envelope()), () -> draft.number() + " off the room: " + t));
            for (Dimension dimension : draft.dimensions()) {
                double distance = switch (dimension.direction()) {
                    case HORIZONTAL ->
                        Math.abs(dimension.to().x() - dimension.from().x());
                    case VERTICAL ->
                        Math.abs(dimension.to().y() - dimension.from().y());
                    case ALIGNED -> dimension.from().distance(dimension.to());
                };
                assertEquals(distance, Math.abs(Double.parseDouble(dimension.text())), 0.0501, draft.number());
            }
        }
    }

    @Property(tries = 5, seed = Seeds.SHEDS)
    void bareShedsCanBeReadAndMeasured(@ForAll("bare") Definition definition) {
        holds(definition);
    }

    @Property(tries = 5, seed = Seeds.SHEDS)
    void closedShedsOverBarsToo(@ForAll("clad") Definition definition) {
        holds(withBars(definition));
    }

    private static Definition withBars(Definition d) {
        Slab slab = d.ground().slab();
        SlabBars bars = new SlabBars(12, new SlabBars.Row(210, 40), new SlabBars.Row(190, -30), 40, 10);
        Slab barred = new Slab(
                slab.floor(),
                slab.thickness(),
                slab.beyond(),
                slab.padSide(),
                slab.padDepth(),
                slab.edgeWidth(),
                slab.edgeDepth(),
                slab.joints(),
                Optional.of(bars));
        return Definitions.with(d, new Ground(barred, d.ground().site()));
    }

    /**
     * Every middle is among the running dimensions of the plan, and every hole line too unless the plan says that the plates'
     * own drawings have them.
     */
    @Property(tries = 5, seed = Seeds.SHEDS)
    void thePlanGivesEveryMiddleAndHoleLine(@ForAll("bare") Definition definition) {
        Shed shed = Shed.of(definition);
        Set<String> printed = words(SetOutSet.drafts(shed).stream()
                .filter(d -> d.number().startsWith("L2"))
                .toList());
        boolean elsewhere = String.join(" ", printed).contains("own drawing, from these lines");
        for (PlateStand stand : PlateStand.of(shed)) {
            Stream.concat(
                            Stream.of(stand.middle().x(), stand.middle().y()),
                            elsewhere
                                    ? Stream.<Double>empty()
                                    : stand.holes().stream().flatMap(h -> Stream.of(h.x(), h.y())))
                    .map(Figure::length)
                    .forEach(figure -> assertTrue(printed.contains(figure), () -> figure + " of " + stand.grid()));
        }
    }

    /** trade rule: 12 x 24 m, 5 mm out of square across shows as 9 mm in the diagonals. */
    @Test
    void whatADifferenceOfDiagonalsMeans() {
        Rectangle floor = new Rectangle("floor", 24_000, 12_000);
        assertEquals(26_832.8, floor.diagonal(), 0.05);
        assertEquals(5, floor.outOfSquare(8.94), 0.01);
        // Drawn out: an end line that leans by 7 over the width.
        double longer = Math.hypot(24_000 + 7, 12_000);
        double shorter = Math.hypot(24_000 - 7, 12_000);
        assertEquals(7, floor.outOfSquare(longer - shorter), 0.001);
        assertEquals(10, floor.allowed());
        assertEquals(5, new Rectangle("bay", 6000, 12_000).allowed());
    }

    @Test
    void theRightAngleIsTheLargestThatFits() {
        RightAngle angle = RightAngle.of(SetOut.of(Definitions.of(FIVE)));
        assertEquals(16_000, angle.onA());
        assertEquals(12_000, angle.onOne());
        assertEquals(angle.across(), Math.hypot(angle.onA(), angle.onOne()), 1e-9);
        RightAngle wide = RightAngle.of(SetOut.of(Definitions.of(FIVE.replace("bays: 4", "bays: 1"))));
        assertEquals(4500, wide.onA(), 1500);
        assertTrue(wide.onA() <= 6000 && wide.onOne() <= 12_000 && wide.alongA() == 3);
    }

    @Test
    void stepsAndTablesCarryTheShedsOwnFigures() {
        String words = String.join(" ", words(SetOutSet.drafts(Shed.of(Definitions.of(FIVE)))));
        for (String figure : List.of("24000", "12000", "26832.8", "13416.4", "115", "187.5", "not given: locate")) {
            assertTrue(words.contains(figure), figure);
        }
    }

    /** Also where the building is too long to be drawn whole. */
    @Test
    void theStringLinesAreSketchedForEveryLength() {
        for (int bays : List.of(4, 40, 200)) {
            List<Draft> drafts = SetOutSet.drafts(Shed.of(Definitions.of(FIVE.replace("bays: 4", "bays: " + bays))));
            Set<String> words = words(drafts);
            assertTrue(words.stream().anyMatch(w -> w.startsWith("STRING LINES AND HURDLES")), bays + " bays");
            assertTrue(words.contains("Line " + (bays + 1) + ": step 5"), bays + " bays");
            assertEquals(bays > 4, words.stream().anyMatch(w -> w.contains("MIDDLE LEFT OUT")), bays + " bays");
        }
    }

    @Test
    void holesAndBarsAreDrawnOnlyWhenBarsAreKnown() {
        Definition usual = Definitions.of(FIVE);
        assertTrue(SetOutSet.drafts(Shed.of(usual)).stream()
                .noneMatch(d -> d.number().startsWith("L4")));
        List<Draft> barred = SetOutSet.drafts(Shed.of(withBars(usual)));
        assertTrue(barred.stream().anyMatch(d -> d.number().startsWith("L4")));
        assertTrue(words(barred).stream().anyMatch(w -> w.contains("Open circle")));
    }
}
