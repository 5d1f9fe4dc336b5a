package org.baywright.render.output;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.baywright.model.cladding.Building;
import org.baywright.model.definition.Definitions;
import org.baywright.model.definition.Project;
import org.baywright.model.takeoff.Bill;
import org.baywright.model.takeoff.BillGroup;
import org.baywright.model.takeoff.BillItem;
import org.baywright.model.takeoff.BillLine;
import org.baywright.model.takeoff.Costs;
import org.baywright.model.takeoff.PriceList;
import org.junit.jupiter.api.Test;

/** The workbook as another code base reads it. */
class OrderBookTest {
    private static final Building BUILDING = Building.of(Definitions.of("""
                    name: "=Tallow Flat"
                    span: 9000
                    bays: 2
                    baySpacing: 5000
                    eaveHeight: 3600
                    roofPitch: 12
                    envelope: full
                    """));
    private static final Bill BILL = Bill.of(BUILDING);
    private static final PriceList PRICES = PriceList.read(
            "prices",
            "item,unit,price,currency\nSHS 100x100x5,m,31.25,AUD\nready-mixed concrete 25 MPa,m3,299.99,AUD\n"
                    + "Z150-15,m,16,AUD\n");
    private static final Costs COSTS = new Costs(BILL, PRICES);

    private static byte[] bytes(Bill bill, Optional<Costs> costs) throws IOException {
        Project project = BUILDING.shed().definition().project();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new OrderBook(project, bill, costs).write(out);
        return out.toByteArray();
    }

    private static XSSFWorkbook read(byte[] bytes) throws IOException {
        return new XSSFWorkbook(new ByteArrayInputStream(bytes));
    }

    /** The row of titles is the first whose second cell is filled. */
    private static int titles(Sheet sheet) {
        for (Row row : sheet) {
            if (row.getLastCellNum() > 2) {
                return row.getRowNum();
            }
        }
        throw new AssertionError("no titles in " + sheet.getSheetName());
    }

    private static int column(Sheet sheet, String title) {
        for (Cell cell : sheet.getRow(titles(sheet))) {
            if (cell.getStringCellValue().equals(title)) {
                return cell.getColumnIndex();
            }
        }
        throw new AssertionError("no column " + title + " in " + sheet.getSheetName());
    }

    @Test
    void oneSheetASectionAfterTheSummary() throws IOException {
        List<String> wanted = new ArrayList<>(List.of("Summary"));
        BILL.lines().stream().map(l -> l.group().shortTitle()).distinct().forEach(wanted::add);
        assertTrue(wanted.containsAll(List.of("Steel", "Purlins and girts", "Sheets", "Fixings", "Concrete")));
        try (XSSFWorkbook book = read(bytes(BILL, Optional.empty()))) {
            List<String> names = new ArrayList<>();
            book.forEach(s -> names.add(s.getSheetName()));
            assertEquals(
                    wanted.stream().sorted().toList(), names.stream().sorted().toList());
            assertEquals("Summary", names.get(0));
            book.forEach(s -> assertEquals(
                    "Quantities from model, buyer to verify",
                    s.getRow(2).getCell(0).getStringCellValue()));
        }
    }

    @Test
    void everyLineIsThereWithItsNumbersAsNumbers() throws IOException {
        try (XSSFWorkbook book = read(bytes(BILL, Optional.of(COSTS)))) {
            for (BillGroup group : BillGroup.values()) {
                List<BillLine> lines = BILL.lines(group);
                for (int i = 0; i < lines.size(); i++) {
                    Sheet sheet = book.getSheet(group.shortTitle());
                    Row row = sheet.getRow(titles(sheet) + 1 + i);
                    BillLine line = lines.get(i);
                    assertEquals(
                            line.item().description(),
                            row.getCell(column(sheet, "Item")).getStringCellValue());
                    assertEquals(line.quantity(), number(sheet, row, "Qty"));
                    assertEquals(line.order(), number(sheet, row, "Order"), 0.051);
                    assertEquals(
                            number(sheet, row, "Net") + number(sheet, row, "Allowance"),
                            number(sheet, row, "Order"),
                            0.101);
                    if (line.massKg() > 0) {
                        assertEquals(line.massKg(), number(sheet, row, "Mass, kg"), 0.051);
                    }
                }
            }
        }
    }

    private static double number(Sheet sheet, Row row, String title) {
        Cell cell = row.getCell(column(sheet, title));
        assertEquals(CellType.NUMERIC, cell.getCellType(), () -> title + " of " + sheet.getSheetName());
        return cell.getNumericCellValue();
    }

    @Test
    void costsAddUpAndWhatHasNoPriceSaysSo() throws IOException {
        try (XSSFWorkbook book = read(bytes(BILL, Optional.of(COSTS)))) {
            double all = 0;
            for (BillGroup group : BillGroup.values()) {
                Sheet sheet = book.getSheet(group.shortTitle());
                if (sheet == null || !group.isBought()) {
                    continue;
                }
                double sum = 0;
                for (int i = 0; i < BILL.lines(group).size(); i++) {
                    Cell cost = sheet.getRow(titles(sheet) + 1 + i).getCell(column(sheet, "Cost, AUD"));
                    boolean priced = COSTS.cost(BILL.lines(group).get(i)).isPresent();
                    assertEquals(priced ? CellType.NUMERIC : CellType.STRING, cost.getCellType());
                    sum += priced ? cost.getNumericCellValue() : 0;
                }
                Row total = sheet.getRow(titles(sheet) + 1 + BILL.lines(group).size());
                if (COSTS.isPriced(group)) {
                    assertEquals(sum, number(sheet, total, "Cost, AUD"), 1e-6);
                } else {
                    assertEquals(
                            "no price",
                            total.getCell(column(sheet, "Cost, AUD")).getStringCellValue());
                }
                all += sum;
            }
            assertTrue(all > 1000, "some lines are priced");
            Sheet summary = book.getSheet("Summary");
            List<String> words = new ArrayList<>();
            double total = Double.NaN;
            for (Row row : summary) {
                String first = row.getCell(0) == null ? "" : row.getCell(0).getStringCellValue();
                words.add(first);
                if (first.equals("To buy; cost of the priced lines only")) {
                    total = number(summary, row, "Cost, AUD");
                }
            }
            assertEquals(all, total, 1e-6);
            assertFalse(COSTS.unpriced().isEmpty());
            assertTrue(words.containsAll(COSTS.unpriced()), words::toString);
        }
    }

    /** Text that a spreadsheet would run is disarmed, as in every table of ours. */
    @Test
    void nothingIsAFormula() throws IOException {
        BillItem bad = new BillItem("=cmd()", "+1", 0, List.of("@x"), "-1");
        BillLine line = new BillLine(BillGroup.FIXINGS, bad, 1, BillLine.Unit.EACH, 1, 0, 0);
        try (XSSFWorkbook book = read(bytes(new Bill(List.of(line)), Optional.empty()))) {
            int texts = 0;
            for (Sheet sheet : book) {
                for (Row row : sheet) {
                    for (Cell cell : row) {
                        assertTrue(cell.getCellType() != CellType.FORMULA);
                        if (cell.getCellType() == CellType.STRING) {
                            assertFalse(
                                    "=+-@\t\r".indexOf(cell.getStringCellValue().charAt(0)) >= 0, cell::toString);
                            texts++;
                        }
                    }
                }
            }
            assertTrue(texts > 10);
            assertEquals(
                    "'=Tallow Flat: order",
                    book.getSheet("Summary").getRow(0).getCell(0).getStringCellValue());
        }
    }

    @Test
    void sameBillSameBytes() throws Exception {
        byte[] first = bytes(BILL, Optional.of(COSTS));
        Thread.sleep(20);
        assertArrayEquals(first, bytes(BILL, Optional.of(COSTS)));
    }
}
