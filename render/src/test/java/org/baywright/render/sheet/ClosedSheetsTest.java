package org.baywright.render.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.baywright.model.cladding.Building;
import org.baywright.model.cladding.Flashing;
import org.baywright.model.definition.Definitions;
import org.baywright.model.definition.LiftingBeam;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.OpeningPlace;
import org.baywright.model.takeoff.Bill;
import org.baywright.model.takeoff.FlashingLengths;
import org.baywright.render.dimension.Figure;
import org.baywright.render.dimension.Row;
import org.baywright.render.mark.Arc;
import org.baywright.render.mark.Bounds;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Stroke;
import org.baywright.render.mark.Text;
import org.baywright.render.paper.Pen;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Envelope;

/** Flashing profiles, schedule of openings, details, and the two sets, of closed sheds. */
class ClosedSheetsTest {
    private static final String SKILLION =
            "roofShape: skillion\nspan: 9000\nbays: 3\nbaySpacing: 5000\neaveHeight: 3000\nroofPitch: 5\nenvelope: full\n";

    static Stream<Building> buildings() {
        return Stream.of(
                Sheds.closed(Sheds.FULL),
                Sheds.closed(Sheds.FULL + Sheds.LEAN, Sheds.openings()),
                Sheds.closed(SKILLION));
    }

    private static Building full() {
        return Sheds.closed(Sheds.FULL + Sheds.LEAN, Sheds.openings());
    }

    @ParameterizedTest
    @MethodSource("buildings")
    void wordsStandApart(Building building) {
        FlashingSheets.of(building, 1).forEach(Sheds::assertReadable);
        OpeningSchedule.of(building.shed(), 1).forEach(Sheds::assertReadable);
        DetailSheets.of(building).forEach(Sheds::assertReadable);
    }

    @ParameterizedTest
    @MethodSource("buildings")
    void eachFlashingIsDrawnOnceWithItsFigures(Building building) {
        List<Draft> drafts = FlashingSheets.of(building, 1);
        List<String> drawn = drafts.stream()
                .flatMap(d -> d.marks().stream())
                .filter(m -> m instanceof Stroke && !m.part().isEmpty())
                .map(Mark::part)
                .toList();
        List<String> marks =
                building.cladding().flashings().stream().map(Flashing::mark).toList();
        assertFalse(marks.isEmpty());
        assertEquals(marks, drawn);
        Set<String> words =
                drafts.stream().flatMap(Sheds::texts).map(Text::content).collect(Collectors.toSet());
        for (Flashing flashing : building.cladding().flashings()) {
            String girth = "Girth " + Figure.length(flashing.girth()) + ", " + flashing.folds()
                    + (flashing.folds() == 1 ? " fold." : " folds.");
            assertTrue(words.contains(girth), girth);
            String pieces = new FlashingLengths(flashing).toBuy() + " @ " + Figure.length(flashing.stockLength());
            assertTrue(words.stream().anyMatch(w -> w.startsWith(pieces)), pieces);
            for (int i = 1; i < flashing.fold().size(); i++) {
                String leg = Figure.length(
                        flashing.fold().get(i).distance(flashing.fold().get(i - 1)));
                assertTrue(words.contains(leg), flashing.mark() + " leg " + leg);
            }
        }
    }

    /** On paper a fold is as long as its girth at the scale of its view. */
    @Test
    void profilesAreToScale() {
        for (Draft draft : FlashingSheets.of(full(), 1)) {
            for (Mark mark : draft.marks()) {
                if (mark instanceof Stroke stroke && !mark.part().isEmpty()) {
                    double paper = IntStream.range(1, stroke.points().size())
                            .mapToDouble(i -> stroke.points()
                                    .get(i)
                                    .distance(stroke.points().get(i - 1)))
                            .sum();
                    double girth = full().cladding().flashings().stream()
                            .filter(f -> f.mark().equals(mark.part()))
                            .findFirst()
                            .orElseThrow()
                            .girth();
                    long n = Math.round(girth / paper);
                    assertTrue(List.of(2L, 5L, 10L).contains(n), mark.part() + " at 1:" + n);
                    assertEquals(girth, paper * n, 1e-6);
                    assertTrue(Sheds.texts(draft)
                            .anyMatch(t -> t.content().startsWith(mark.part() + "  ")
                                    && t.content().contains("1:" + n)));
                }
            }
        }
    }

    /** A door behind a lean-to's closed wall is not seen, one in that wall is: two tags lay on each other once. */
    @Test
    void anElevationTagsTheOpeningsThatAreSeen() {
        Building building = Building.of(Definitions.of(Sheds.FULL
                + "leanTos:\n  - {side: right, width: 4000, pitch: 6, drop: 450}\n"
                + "wallSheets: {leanToWalls: true, behindLeanTos: true}\nopenings:\n"
                + "  - {type: rollerDoor, wall: right, bay: 2, width: 3000, height: 2500}\n"
                + "  - {type: rollerDoor, wall: right, leanTo: right, bay: 2, width: 3000, height: 2500}\n"));
        List<String> words = ElevationSheets.of(building).stream()
                .filter(draft -> draft.number().startsWith("S3.2"))
                .flatMap(Sheds::texts)
                .map(Text::content)
                .toList();
        assertTrue(words.contains("D2 roller door"), () -> words.toString());
        assertFalse(words.contains("D1 roller door"), () -> words.toString());
    }

    /** Beside an open lean-to the title names the lean-to's line, and the main wall behind it is drawn thinner. */
    @Test
    void anElevationNamesTheNearestLineAndDrawsWhatIsFurtherBackThinner() {
        Building building = Building.of(Definitions.of(Sheds.FULL
                + "leanTos:\n  - {side: right, width: 4000, pitch: 5, drop: 450, fromBay: 1, toBay: 2}\nopenings:\n"
                + "  - {type: open, wall: right, bay: 1}\n"
                + "  - {type: window, wall: left, bay: 1, width: 1800, height: 900, sill: 1200}\n"));
        List<Draft> drafts = ElevationSheets.of(building);
        assertTrue(drafts.stream()
                .flatMap(Sheds::texts)
                .anyMatch(t -> t.content().startsWith("RIGHT SIDE ELEVATION, LINES C AND B ")));
        assertTrue(drafts.stream()
                .flatMap(Sheds::texts)
                .anyMatch(t -> t.content().startsWith("LEFT SIDE ELEVATION, LINE A ")));
        Shed shed = building.shed();
        assertEquals(Set.of(Pen.DIMENSION), pens(drafts, shed, PartKind.JAMB));
        assertEquals(Set.of(Pen.VISIBLE), pens(drafts, shed, PartKind.LEAN_TO_COLUMN));
    }

    private static Set<Pen> pens(List<Draft> drafts, Shed shed, PartKind kind) {
        Set<String> marks = shed.parts(kind).stream().map(Part::mark).collect(Collectors.toSet());
        return drafts.stream()
                .flatMap(d -> d.marks().stream())
                .filter(m -> m instanceof Stroke && marks.contains(m.part()))
                .map(m -> ((Stroke) m).pen())
                .collect(Collectors.toSet());
    }

    @Test
    void everyOpeningHasItsRow() {
        Building building = full();
        List<OpeningPlace> places = building.shed().openings();
        List<Row> rows = OpeningSchedule.table(building.shed()).rows();
        assertEquals(4, places.size());
        assertEquals(
                List.of("D1", "D2", "W3", "O4"),
                rows.stream().map(r -> r.cells().get(0)).toList());
        List<String> roller = rows.get(0).cells();
        assertEquals(List.of("roller door", "front", "4000", "3600", "0", "3600"), roller.subList(1, 7));
        // The roof stands 4200 + 4000 tan 10 over the door's edges.
        assertEquals(4200 + 4000 * Math.tan(Math.toRadians(10)) - 3600, Double.parseDouble(roller.get(10)), 0.05);
        assertEquals("4000 / 4000", roller.get(11));
        assertEquals(
                List.of("left, bay 3", "1800", "900", "1200", "2100"),
                rows.get(2).cells().subList(2, 7));
        assertEquals(List.of(), OpeningSchedule.of(Sheds.closed(Sheds.FULL).shed(), 1));
    }

    @ParameterizedTest
    @MethodSource("buildings")
    void detailsAreNumberedOnTheirSheetAndNameParts(Building building) {
        List<Detail> details = Details.of(building);
        List<Draft> drafts = DetailSheets.of(building);
        assertEquals(2, drafts.size());
        assertTrue(details.size() >= 4, "few details");
        Set<String> words =
                drafts.stream().flatMap(Sheds::texts).map(Text::content).collect(Collectors.toSet());
        for (Draft draft : drafts) {
            List<Detail> own = details.stream()
                    .filter(d -> d.callout().sheet().equals(draft.number()))
                    .toList();
            long bubbles = draft.marks().stream()
                    .filter(m -> m instanceof Arc arc && arc.radius() == Callout.RADIUS)
                    .count();
            assertEquals(own.size(), bubbles);
            for (Detail detail : own) {
                assertTrue(Sheds.texts(draft).anyMatch(t -> t.content().startsWith(detail.title())), detail.title());
            }
        }
        for (PartKind kind : List.of(PartKind.PURLIN, PartKind.PURLIN_CLEAT)) {
            assertTrue(
                    building.shed().parts(kind).stream()
                            .anyMatch(p -> words.stream().anyMatch(w -> w.startsWith(p.mark() + "  "))),
                    kind + " is not named");
        }
        assertTrue(words.stream().anyMatch(w -> w.startsWith("Gutter: ")));
        assertTrue(words.stream().anyMatch(w -> w.startsWith("Roof sheet ")));
    }

    /** Every detail gives the sizes that govern it, inside its border. */
    @ParameterizedTest
    @MethodSource("buildings")
    void detailsCarryFigures(Building building) {
        List<Draft> drafts = DetailSheets.of(building);
        for (Draft draft : drafts) {
            List<Envelope> borders = draft.marks().stream()
                    .filter(m -> m instanceof Stroke s
                            && s.closed()
                            && s.pen() == Pen.DIMENSION
                            && s.part().isEmpty())
                    .map(Bounds::of)
                    .filter(b -> b.getHeight() > 60)
                    .toList();
            List<Text> figures = Sheds.texts(draft)
                    .filter(t -> t.layer() == Layer.DIMENSION && t.content().matches("[0-9.]+"))
                    .toList();
            assertFalse(borders.isEmpty());
            borders.forEach(b -> assertTrue(
                    figures.stream().filter(t -> b.covers(Bounds.of(t))).count() >= 2,
                    draft.number() + ": too few figures in a detail"));
            figures.forEach(t -> assertTrue(
                    borders.stream().anyMatch(b -> b.covers(Bounds.of(t))), draft.number() + ": outside " + t));
        }
        Set<String> words =
                drafts.stream().flatMap(Sheds::texts).map(Text::content).collect(Collectors.toSet());
        double depth =
                building.shed().definition().envelope().roofWater().gutter().depth();
        assertTrue(words.contains(Figure.length(depth)), "depth of the gutter");
    }

    /** A lifting beam takes a third sheet of details; sections and framing name the sheets that details are on. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "{run: along, fromFrame: 2, toFrame: 3, underside: 4200}",
                "{run: across, fromFrame: 3, underside: 3500}"
            })
    void liftingBeamAndMullionTopsAreDetailedWhereTheyAreCalledOut(String beam) {
        Building building = Building.of(Definitions.of(Sheds.FULL.replace("4200", "4800") + "liftingBeam: " + beam));
        List<Draft> details = DetailSheets.of(building);
        assertEquals(3, details.size());
        details.forEach(Sheds::assertReadable);
        List<Draft> all = DrawingSet.drafts(building, Bill.of(building));
        assertCalledOut(building, "LIFTING BEAM", all, "S4");
        assertCalledOut(building, "SLOTTED TOP CLEAT", all, "S6");
        Set<String> words =
                details.stream().flatMap(Sheds::texts).map(Text::content).collect(Collectors.toSet());
        for (PartKind kind : List.of(PartKind.LIFTING_BRACKET, PartKind.LIFTING_PLATE, PartKind.LIFTING_BEAM)) {
            String mark = building.shed().parts(kind).get(0).mark();
            assertTrue(words.stream().anyMatch(w -> w.startsWith(mark + "  ")), mark);
        }
        LiftingBeam lifted =
                building.shed().definition().envelope().liftingBeam().orElseThrow();
        String hook = Figure.length(lifted.underside() - lifted.hookDrop());
        assertTrue(words.contains("Hook at its highest +" + hook), hook);
    }

    private static void assertCalledOut(Building building, String title, List<Draft> all, String series) {
        Detail detail = Details.of(building).stream()
                .filter(d -> d.title().equals(title))
                .findFirst()
                .orElseThrow();
        Draft on = all.stream()
                .filter(d -> d.number().equals(detail.callout().sheet()))
                .findFirst()
                .orElseThrow();
        assertTrue(Sheds.texts(on).anyMatch(t -> t.content().startsWith(title)), "not on " + on.number());
        String number = String.valueOf(detail.callout().detail());
        assertTrue(
                all.stream()
                        .filter(d -> d.number().startsWith(series))
                        .anyMatch(d -> Sheds.texts(d).anyMatch(t -> t.content().equals(number))
                                && Sheds.texts(d).anyMatch(t -> t.content().equals(on.number()))),
                title + " is not called out");
    }

    @Test
    void aBareFrameHasNone() {
        Building bare = Building.of(Definitions.of(Sheds.FULL.replace("envelope: full", "envelope: none")));
        assertEquals(List.of(), DetailSheets.of(bare));
        assertEquals(List.of(), FlashingSheets.of(bare, 1));
    }

    /** The council set is part of the whole, without the workshop's sheets; each cover lists its own set. */
    @Test
    void setsDifferByTheWorkshopsSheetsAndListThemselves() {
        Building building = full();
        Bill bill = Bill.of(building);
        List<Draft> council = DrawingSet.drafts(building, bill, SetScope.COUNCIL);
        List<Draft> all = DrawingSet.drafts(building, bill, SetScope.ALL);
        assertTrue(titles(all).containsAll(titles(council)));
        Set<String> more = new HashSet<>(titles(all));
        more.removeAll(titles(council));
        assertEquals(
                Set.of("Pieces, bolts and order of erection", "Flashing profiles", "Purlin, girt, brace schedule"),
                more);
        assertEquals(all.size(), all.stream().map(Draft::number).distinct().count(), "a number twice");
        Set<String> numbered =
                all.stream().map(d -> d.number() + " " + d.title()).collect(Collectors.toSet());
        council.forEach(d -> assertTrue(numbered.contains(d.number() + " " + d.title()), d.number() + " elsewhere"));
        for (String series : List.of("S0", "S2", "S3", "S4", "S5", "S6", "S7", "S8")) {
            assertTrue(council.stream().anyMatch(d -> d.number().startsWith(series)), series);
        }
        SheetSet set = DrawingSet.of(building, bill, SetScope.COUNCIL);
        String last = council.size() + " of " + council.size();
        assertTrue(set.sheets().get(council.size() - 1).marks().stream()
                .anyMatch(m -> m instanceof Text t && t.content().equals(last)));
        assertTrue(Sheds.texts(all.get(0)).anyMatch(t -> t.content().contains("Flashing profiles")));
        assertTrue(Sheds.texts(council.get(0)).noneMatch(t -> t.content().contains("Flashing profiles")));
    }

    private static Set<String> titles(List<Draft> drafts) {
        return drafts.stream().map(Draft::title).collect(Collectors.toSet());
    }
}
