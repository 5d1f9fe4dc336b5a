package org.baywright.model.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/**
 * The rows of the linear program over patterns, and what each asks for: first one for each item wanted (≥), then one for
 * each limited stock (≤), then, where bars are counted, one for the least bars of each stock (≥).
 */
final class Rows {
    private final Order order;
    private final boolean counted;
    private final int[] itemRow;
    private final int[] limitRow;
    private final int[] leastRow;
    private final int items;
    private final double[] plain;
    private final double[] nudged;
    private final double[] nudge;

    /**
     * Rows for an order.
     *
     * @param demand items of which none is wanted get no row
     * @param counted whether the bars of every stock are held between a least and a most
     */
    Rows(Order order, int[] demand, boolean counted) {
        this.order = order;
        this.counted = counted;
        itemRow = new int[demand.length];
        int row = 0;
        for (int i = 0; i < demand.length; i++) {
            itemRow[i] = demand[i] > 0 ? row++ : -1;
        }
        items = row;
        limitRow = new int[order.stocks()];
        for (int s = 0; s < limitRow.length; s++) {
            limitRow[s] = counted || order.isLimited(s) ? row++ : -1;
        }
        leastRow = new int[order.stocks()];
        for (int s = 0; s < leastRow.length; s++) {
            leastRow[s] = counted ? row++ : -1;
        }
        plain = new double[row];
        nudged = new double[row];
        // A fixed seed: the nudges only break ties, and break them the same way each time.
        Random random = new Random(20240229);
        nudge = random.doubles(row).map(d -> 1e-6 * (1 + d)).toArray();
    }

    int count() {
        return plain.length;
    }

    /** How many rows are items; they come first. */
    int items() {
        return items;
    }

    boolean areCounted() {
        return counted;
    }

    /** The row of an item, or −1 when none is wanted. */
    int ofItem(int i) {
        return itemRow[i];
    }

    /** The row of a stock's limit, or −1 when it has none. */
    int ofLimit(int stock) {
        return limitRow[stock];
    }

    /** Whether a row asks for something rather than limits it. */
    boolean isCover(int r) {
        return r < items || counted && r >= leastRow[0];
    }

    /** The rows of each two neighbours among the items of a family: of the longer, of the shorter. */
    List<int[]> exchanges() {
        List<int[]> exchanges = new ArrayList<>();
        int[] before = new int[order.overlap().length];
        Arrays.fill(before, -1);
        for (int i = 0; i < itemRow.length; i++) {
            if (itemRow[i] >= 0) {
                int family = order.family()[i];
                if (before[family] >= 0) {
                    exchanges.add(new int[] {before[family], itemRow[i]});
                }
                before[family] = itemRow[i];
            }
        }
        return exchanges;
    }

    /** The column of a pattern. */
    Column column(Pattern pattern, double cost) {
        int n = pattern.item.length;
        int limit = limitRow[pattern.stock];
        int least = leastRow[pattern.stock];
        int[] row = new int[n + (limit < 0 ? 0 : 1) + (least < 0 ? 0 : 1)];
        double[] entry = new double[row.length];
        Arrays.fill(entry, 1);
        for (int k = 0; k < n; k++) {
            row[k] = itemRow[pattern.item[k]];
            entry[k] = pattern.count[k];
        }
        if (limit >= 0) {
            row[n] = limit;
        }
        if (least >= 0) {
            row[n + 1] = least;
        }
        return new Column(cost, row, entry);
    }

    /** Changes what is asked for. */
    void setRight(int[] demand, int[] left, int[] least) {
        for (int i = 0; i < demand.length; i++) {
            if (itemRow[i] >= 0) {
                double slack = demand[i] > 0 ? nudge[itemRow[i]] : -nudge[itemRow[i]];
                set(itemRow[i], Math.max(0, demand[i]), slack);
            }
        }
        for (int s = 0; s < limitRow.length; s++) {
            if (limitRow[s] >= 0) {
                set(limitRow[s], left[s], nudge[limitRow[s]]);
            }
            if (leastRow[s] >= 0) {
                set(leastRow[s], least[s], -nudge[leastRow[s]]);
            }
        }
    }

    private void set(int row, double asked, double slack) {
        plain[row] = asked;
        nudged[row] = asked + slack;
    }

    /** What a row asks for. */
    double plain(int row) {
        return plain[row];
    }

    /** What all rows ask for, moved a little so that no two bases meet. */
    double[] nudged() {
        return nudged;
    }
}
