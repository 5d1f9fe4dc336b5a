package org.baywright.render.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import org.baywright.model.cladding.Building;
import org.baywright.model.cladding.GutterRun;
import org.baywright.model.cladding.Surface;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Definitions;
import org.baywright.model.definition.Seeds;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PartKind;
import org.baywright.model.setout.GirtRows;
import org.baywright.model.setout.RoofRows;
import org.baywright.model.setout.WallCover;
import org.baywright.model.takeoff.Bill;
import org.baywright.model.takeoff.BillLine;
import org.baywright.render.dimension.Dimension;
import org.baywright.render.dimension.Direction;
import org.baywright.render.dimension.TurnedBox;
import org.baywright.render.mark.Bounds;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Text;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Framing, sheeting and drainage sheets of whole sheds: words apart, every mark shown, figures the model's own. */
class FramingSheetsTest {
    private static final int TRIES = 12;
    private static final Set<PartKind> ROWS = EnumSet.of(PartKind.PURLIN, PartKind.GIRT);
    private static final Set<PartKind> NAMED = EnumSet.of(
            PartKind.PURLIN,
            PartKind.GIRT,
            PartKind.BRACE,
            PartKind.STRUT,
            PartKind.BRIDGING,
            PartKind.FLY_BRACE,
            PartKind.MULLION,
            PartKind.JAMB,
            PartKind.HEADER,
            PartKind.SILL);

    @Provide
    Arbitrary<Definition> full() {
        return Definitions.texts().map(text -> Definitions.of(text + "envelope: full\n"));
    }

    private static Building building(String yaml) {
        return Building.of(Definitions.of(yaml));
    }

    static List<Building> starters() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("../templates"))) {
            List<Building> starters = files.filter(f -> f.toString().endsWith(".yaml"))
                    .sorted()
                    .map(FramingSheetsTest::clad)
                    .toList();
            assertTrue(starters.size() >= 5, "starters not found");
            return starters;
        }
    }

    private static Building clad(Path file) {
        try {
            return building(Files.readString(file).replaceFirst("(?m)^envelope: none", "envelope: full"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<Text> texts(Draft draft) {
        List<Text> texts = new ArrayList<>();
        for (Mark mark : draft.marks()) {
            if (mark instanceof Text text) {
                texts.add(text);
            }
        }
        return texts;
    }

    private static void assertReadable(Draft draft) {
        List<Text> texts = texts(draft);
        for (int i = 0; i < texts.size(); i++) {
            Text text = texts.get(i);
            TurnedBox box = TurnedBox.of(text);
            assertTrue(text.height() >= 2.5, () -> text + " is too small on " + draft.number());
            assertTrue(SheetFrame.aboveBand().covers(box.envelope()), () -> text + " leaves " + draft.number());
            for (int j = 0; j < i; j++) {
                Text other = texts.get(j);
                assertFalse(
                        box.overlaps(TurnedBox.of(other)), () -> text + " lies on " + other + " on " + draft.number());
            }
        }
        draft.marks()
                .forEach(m -> assertTrue(
                        SheetFrame.aboveBand().covers(Bounds.of(m)), () -> m + " runs out of " + draft.number()));
    }

    @Property(tries = TRIES, seed = Seeds.SHEDS, shrinking = ShrinkingMode.OFF)
    void wordsStandApartInsideTheFrame(@ForAll("full") Definition definition) {
        FramingSet.of(Building.of(definition)).forEach(FramingSheetsTest::assertReadable);
    }

    @ParameterizedTest
    @MethodSource("starters")
    void startersCanBeRead(Building building) {
        FramingSet.of(building).forEach(FramingSheetsTest::assertReadable);
    }

    /** Every mark is drawn and named on a plan or elevation, and every row and brace is in the schedule. */
    @Property(tries = TRIES, seed = Seeds.SHEDS, shrinking = ShrinkingMode.OFF)
    void everyMarkIsDrawnNamedAndListed(@ForAll("full") Definition definition) {
        Building building = Building.of(definition);
        List<Draft> drafts = FramingSet.of(building);
        Set<String> drawn = new TreeSet<>();
        Set<String> named = new TreeSet<>();
        Set<String> listed = new TreeSet<>();
        for (Draft draft : drafts) {
            boolean schedule = draft.title().contains("schedule");
            texts(draft)
                    .forEach(t -> (schedule ? listed : named).add(t.content().split(" ")[0]));
            draft.marks().stream().filter(m -> !(m instanceof Text)).forEach(m -> drawn.add(m.part()));
        }
        assertHolds(drawn, building, p -> NAMED.contains(p.kind()));
        assertHolds(named, building, p -> NAMED.contains(p.kind()));
        assertHolds(listed, building, p -> ROWS.contains(p.kind()) || p.kind() == PartKind.BRACE);
    }

    private static void assertHolds(Set<String> marks, Building building, Predicate<Part> wanted) {
        List<Part> missing = building.shed().parts().stream()
                .filter(wanted)
                .filter(p -> !marks.contains(p.mark()))
                .toList();
        assertTrue(missing.isEmpty(), () -> "missing: " + missing);
    }

    /** The chain along each slope runs from one end of its sheets to the other through every row. */
    @Property(tries = TRIES, seed = Seeds.SHEDS, shrinking = ShrinkingMode.OFF)
    void spacingsAlongASlopeSumToItsSheets(@ForAll("full") Definition definition) {
        Building building = Building.of(definition);
        List<Dimension> printed = FramingSet.of(building).stream()
                .flatMap(d -> d.dimensions().stream())
                .toList();
        for (RoofRows rows : RoofRows.of(definition, building.shed().setOut())) {
            double whole = rows.sheetHigh() - rows.sheetLow();
            assertTrue(
                    printed.stream()
                            .filter(d -> d.parts() == 1 && Math.abs(d.value() - whole) < 1e-6)
                            .anyMatch(overall -> showsAll(rows, overall, printed)),
                    () -> "no chain through the rows of " + rows);
        }
    }

    /** Whether dimensions end at every row and at both ends of the sheets, measured from where the overall one starts. */
    private static boolean showsAll(RoofRows rows, Dimension overall, List<Dimension> printed) {
        double start = Math.min(overall.from().x(), overall.to().x());
        return Stream.concat(rows.at().stream(), Stream.of(rows.sheetLow(), rows.sheetHigh()))
                .map(end -> start + end - rows.sheetLow())
                .allMatch(at -> printed.stream().anyMatch(d -> d != overall && covers(d, at)));
    }

    private static boolean covers(Dimension dimension, double x) {
        double step = (dimension.to().x() - dimension.from().x()) / dimension.parts();
        double parts = (x - dimension.from().x()) / step;
        return step != 0
                && Math.abs(parts - Math.rint(parts)) * Math.abs(step) < 1e-6
                && parts > -1e-6
                && parts < dimension.parts() + 1e-6;
    }

    /** All roof water is shared out: the downpipes of a gutter take together what the gutter takes. */
    @Property(tries = TRIES, seed = Seeds.SHEDS, shrinking = ShrinkingMode.OFF)
    void downpipesTakeAllTheWater(@ForAll("full") Definition definition) {
        for (GutterFalls gutter :
                GutterFalls.of(Building.of(definition).cladding().gutters())) {
            GutterRun run = gutter.run();
            assertEquals(
                    run.flowLs(),
                    gutter.pipes().stream().mapToDouble(p -> p.fall().flowLs()).sum(),
                    1e-9);
            double end = run.from().y();
            for (GutterFalls.Pipe pipe : gutter.pipes()) {
                assertEquals(end, pipe.fall().from(), 1e-9);
                end = pipe.fall().to();
            }
            assertEquals(run.to().y(), end, 1e-9);
        }
    }

    /** Pipes over a lean-to's roof are named on the plan, and each has a spreader in the bill; elsewhere none. */
    @Test
    void pipesThatEndOnALeanTosRoofAreTold() {
        String shed = "span: 12000\nbays: 4\nbaySpacing: 6000\neaveHeight: 4200\nroofPitch: 10\nenvelope: full\n";
        Building with = building(shed + "leanTos:\n  - {side: right, width: 5000, pitch: 5, drop: 350}\n");
        long onto = with.cladding().gutters().get(1).downpipes().size();
        assertEquals(List.of((double) onto), spreaders(with));
        assertTrue(planWords(with).contains("with a spreader across its sheets"), planWords(with));
        assertEquals(List.of(), spreaders(building(shed)));
        assertFalse(planWords(building(shed)).contains("spreader"));
    }

    private static List<Double> spreaders(Building building) {
        return Bill.of(building).lines().stream()
                .filter(l -> l.item().description().equals("downpipe spreader"))
                .map(BillLine::order)
                .toList();
    }

    private static String planWords(Building building) {
        return RoofSheetingPlan.of(building).stream()
                .flatMap(d -> texts(d).stream())
                .map(Text::content)
                .collect(Collectors.joining(" "));
    }

    @Test
    void everySheetOfTheRoofIsDrawnAndItsMarkNamed() {
        Building building = building("span: 12000\nbays: 4\nbaySpacing: 6000\neaveHeight: 4200\nroofPitch: 10\n"
                + "envelope: full\nleanTos:\n  - {side: right, width: 5000, pitch: 5, drop: 350}\n");
        List<Surface> roofs = building.cladding().surfaces(Surface.Role.ROOF);
        assertEquals(3, roofs.size());
        Draft draft = RoofSheetingPlan.of(building).get(0);
        Set<String> words = texts(draft).stream().map(Text::content).collect(Collectors.toSet());
        for (Surface roof : roofs) {
            for (Surface.Sheet sheet : roof.sheets()) {
                assertTrue(words.contains(sheet.mark()), sheet.mark());
                assertTrue(draft.marks().stream().anyMatch(m -> m.part().equals(sheet.mark())), sheet.mark());
            }
            assertTrue(words.contains(String.valueOf(roof.sheets().size())), "last sheet's number");
        }
    }

    /** Uprights beside a door, its clear size and its girts are all on the wall's framing. */
    @Test
    void aWallShowsItsOpeningsClearSizesAndGirtRows() {
        Building building = building("span: 12000\nbays: 4\nbaySpacing: 6000\neaveHeight: 4500\nroofPitch: 10\n"
                + "envelope: full\nopenings:\n  - {type: rollerDoor, wall: left, bay: 2, width: 4000, height: 3600}\n"
                + "  - {type: window, wall: front, width: 1800, height: 1200, sill: 1000}\n");
        List<Draft> drafts = FramingElevations.of(building);
        Set<String> words = drafts.stream()
                .flatMap(d -> texts(d).stream())
                .map(Text::content)
                .collect(Collectors.toSet());
        assertTrue(
                words.containsAll(Set.of("4000 × 3600 clear", "1800 × 1200 clear", "sill at +1000")), words.toString());
        List<Dimension> printed =
                drafts.stream().flatMap(d -> d.dimensions().stream()).toList();
        for (WallCover cover : building.shed().wallCovers()) {
            List<Double> rows = GirtRows.of(
                            building.shed().definition(), building.shed().setOut(), cover)
                    .at();
            assertTrue(rows.size() >= 3, "rows on " + cover.face().wall());
            for (double row : rows) {
                assertTrue(
                        printed.stream().anyMatch(d -> d.direction() == Direction.VERTICAL && reaches(d, row)),
                        () -> "row at " + row + " of " + cover.face().wall());
            }
        }
    }

    private static boolean reaches(Dimension dimension, double y) {
        double step = (dimension.to().y() - dimension.from().y()) / dimension.parts();
        double parts = (y - dimension.from().y()) / step;
        return Math.abs(parts - Math.rint(parts)) * Math.abs(step) < 1e-6
                && parts > -1e-6
                && parts < dimension.parts() + 1e-6;
    }

    @Test
    void aBareFrameHasNoneOfTheseSheets() {
        assertTrue(FramingSet.of(building("span: 12000\nbays: 4\nbaySpacing: 6000\neaveHeight: 4200\nroofPitch: 10\n"
                        + "envelope: none\n"))
                .isEmpty());
    }

    /** Laps of 450 to either side of two inner frames, on every row. */
    @Test
    void lapsAreWhereTwoLengthsLieBesideEachOther() {
        Building building = building(
                "span: 9000\nbays: 3\nbaySpacing: 6000\neaveHeight: 4200\nroofPitch: 10\n" + "envelope: full\n");
        List<MemberAxis> purlins = MemberAxis.of(building.shed(), EnumSet.of(PartKind.PURLIN));
        List<RowLaps.Lap> laps = RowLaps.of(purlins, Vec3.ALONG);
        long rows = RoofRows.of(building.shed().definition(), building.shed().setOut()).stream()
                .mapToLong(r -> r.at().size())
                .sum();
        assertEquals(2 * rows, laps.size());
        laps.forEach(l -> assertEquals(900, l.length(), 1e-6));
        Set<Vec2> middles = laps.stream()
                .map(l -> new Vec2(0, Math.rint((l.from().y() + l.to().y()) / 2)))
                .collect(Collectors.toSet());
        assertEquals(Set.of(new Vec2(0, 6000), new Vec2(0, 12000)), middles);
    }

    @Test
    void twoHundredBaysTakeSeconds() {
        Building building = building("span: 12000\nbays: 200\nbaySpacing: 6000\neaveHeight: 4500\nroofPitch: 12\n"
                + "envelope: full\nleanTos:\n  - {side: left, width: 4000, pitch: 5, drop: 300}\n"
                + "  - {side: right, width: 6000, pitch: 5, drop: 350}\n");
        long start = System.nanoTime();
        List<Draft> drafts = FramingSet.of(building);
        double seconds = (System.nanoTime() - start) / 1e9;
        assertTrue(seconds < 30, () -> drafts.size() + " sheets took " + seconds);
    }

    /** The last of a roof's sheets may be a strip, its number close to a round one: 11 sheets on this lean-to at 1:100. */
    @Test
    void numbersOfRoofSheetsStandApart() {
        String shed =
                "span: 5000\nbays: 2\nbaySpacing: [6650, 7550]\neaveHeight: 3650\nroofPitch: 5\nkneeJoint: butted\n"
                        + "column: 200UB25.4\nleanToColumn: RHS 125x75x4\n"
                        + "leanTos:\n  - {side: left, width: 4800, pitch: 7, drop: 600, fromBay: 2, toBay: 2}\n"
                        + "  - {side: right, width: 4900, drop: 0}\n";
        List<Draft> drafts = RoofSheetingPlan.of(Sheds.closed(shed));
        assertTrue(
                drafts.stream().flatMap(Sheds::texts).anyMatch(t -> t.content().equals("11")), "the case is there");
        drafts.forEach(Sheds::assertReadable);
    }

    @Test
    void roofSheetsThatBeginAboveALeanToAreNumberedToo() {
        for (int bays : List.of(2, 4)) {
            Building building = building(Sheds.FULL.replace("roofPitch: 10", "roofPitch: 20")
                    + "leanTos:\n  - {side: right, width: 4100, pitch: 3, drop: 0, fromBay: 1, toBay: " + bays + "}\n");
            List<Surface> main = building.cladding().surfaces(Surface.Role.ROOF).subList(0, 2);
            assertTrue(main.get(1).sheets().stream().anyMatch(s -> s.low() > 0), "no sheet begins above the eave");
            String last = String.valueOf(main.get(1).sheets().stream()
                    .map(Surface.Sheet::left)
                    .distinct()
                    .count());
            long told = RoofSheetingPlan.of(building).stream()
                    .flatMap(Sheds::texts)
                    .filter(t -> t.content().equals(last))
                    .count();
            assertTrue(told >= 2, "the last sheet of " + last + " has its number on " + told + " slopes");
        }
    }
}
