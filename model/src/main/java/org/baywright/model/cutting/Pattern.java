package org.baywright.model.cutting;

import java.util.Arrays;

/** How one bar is cut, as item numbers (ascending) and how often each is taken. Never changed once made. */
final class Pattern {
    final int stock;
    final int[] item;
    final int[] count;
    private final int hash;

    private Pattern(int stock, int[] item, int[] count) {
        this.stock = stock;
        this.item = item;
        this.count = count;
        hash = stock + 31 * (Arrays.hashCode(item) + 31 * Arrays.hashCode(count));
    }

    /** From a count for each item of the order. */
    static Pattern of(int stock, int[] counts) {
        int n = 0;
        for (int c : counts) {
            if (c > 0) {
                n++;
            }
        }
        int[] item = new int[n];
        int[] count = new int[n];
        for (int i = 0, k = 0; i < counts.length; i++) {
            if (counts[i] > 0) {
                item[k] = i;
                count[k++] = counts[i];
            }
        }
        return new Pattern(stock, item, count);
    }

    /** From item numbers in ascending order, repeated as often as taken. */
    static Pattern ofSorted(int stock, int[] items, int length) {
        int[] item = new int[length];
        int[] count = new int[length];
        int n = 0;
        for (int k = 0; k < length; k++) {
            if (n == 0 || item[n - 1] != items[k]) {
                item[n++] = items[k];
            }
            count[n - 1]++;
        }
        return new Pattern(stock, Arrays.copyOf(item, n), Arrays.copyOf(count, n));
    }

    /** The same pieces from another stock length. */
    Pattern from(int otherStock) {
        return otherStock == stock ? this : new Pattern(otherStock, item, count);
    }

    /** The same with one piece of an item less and one of another more, for an order of so many items. */
    Pattern exchanged(int less, int more, int items) {
        int[] counts = new int[items];
        for (int k = 0; k < item.length; k++) {
            counts[item[k]] = count[k];
        }
        counts[less]--;
        counts[more]++;
        return of(stock, counts);
    }

    /** How many of an item a bar holds. */
    int holds(int i) {
        int at = Arrays.binarySearch(item, i);
        return at < 0 ? 0 : count[at];
    }

    /** How many bars so cut the demand can take without making a piece too many. */
    int timesWithin(int[] demand) {
        int times = Integer.MAX_VALUE;
        for (int k = 0; k < item.length; k++) {
            times = Math.min(times, demand[item[k]] / count[k]);
        }
        return times;
    }

    /** Takes some bars of this pattern from the demand. */
    void take(int[] demand, int times) {
        for (int k = 0; k < item.length; k++) {
            demand[item[k]] -= count[k] * times;
        }
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Pattern p
                && p.hash == hash
                && p.stock == stock
                && Arrays.equals(p.item, item)
                && Arrays.equals(p.count, count);
    }

    @Override
    public int hashCode() {
        return hash;
    }
}
