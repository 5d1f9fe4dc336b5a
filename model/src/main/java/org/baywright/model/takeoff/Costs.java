package org.baywright.model.takeoff;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a bill costs by a list of prices. Every line is rounded to the cent by itself, so that a sum is the sum of what
 * is printed. A line without a price costs nothing known: it is named, and never counted as zero.
 */
public final class Costs {
    private final Bill bill;
    private final PriceList prices;
    private final Map<BillLine, BigDecimal> byLine = new IdentityHashMap<>();

    /** Prices every line that is bought. */
    public Costs(Bill bill, PriceList prices) {
        this.bill = bill;
        this.prices = prices;
        for (BillLine line : bill.lines()) {
            price(line).flatMap(p -> cost(line, p)).ifPresent(c -> byLine.put(line, c));
        }
    }

    /** Its bill. */
    public Bill bill() {
        return bill;
    }

    /** As printed; may be empty. */
    public String currency() {
        return prices.currency();
    }

    /** The price in the list that applies to a line. */
    public Optional<PriceList.Price> price(BillLine line) {
        return line.group().isBought()
                ? Optional.ofNullable(prices.prices().get(line.item().description()))
                : Optional.empty();
    }

    /** What a line costs, when the list has a price for it in a unit that the line is counted in. */
    public Optional<BigDecimal> cost(BillLine line) {
        return Optional.ofNullable(byLine.get(line));
    }

    /** By what is ordered; a line is also priced by its pieces, its mass or its length when the list asks for that. */
    private static Optional<BigDecimal> cost(BillLine line, PriceList.Price price) {
        return amount(line, price.unit())
                .map(amount -> price.amount().multiply(amount).setScale(2, RoundingMode.HALF_UP));
    }

    private static Optional<BigDecimal> amount(BillLine line, String unit) {
        if (unit.equals(line.unit().symbol())) {
            return Optional.of(rounded(line.order(), line.unit().decimals()));
        }
        if (unit.equals(BillLine.Unit.EACH.symbol())) {
            return Optional.of(BigDecimal.valueOf(line.quantity()));
        }
        if (unit.equals(BillLine.Unit.KILOGRAMS.symbol()) && line.massKg() > 0) {
            return Optional.of(rounded(line.massKg(), BillLine.Unit.KILOGRAMS.decimals()));
        }
        if (unit.equals(BillLine.Unit.METRES.symbol()) && line.item().lengthMm() > 0) {
            return Optional.of(
                    rounded(line.quantity() * line.item().lengthMm() / 1000, BillLine.Unit.METRES.decimals()));
        }
        return Optional.empty();
    }

    /** As the bill prints it, so that price times printed amount is the printed cost. */
    private static BigDecimal rounded(double amount, int decimals) {
        return BigDecimal.valueOf(amount).setScale(decimals, RoundingMode.HALF_UP);
    }

    /** Whether any line of a group has a price; without one its total is not zero but unknown. */
    public boolean isPriced(BillGroup group) {
        return bill.lines(group).stream().anyMatch(l -> cost(l).isPresent());
    }

    /** What the priced lines of a group cost. */
    public BigDecimal total(BillGroup group) {
        return bill.lines(group).stream()
                .flatMap(l -> cost(l).stream())
                .reduce(BigDecimal.ZERO.setScale(2), BigDecimal::add);
    }

    /** What all priced lines cost. */
    public BigDecimal total() {
        return List.of(BillGroup.values()).stream()
                .map(this::total)
                .reduce(BigDecimal.ZERO.setScale(2), BigDecimal::add);
    }

    /** Items that are bought and not in the total, by name, each with why, in the bill's order. */
    public List<String> unpriced() {
        return bill.lines().stream()
                .filter(l -> l.group().isBought() && cost(l).isEmpty())
                .map(this::why)
                .distinct()
                .toList();
    }

    /** How many lines of the bill are bought and not in the total. */
    public int unpricedLines() {
        return (int) bill.lines().stream()
                .filter(l -> l.group().isBought() && cost(l).isEmpty())
                .count();
    }

    private String why(BillLine line) {
        String unit = line.unit().symbol();
        return line.item().description()
                + price(line)
                        .map(p -> " (priced per " + p.unit() + " in line " + p.line() + ", ordered per " + unit + ")")
                        .orElse(" (per " + unit + ")");
    }

    /** Items of the list that the bill has no line for; a spelling may be wrong. */
    public List<String> unused() {
        List<String> bought = bill.lines().stream()
                .filter(l -> l.group().isBought())
                .map(l -> l.item().description())
                .toList();
        return prices.prices().keySet().stream()
                .filter(item -> !bought.contains(item))
                .toList();
    }
}
