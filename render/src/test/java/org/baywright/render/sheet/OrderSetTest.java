package org.baywright.render.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.baywright.model.cladding.Building;
import org.baywright.model.definition.Definitions;
import org.baywright.model.takeoff.Bill;
import org.baywright.model.takeoff.BillGroup;
import org.baywright.model.takeoff.BillLine;
import org.baywright.model.takeoff.Costs;
import org.baywright.model.takeoff.PriceList;
import org.baywright.render.dimension.Row;
import org.baywright.render.dimension.Table;
import org.baywright.render.mark.Text;
import org.junit.jupiter.api.Test;

/** The printed order of a whole building, with prices and without. */
class OrderSetTest {
    private static final Building BUILDING = Building.of(Definitions.of("""
                    name: Tallow Flat
                    span: 12000
                    bays: 3
                    baySpacing: 6000
                    eaveHeight: 4200
                    roofPitch: 10
                    leanTos: [{side: right, width: 4000, drop: 500}]
                    envelope: full
                    """));
    private static final Bill BILL = Bill.of(BUILDING);
    private static final Costs COSTS = new Costs(
            BILL,
            PriceList.read("prices", "item,unit,price\nSHS 100x100x5,kg,3\ncorrugated 0.42,m,14.5\nROD 16,m,6\n"));

    private static List<String> words(Optional<Costs> costs) {
        return OrderSet.drafts(BUILDING, BILL, costs).stream()
                .flatMap(d -> d.marks().stream())
                .filter(Text.class::isInstance)
                .map(m -> ((Text) m).content())
                .toList();
    }

    @Test
    void everySectionStandsUnderItsHeadingWithJobRevisionAndCaution() {
        List<String> words = words(Optional.empty());
        long sections = BILL.lines().stream()
                .map(BillLine::group)
                .filter(BillGroup::isBought)
                .distinct()
                .peek(g -> assertTrue(words.contains(g.title()), g.title()))
                .count();
        String caption = "Tallow Flat, revision A: quantities from model, buyer to verify";
        assertTrue(sections >= 9);
        assertEquals(sections, words.stream().filter(caption::equals).count());
        assertTrue(words.stream().noneMatch(w -> w.startsWith("Cost by section")));
    }

    @Test
    void everyItemIsPrinted() {
        String all = String.join(" ", words(Optional.empty()));
        for (BillLine line : BILL.lines()) {
            String first = line.item().description().split(" ")[0];
            assertTrue(all.contains(first), line.item().description());
        }
    }

    @Test
    void costsStandBesideTheirLinesAndAddUp() {
        for (BillGroup group : List.of(BillGroup.STOCK, BillGroup.SHEETS, BillGroup.FIXINGS)) {
            Table plain = group == BillGroup.STOCK
                    ? OrderTables.stock(BILL)
                    : group == BillGroup.SHEETS ? OrderTables.lengths(BILL, group) : OrderTables.articles(BILL, group);
            Table table = new CostColumns(COSTS).beside(plain, group);
            BigDecimal sum = BigDecimal.ZERO.setScale(2);
            int without = 0;
            for (Row row : table.rows()) {
                String cost = row.cells().get(row.cells().size() - 1);
                if (row.kind() == Row.Kind.TOTAL) {
                    assertEquals(COSTS.isPriced(group) ? sum.toPlainString() : "no price", cost);
                } else if (cost.equals("no price")) {
                    without++;
                } else {
                    sum = sum.add(new BigDecimal(cost));
                }
            }
            assertEquals(
                    BILL.lines(group).stream()
                            .filter(l -> COSTS.cost(l).isEmpty())
                            .count(),
                    without);
        }
        List<String> words = words(Optional.of(COSTS));
        assertTrue(words.contains(COSTS.total().toPlainString()));
        assertTrue(words.contains("Without a price, and so not in the total:"));
    }
}
