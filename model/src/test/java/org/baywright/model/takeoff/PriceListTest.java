package org.baywright.model.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import org.baywright.model.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Price lists read and refused, and what a bill costs by them. */
class PriceListTest {
    private static PriceList read(String text) {
        return PriceList.read("prices.csv", text);
    }

    private static PriceList good(String text) {
        PriceList list = read(text);
        assertEquals(List.of(), list.problems());
        return list;
    }

    @Test
    void formsThatSpreadsheetsSave() {
        PriceList list =
                good("\uFEFF# ours\r\nprice,Item,unit\r\n\r\n1250.5,\"washer 50x50, hole 18\",no.\r\n# end\r\n");
        PriceList.Price price = list.prices().get("washer 50x50, hole 18");
        assertEquals(new BigDecimal("1250.5"), price.amount());
        assertEquals("no.", price.unit());
        assertEquals(
                "EUR", good("item,unit,price,currency\na,m,1,EUR\nb,m,2,\n").currency());
    }

    /** Bars stand for line ends. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "''; empty-list; 0",
                "'# only words'; empty-list; 0",
                "'name,unit,price|a,m,1'; wrong-header; 1",
                "'item,price|a,1'; wrong-header; 1",
                "'item,unit,unit,price|a,m,m,1'; wrong-header; 1",
                "'item;unit;price|a;m;1'; wrong-header; 1",
                "'item,unit,price|a,m,1|b,m,12 dollars'; not-a-number; 3",
                "'item,unit,price|a,m,'; not-a-number; 2",
                "'item,unit,price|a,m,1e3'; not-a-number; 2",
                "'item,unit,price|a,m,NaN'; not-a-number; 2",
                "'item,unit,price|a,m,$5'; not-a-number; 2",
                "'item,unit,price|a,m,\"1,250.00\"'; not-a-number; 2",
                "'item,unit,price|a,m,1,250.00'; wrong-width; 2",
                "'item,unit,price|a,m,-4'; negative; 2",
                "'item,unit,price|a,m,1|# c|a,kg,2'; given-twice; 4",
                "'item,unit,price|a,furlong,1'; unknown-unit; 2",
                "'item,unit,price|,m,1'; no-item; 2",
                "'item,unit,price,currency|a,m,1,AUD|b,m,1,NZD'; two-currencies; 3",
            })
    void faultsAreNamedWithTheirLine(String text, String code, int line) {
        List<Problem> problems = read(text.replace("|", "\n")).problems();
        assertEquals(List.of(code), problems.stream().map(Problem::code).toList(), problems::toString);
        assertEquals(line, problems.get(0).where().line());
    }

    @Test
    void everyFaultIsTold() {
        assertEquals(
                2, read("item,unit,price\na,m,x\nb,m,1\nc,m,-1\n").problems().size());
    }

    private static BillLine line(
            String item, int quantity, BillLine.Unit unit, double net, double allowance, double kg) {
        return new BillLine(
                BillGroup.STOCK, new BillItem(item, "", 8000, List.of("C1"), ""), quantity, unit, net, allowance, kg);
    }

    /** 3 bars of 8 m: 24 m at 12.50 is 300.00; 170.4 kg at 3.333 is 567.94 (567.9432); 3 at 99.99 is 299.97. */
    @ParameterizedTest
    @CsvSource({"m, 12.50, 300.00", "kg, 3.333, 567.94", "no., 99.99, 299.97", "m, 0, 0.00"})
    void aLineCostsWhatIsOrderedAtItsPrice(String unit, String price, String cost) {
        BillLine bars = line("SHS", 3, BillLine.Unit.METRES, 20, 4, 170.4);
        Costs costs = new Costs(new Bill(List.of(bars)), good("item,unit,price\nSHS," + unit + "," + price));
        assertEquals(new BigDecimal(cost), costs.cost(bars).orElseThrow());
        assertEquals(new BigDecimal(cost), costs.total());
        assertEquals(List.of(), costs.unpriced());
    }

    @Test
    void whatHasNoPriceIsNamedAndNotCounted() {
        BillLine bars = line("SHS", 3, BillLine.Unit.METRES, 20, 4, 0);
        BillLine other = line("RHS", 1, BillLine.Unit.METRES, 7, 1, 0);
        BillLine cut = new BillLine(
                BillGroup.PIECES, BillItem.of("SHS", "", List.of("C1"), ""), 3, BillLine.Unit.EACH, 3, 0, 0);
        Bill bill = new Bill(List.of(bars, other, cut));
        Costs costs = new Costs(bill, good("item,unit,price\nSHS,m,10\nUB,m,1\n"));
        assertEquals(new BigDecimal("240.00"), costs.total());
        assertEquals(List.of("RHS (per m)"), costs.unpriced());
        assertEquals(List.of("UB"), costs.unused());
        assertTrue(costs.cost(cut).isEmpty(), "pieces are paid for as bars");

        Costs wrong = new Costs(bill, good("item,unit,price\nSHS,kg,10\n"));
        assertEquals(new BigDecimal("0.00"), wrong.total());
        assertEquals(List.of("SHS (priced per kg in line 2, ordered per m)", "RHS (per m)"), wrong.unpriced());
    }

    @Test
    void totalsAreSumsOfPrintedCosts() {
        BillLine a = line("A", 1, BillLine.Unit.METRES, 0.333, 0, 0);
        BillLine b = line("B", 1, BillLine.Unit.METRES, 0.333, 0, 0);
        Costs costs = new Costs(new Bill(List.of(a, b)), good("item,unit,price\nA,m,0.1\nB,m,0.1\n"));
        assertEquals(new BigDecimal("0.03"), costs.cost(a).orElseThrow());
        assertEquals(new BigDecimal("0.06"), costs.total());
        assertEquals(costs.total(BillGroup.STOCK), costs.total());
    }
}
