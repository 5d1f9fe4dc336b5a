package org.baywright.render.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.baywright.model.cladding.Building;
import org.baywright.model.cladding.Cladding;
import org.baywright.model.definition.Definitions;
import org.baywright.model.parts.JointHoles;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Shed;
import org.baywright.model.takeoff.Bill;
import org.baywright.model.takeoff.BillGroup;
import org.baywright.model.takeoff.BillLine;
import org.baywright.render.dimension.Row;
import org.baywright.render.dimension.Table;
import org.baywright.render.dimension.TurnedBox;
import org.baywright.render.mark.Bounds;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Stroke;
import org.baywright.render.mark.Text;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CoverAndListsTest {
    private static final String SMALLEST = "span: 4000\nbays: 1\nbaySpacing: 3000\neaveHeight: 2700\nroofPitch: 5\n";
    private static final String LONGEST =
            "name: Long store\nspan: 12000\nbays: 200\nbaySpacing: 6000\neaveHeight: 4500\n"
                    + "roofPitch: 12\nleanTos:\n  - {side: left, width: 4000, pitch: 5, drop: 300}\n"
                    + "  - {side: right, width: 6000, pitch: 5, drop: 350}\n";

    /** A different frame at each of thirty places: schedules that run over several sheets. */
    private static final String MOTLEY = motley(
            List.of("SHS 100x100x6", "RHS 150x100x5", "SHS 150x150x6", "200UB25.4", "150UC23.4"),
            List.of("RHS 150x100x4", "RHS 200x100x6", "RHS 250x150x6", "200UB25.4", "310UB40.4", "310UB46.2"));

    private static String motley(List<String> columns, List<String> rafters) {
        StringBuilder yaml = new StringBuilder(
                "span: 12000\nbays: 40\nbaySpacing: 6000\neaveHeight: 4500\nroofPitch: 12\nheavier:\n");
        int frame = 2;
        for (String column : columns) {
            for (String rafter : rafters) {
                String entry = "  - {frames: [%d], column: %s, rafter: %s}%n";
                yaml.append(String.format(Locale.ROOT, entry, frame++, column, rafter));
            }
        }
        return yaml.toString();
    }

    private record Case(String name, Shed shed, Bill bill) {
        static Case of(String name, String yaml) {
            Shed shed = Shed.of(Definitions.of(yaml));
            return new Case(name, shed, Bill.of(shed));
        }

        List<Draft> lists() {
            List<Draft> bills = BillSheets.of(shed, bill, SetScope.ALL, 1);
            List<Draft> drafts = new ArrayList<>(List.of(CoverSheet.of(new Building(shed, Cladding.of(shed)), bills)));
            drafts.addAll(bills);
            drafts.addAll(OrderSet.drafts(new Building(shed, Cladding.of(shed)), bill));
            return drafts;
        }

        @Override
        public String toString() {
            return name;
        }
    }

    static List<Case> cases() throws IOException {
        List<Case> cases = new ArrayList<>();
        try (Stream<Path> files = Files.list(Path.of("../templates"))) {
            files.filter(f -> f.toString().endsWith(".yaml"))
                    .sorted()
                    .map(f -> Case.of(f.getFileName().toString(), read(f)))
                    .forEach(cases::add);
        }
        assertTrue(cases.size() >= 5, "starters not found");
        cases.add(Case.of("smallest", SMALLEST));
        cases.add(Case.of("longest", LONGEST));
        cases.add(Case.of("motley", MOTLEY));
        return cases;
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void textStaysAboveTheBandAndApart(Case shed) {
        for (Draft draft : shed.lists()) {
            List<Text> texts = texts(draft.marks());
            assertTrue(texts.size() > 10, "little said on " + draft.number());
            for (int i = 0; i < texts.size(); i++) {
                TurnedBox box = TurnedBox.of(texts.get(i));
                assertTrue(texts.get(i).height() >= 2.5, "too small: " + texts.get(i));
                assertTrue(
                        SheetFrame.aboveBand().covers(box.envelope()), draft.number() + " runs out: " + texts.get(i));
                for (int j = 0; j < i; j++) {
                    assertFalse(
                            box.overlaps(TurnedBox.of(texts.get(j))),
                            draft.number() + " text on text: " + texts.get(i) + " " + texts.get(j));
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void linesStayAboveTheBandAndTheViewOffTheWords(Case shed) {
        for (Draft draft : shed.lists()) {
            draft.marks().forEach(m -> assertTrue(SheetFrame.aboveBand().covers(Bounds.of(m)), "runs out: " + m));
        }
        List<Mark> cover = shed.lists().get(0).marks();
        List<TurnedBox> words = texts(cover).stream()
                .filter(t -> t.layer() != Layer.GRID)
                .map(TurnedBox::of)
                .toList();
        cover.stream()
                .filter(m -> m.layer() == Layer.STEEL || m.layer() == Layer.GROUND || m.layer() == Layer.GRID)
                .map(Bounds::of)
                .map(TurnedBox::of)
                .forEach(line -> assertTrue(words.stream().noneMatch(line::overlaps), "view on words"));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void everyMarkStandsOnceInTheScheduleWithItsFigures(Case shed) {
        List<Row> rows = body(BillSheets.schedule(shed.shed(), shed.bill()));
        List<String> marks = rows.stream().map(r -> r.cells().get(0)).toList();
        assertEquals(shed.shed().parts().stream().map(Part::mark).toList(), marks);
        for (int i = 0; i < rows.size(); i++) {
            Part part = shed.shed().parts().get(i);
            List<String> cells = rows.get(i).cells();
            assertEquals(String.valueOf(part.quantity()), cells.get(4));
            assertEquals(part.totalMassKg(), Double.parseDouble(last(rows.get(i))), 0.05 + 1e-9);
            if (part.kind().isMember()) {
                assertEquals(part.stockLength(), Double.parseDouble(cells.get(5)), 1e-9);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void everyMarkIsPrintedOnTheBillSheets(Case shed) {
        double left = SheetFrame.room().getMinX() + 5;
        List<String> atLeft = BillSheets.of(shed.shed(), shed.bill(), SetScope.ALL, 1).stream()
                .flatMap(d -> texts(d.marks()).stream())
                .filter(t -> t.at().x() < left && t.align() == Text.Align.LEFT)
                .map(Text::content)
                .toList();
        for (Part part : shed.shed().parts()) {
            assertEquals(1, atLeft.stream().filter(part.mark()::equals).count(), part.mark());
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void totalsAreTheBills(Case shed) {
        Bill bill = shed.bill();
        List<Row> totals = totals(BillSheets.schedule(shed.shed(), bill));
        double members = sum(
                shed.shed().parts().stream().filter(p -> p.kind().isMember()).toList());
        double all = sum(shed.shed().parts());
        assertEquals(
                List.of(kg(members), kg(all - members), kg(all)),
                totals.stream().map(CoverAndListsTest::last).toList());
        assertEquals(kg(bill.steelMassKg()), last(totals.get(2)));

        Row stock = totals(OrderTables.stock(bill)).get(0);
        List<BillLine> lines = bill.lines(BillGroup.STOCK);
        assertEquals(
                lines.stream().mapToInt(BillLine::quantity).sum(),
                Integer.parseInt(stock.cells().get(0)));
        assertEquals(
                lines.stream().mapToDouble(BillLine::order).sum(),
                Double.parseDouble(stock.cells().get(8)),
                0.006);
        assertEquals(kg(bill.mass(BillGroup.STOCK)), last(stock));
        assertEquals(
                kg(bill.mass(BillGroup.PLATES)),
                last(totals(OrderTables.plates(bill)).get(0)));
        assertEquals(
                kg(bill.mass(BillGroup.PIECES)),
                last(totals(OrderTables.cuts(shed.shed(), bill)).get(0)));
        double rolled = bill.lines(BillGroup.ROWS).isEmpty()
                ? 0
                : Double.parseDouble(
                        last(totals(OrderTables.lengths(bill, BillGroup.ROWS)).get(0)));
        assertEquals(members, bill.mass(BillGroup.PIECES) + rolled, 0.06);
        assertEquals(3, body(OrderTables.anchors(bill)).size());
    }

    @Test
    void aLongScheduleRunsOnAndSaysSo() {
        Case motley = Case.of("motley", MOTLEY);
        List<Draft> sheets = BillSheets.of(motley.shed(), motley.bill(), SetScope.ALL, 1);
        assertTrue(sheets.size() > 1);
        assertTrue(texts(sheets.get(1).marks()).get(0).content().endsWith(", continued"));
        assertEquals(
                IntStream.rangeClosed(1, sheets.size()).mapToObj(i -> "S8." + i).toList(),
                sheets.stream().map(Draft::number).toList());
    }

    @Test
    void theCoverListsEverySheetWithItsPage() {
        Case twin = bareTwin();
        List<Draft> drafts = DrawingSet.drafts(new Building(twin.shed(), Cladding.of(twin.shed())), twin.bill());
        List<Text> words = texts(drafts.get(0).marks());
        for (int i = 0; i < drafts.size(); i++) {
            Draft draft = drafts.get(i);
            Text number = only(words, draft.number());
            List<String> row = words.stream()
                    .filter(t -> Math.abs(t.at().y() - number.at().y()) < 1e-9
                            && t.at().x() >= number.at().x())
                    .map(Text::content)
                    .toList();
            assertEquals(List.of(draft.number(), draft.title(), String.valueOf(i + 1)), row);
        }
    }

    @Test
    void aListTooLongForItsRoomIsGivenBySeries() {
        Draft cover = new Draft("S0", "Cover", "", List.of(), List.of());
        List<Draft> rest = new ArrayList<>();
        IntStream.rangeClosed(1, 90)
                .forEach(i -> rest.add(new Draft("S4." + i, "Section " + i, "", List.of(), List.of())));
        rest.add(new Draft("S8.1", "Schedule", "", List.of(), List.of()));
        List<List<String>> rows = SheetList.of(cover, rest, 132, 60).get(0).rows().stream()
                .map(Row::cells)
                .toList();
        assertEquals(
                List.of(
                        List.of("S0", "Cover", "1"),
                        List.of("S4.1 to S4.90", "Section 1 … Section 90", "2 to 91"),
                        List.of("S8.1", "Schedule", "92")),
                rows);
        assertEquals(92, SheetList.of(cover, rest, 132, 1000).get(0).rows().size());
    }

    @Test
    void aListTooLongForOneColumnHasTwoAndLeavesOutNothing() {
        Draft cover = new Draft("S0", "Cover", "", List.of(), List.of());
        List<Draft> rest = IntStream.rangeClosed(1, 36)
                .mapToObj(i -> new Draft("S4." + i, "Section " + i, "", List.of(), List.of()))
                .toList();
        List<Table> tables = SheetList.of(cover, rest, 132, 100);
        assertEquals(2, tables.size());
        List<String> titles = tables.stream()
                .flatMap(t -> t.rows().stream())
                .map(r -> r.cells().get(1))
                .toList();
        assertEquals(37, titles.size());
        assertEquals("Section 36", titles.get(36));
    }

    @Test
    void membersThatAreBoltedSayTheirHoles() {
        Shed shed = Sheds.closed(Sheds.FULL).shed();
        JointHoles joints = JointHoles.of(shed);
        List<Row> rows = body(BillSheets.schedule(shed, Bill.of(Sheds.closed(Sheds.FULL))));
        for (Part part : shed.parts()) {
            if (part.kind() == PartKind.FLY_BRACE || part.kind() == PartKind.COLUMN) {
                String holes = rows.stream()
                        .filter(r -> r.cells().get(0).equals(part.mark()))
                        .findFirst()
                        .orElseThrow()
                        .cells()
                        .get(13);
                int count = joints.of(part).size();
                assertTrue(holes.startsWith(count == 0 ? "none" : count + " × Ø"), part.mark() + ": " + holes);
                assertEquals(part.kind() == PartKind.FLY_BRACE, count > 0);
            }
        }
    }

    @Test
    void aLongBuildingIsBrokenOffAndSaysSo() {
        List<Text> words = texts(CoverSheet.of(
                        new Building(
                                Case.of("longest", LONGEST).shed(),
                                Cladding.of(Case.of("longest", LONGEST).shed())),
                        List.of())
                .marks());
        assertTrue(words.stream().anyMatch(t -> t.content().contains("FIRST 12 OF 200 BAYS SHOWN")));
        assertTrue(words.stream().anyMatch(t -> t.content().endsWith("pictorial, not to scale")));
        assertEquals(
                1,
                words.stream()
                        .filter(t -> t.layer() == Layer.GRID && t.content().equals("13"))
                        .count());
        assertTrue(words.stream()
                .noneMatch(t -> t.layer() == Layer.GRID && t.content().equals("14")));
    }

    @Test
    void thePictorialShowsEveryPartOfAWholeBuilding() {
        Case twin = bareTwin();
        List<Mark> cover = CoverSheet.of(new Building(twin.shed(), Cladding.of(twin.shed())), List.of())
                .marks();
        for (Part part : twin.shed().parts()) {
            boolean drawn =
                    cover.stream().anyMatch(m -> m instanceof Stroke && m.part().equals(part.mark()));
            assertTrue(drawn, "not seen: " + part.mark());
        }
    }

    /** Few enough sheets for a line each, and every part in sight. */
    private static Case bareTwin() {
        String starter = read(Path.of("../templates", "twin-lean-to.yaml"));
        return Case.of("bare twin", starter.replace("envelope: full", "envelope: none"));
    }

    private static Text only(List<Text> words, String content) {
        List<Text> found =
                words.stream().filter(t -> t.content().equals(content)).toList();
        assertEquals(1, found.size(), content);
        return found.get(0);
    }

    private static List<Text> texts(List<Mark> marks) {
        return marks.stream()
                .filter(Text.class::isInstance)
                .map(Text.class::cast)
                .toList();
    }

    private static List<Row> body(Table table) {
        return table.rows().stream().filter(r -> r.kind() == Row.Kind.BODY).toList();
    }

    private static List<Row> totals(Table table) {
        return table.rows().stream().filter(r -> r.kind() == Row.Kind.TOTAL).toList();
    }

    private static String last(Row row) {
        return row.cells().get(row.cells().size() - 1);
    }

    private static double sum(List<Part> parts) {
        return parts.stream().mapToDouble(Part::totalMassKg).sum();
    }

    private static String kg(double mass) {
        return String.format(Locale.ROOT, "%.1f", mass);
    }
}
