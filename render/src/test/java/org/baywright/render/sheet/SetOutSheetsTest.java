package org.baywright.render.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.baywright.model.cladding.Building;
import org.baywright.model.cladding.Cladding;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Definitions;
import org.baywright.model.definition.Seeds;
import org.baywright.model.geometry.Tolerance;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Place;
import org.baywright.model.parts.PlateStand;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.ColumnLine;
import org.baywright.model.setout.SetOut;
import org.baywright.render.dimension.Dimension;
import org.baywright.render.dimension.TurnedBox;
import org.baywright.render.mark.Text;
import org.junit.jupiter.api.Test;

/** Floor plan and base set-out hold together for any shed: words apart, inside the frame, figures the model's own. */
class SetOutSheetsTest {
    private static final int TRIES = 25;

    /** Plate centres are gathered to the tenth of a millimetre they are printed to. */
    private static final double ROUNDING = 0.06;

    @Provide
    Arbitrary<Definition> valid() {
        return Definitions.valid();
    }

    private static List<Draft> drafts(Shed shed) {
        return Stream.concat(PlanSheet.of(new Building(shed, Cladding.of(shed))).stream(), BaseSheet.of(shed).stream())
                .toList();
    }

    @Property(tries = TRIES, seed = Seeds.SHEDS)
    void wordsStandApartInsideTheFrame(@ForAll("valid") Definition definition) {
        drafts(Shed.of(definition)).forEach(SetOutSheetsTest::wordsStandApartInsideTheFrame);
    }

    private static void wordsStandApartInsideTheFrame(Draft draft) {
        List<Text> texts = draft.marks().stream()
                .filter(m -> m instanceof Text)
                .map(m -> (Text) m)
                .toList();
        for (int i = 0; i < texts.size(); i++) {
            TurnedBox box = TurnedBox.of(texts.get(i));
            Text text = texts.get(i);
            assertTrue(SheetFrame.aboveBand().covers(box.envelope()), () -> text + " leaves " + draft.number());
            for (int j = 0; j < i; j++) {
                Text other = texts.get(j);
                assertFalse(
                        box.overlaps(TurnedBox.of(other)), () -> text + " lies on " + other + " on " + draft.number());
            }
        }
    }

    @Property(tries = TRIES, seed = Seeds.SHEDS)
    void planAndSetOutPrintSpanBaysAndDiagonals(@ForAll("valid") Definition definition) {
        Shed shed = Shed.of(definition);
        SetOut setOut = shed.setOut();
        List<Double> plan = values(PlanSheet.of(new Building(shed, Cladding.of(shed))));
        List<Double> base = values(BaseSheet.of(shed));
        assertHas(plan, setOut.span());
        assertHas(base, setOut.span());
        for (int frame = 2; frame <= setOut.frames(); frame++) {
            double bay = setOut.frameLine(frame) - setOut.frameLine(frame - 1);
            assertHas(plan, bay);
        }
        if (parted(shed)) {
            return;
        }
        assertHas(plan, setOut.length());
        assertTrue(times(base, Math.hypot(setOut.span(), setOut.length())) >= 2, "diagonals of the main floor");
        for (ColumnLine line : setOut.leanTos()) {
            double width = Math.abs(line.x() - setOut.main(line.side()).x());
            double length = setOut.frameLine(line.lastFrame()) - setOut.frameLine(line.firstFrame());
            assertTrue(times(base, Math.hypot(width, length)) >= 2, "diagonals of a lean-to");
        }
    }

    /** A parted plan measures each strip; its whole is the business of the long shed below. */
    private static boolean parted(Shed shed) {
        return drafts(shed).stream()
                .flatMap(d -> d.marks().stream())
                .anyMatch(m -> m instanceof Text t && t.content().startsWith("Match line"));
    }

    /** Each part of an equal run counts, however the chain printed it. */
    private static List<Double> values(List<Draft> drafts) {
        List<Double> values = new ArrayList<>();
        for (Dimension dimension :
                drafts.stream().flatMap(d -> d.dimensions().stream()).toList()) {
            values.add(dimension.value());
            values.add(dimension.value() / dimension.parts());
        }
        return values;
    }

    private static void assertHas(List<Double> values, double wanted) {
        assertTrue(values.stream().anyMatch(v -> Math.abs(v - wanted) < 1e-5), () -> wanted + " in " + values);
    }

    private static Vec3 at(Place place) {
        return place.placement().origin();
    }

    private static long times(List<Double> values, double wanted) {
        // Each dimension is listed whole and by its parts.
        return values.stream().filter(v -> Math.abs(v - wanted) < 1e-5).count() / 2;
    }

    @Property(tries = TRIES, seed = Seeds.SHEDS)
    void everyPlateCentreIsAsFarFromTheDatumAsTheModelSays(@ForAll("valid") Definition definition) {
        Shed shed = Shed.of(definition);
        List<Double> base = values(BaseSheet.of(shed));
        for (Part plate : shed.parts(PartKind.BASE_PLATE)) {
            plate.places().forEach(place -> {
                assertTrue(
                        base.stream()
                                .anyMatch(v -> Math.abs(v - Math.abs(at(place).x())) < ROUNDING),
                        place::toString);
                assertTrue(base.stream().anyMatch(v -> Math.abs(v - at(place).y()) < ROUNDING), place::toString);
            });
        }
    }

    @Property(tries = TRIES, seed = Seeds.SHEDS)
    void everyPlateMarkHasItsHolePattern(@ForAll("valid") Definition definition) {
        Shed shed = Shed.of(definition);
        List<Draft> drafts = BaseSheet.of(shed);
        for (Part plate : shed.parts(PartKind.BASE_PLATE)) {
            assertTrue(
                    drafts.stream()
                            .flatMap(d -> d.marks().stream())
                            .anyMatch(m -> m instanceof Text t && t.content().startsWith(plate.mark() + " UNDER ")),
                    plate.mark());
            assertHas(values(drafts), plate.solid().profile().depth());
            assertHas(values(drafts), plate.solid().profile().width());
        }
    }

    @Property(tries = TRIES, seed = Seeds.SHEDS)
    void everyColumnStandsOnOnePlate(@ForAll("valid") Definition definition) {
        Shed shed = Shed.of(definition);
        List<PlateStand> stands =
                PlateStand.of(shed).stream().filter(PlateStand::isOfFrame).toList();
        assertEquals(shed.count(PartKind.BASE_PLATE), stands.size());
        assertEquals(
                stands.size(),
                stands.stream().map(PlateStand::uprightPlace).distinct().count());
        for (PlateStand stand : stands) {
            double half = stand.upright().solid().profile().depth() / 2;
            assertTrue(
                    shed.setOut().columnLines().stream()
                            .filter(l -> l.has(stand.uprightPlace().frame()))
                            .anyMatch(l -> Math.abs(l.x()
                                            + l.inward() * half
                                            - stand.middle().x())
                                    < Tolerance.COINCIDENT),
                    stand::name);
        }
    }

    @Test
    void platesUnderJambsAndMullionsAreSetOutAndEachIsDrawnOnce() {
        Shed shed = Sheds.closed(Sheds.FULL + Sheds.LEAN, Sheds.openings()).shed();
        List<Draft> drafts = BaseSheet.of(shed);
        drafts.forEach(Sheds::assertReadable);
        List<Double> base = values(drafts);
        for (PlateStand stand : PlateStand.of(shed)) {
            double along = Math.abs(stand.turnDeg() % 180) < 1
                    ? stand.middle().y()
                    : Math.abs(stand.middle().x());
            assertTrue(base.stream().anyMatch(v -> Math.abs(v - along) < ROUNDING), stand::name);
        }
        assertTrue(PlateStand.of(shed).stream().anyMatch(s -> !s.isOfFrame()), "has posts");
        for (Part plate : shed.parts(PartKind.BASE_PLATE)) {
            long titles = drafts.stream()
                    .flatMap(Sheds::texts)
                    .filter(t -> t.content().startsWith(plate.mark() + " UNDER "))
                    .count();
            // Two walls of one outline stand on BP1: one drawing serves both.
            assertEquals(1, titles, plate.mark());
        }
    }

    @Test
    void longShedIsPartedAtReadableScaleWithDatumKept() {
        Shed shed = Shed.of(Definitions.of(
                "span: 12000\nbays: 60\nbaySpacing: 6000\neaveHeight: 4200\nroofPitch: 10\n" + "leanTos:\n"
                        + "  - {side: left, width: 4000, pitch: 5, drop: 450}\n"
                        + "  - {side: right, width: 6000, pitch: 5, drop: 450}\n"));
        List<Draft> drafts = drafts(shed);
        drafts.forEach(SetOutSheetsTest::wordsStandApartInsideTheFrame);
        for (Draft draft : drafts) {
            assertTrue(List.of("1:200 @ A3", "1:5 @ A3").contains(draft.scale()), draft.scale());
        }
        List<Double> base = values(BaseSheet.of(shed));
        assertHas(base, 6000);
        assertHas(base, 180000);
        assertHas(base, 360000 - 50);
    }

    @Test
    void stripsShareTheirMatchLineAndLeaveNoBayOut() {
        List<Double> lines = new ArrayList<>();
        for (int i = 0; i <= 200; i++) {
            lines.add(i * 6000.0 + (i % 2) * 1500);
        }
        Margins margins = new Margins(20, 20, 20, 20);
        Strips strips = Strips.of(lines, 300, 12000, SheetFrame.room(), margins);
        assertEquals(Strips.SMALLEST, strips.scale());
        assertEquals(1, strips.strips().get(0).firstFrame());
        assertEquals(201, strips.strips().get(strips.strips().size() - 1).lastFrame());
        for (int i = 0; i < strips.strips().size(); i++) {
            Strip strip = strips.strips().get(i);
            double length = lines.get(strip.lastFrame() - 1) - lines.get(strip.firstFrame() - 1) + 600;
            assertTrue(strips.scale().toPaper(length)
                    <= margins.within(strip.cell()).getWidth());
            if (i > 0) {
                assertEquals(strips.strips().get(i - 1).lastFrame(), strip.firstFrame());
            }
        }
        assertTrue(strips.on(0).size() > 1);
    }

    @Test
    void runsOfFramesAreJoined() {
        assertEquals("1–3, 5, 7, 8", PlateUse.runs(List.of(1, 2, 3, 5, 7, 8)));
    }

    @Test
    void roundedCornersKeepTheAreaOfTheSection() {
        List<Vec2> square = List.of(new Vec2(-50, -50), new Vec2(50, -50), new Vec2(50, 50), new Vec2(-50, 50));
        double area = 0;
        List<Vec2> ring = SectionShape.rounded(square, 10, 0);
        for (int i = 0; i < ring.size(); i++) {
            area += ring.get(i).cross(ring.get((i + 1) % ring.size())) / 2;
        }
        double exact = 100 * 100 - (4 - Math.PI) * 10 * 10;
        assertTrue(area > exact - 3 && area < exact, () -> "area of the rounded square");
    }
}
