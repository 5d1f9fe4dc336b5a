package org.baywright.model.cutting;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A length that bars come in.
 *
 * @param lengthMm length of a bar
 * @param cost what one bar costs, in any one unit for all stock of a job, kept to four decimals so that costs add up
 *     exactly; 0 for what is already in the yard
 * @param limit how many there are, or {@link #UNLIMITED}
 */
public record Stock(double lengthMm, double cost, int limit) {
    /** The limit of stock that can be bought in any number. */
    public static final int UNLIMITED = Integer.MAX_VALUE;

    static final double LONGEST_MM = 1_000_000;
    static final double COST_STEPS = 10_000;
    private static final double DEAREST = 1e8;

    /** Checks the ranges; what costs nothing must be limited. */
    public Stock {
        if (!(lengthMm >= 0.001 && lengthMm <= LONGEST_MM)) {
            throw new IllegalArgumentException("a stock length must be over 0 and under 1 km: " + lengthMm);
        }
        if (!(cost >= 0 && cost <= DEAREST)) {
            throw new IllegalArgumentException("the cost of a bar must be from 0 to 100 million: " + cost);
        }
        cost = Math.round(cost * COST_STEPS) / COST_STEPS;
        if (limit < 0 || cost == 0 && limit == UNLIMITED) {
            throw new IllegalArgumentException("bars in the yard must be counted: " + lengthMm);
        }
    }

    /** Bars that cost their own length, as many as are wanted. */
    public static Stock length(double lengthMm) {
        return new Stock(lengthMm, lengthMm, UNLIMITED);
    }

    /** Bars at a price, as many as are wanted. */
    public static Stock priced(double lengthMm, double cost) {
        return new Stock(lengthMm, cost, UNLIMITED);
    }

    /** Off-cuts already in the yard: they cost nothing, so they are used before anything is bought. */
    public static Stock offcut(double lengthMm, int count) {
        return new Stock(lengthMm, 0, count);
    }

    /** The same stock, of which no more can be had. */
    public Stock limitedTo(int count) {
        return new Stock(lengthMm, cost, count);
    }

    /** How many of each yard bar are left when some are taken; those all taken are left out. */
    public static Map<Stock, Integer> unused(List<Stock> stocks, Map<Stock, Integer> taken) {
        Map<Stock, Integer> unused = new LinkedHashMap<>();
        stocks.stream().filter(Stock::isOffcut).forEach(s -> unused.merge(s, s.limit(), Integer::sum));
        taken.forEach((stock, bars) -> unused.computeIfPresent(stock, (s, n) -> n > bars ? n - bars : null));
        return unused;
    }

    /** True for what can run out. */
    public boolean isLimited() {
        return limit != UNLIMITED;
    }

    /** True for what is already in the yard. */
    public boolean isOffcut() {
        return cost == 0;
    }
}
