package org.baywright.model.cutting;

import java.util.Arrays;
import java.util.SplittableRandom;

/**
 * Which pieces of which bars are together how long: the sets of a bar's first few pieces but the full one, by their sum,
 * in chains of like sums.
 */
final class SumIndex {
    /** How many pieces of a bar are looked at. */
    static final int WIDTH = 6;

    private static final int STRIDE = 1 << WIDTH;
    private static final int NONE = -1;
    // Of a long chain the first few are looked at: it is shuffled all the time, for what is put in goes first.
    private static final int MOST_SEEN = 24;

    private final Order order;
    private final long largest;
    private final int[] head;
    private final int[] next;
    private final int[] previous;
    private final int[] sum;
    private final int[] sets;
    private final long[] load;
    private final int[] stock;

    /** An index of up to so many bars, with some chains for each. */
    SumIndex(Order order, int bars, int chains) {
        this.order = order;
        largest = Arrays.stream(order.capacity()).max().orElseThrow();
        head = new int[chains * bars];
        next = new int[STRIDE * bars];
        previous = new int[STRIDE * bars];
        sum = new int[STRIDE * bars];
        sets = new int[bars];
        load = new long[bars];
        stock = new int[bars];
        Arrays.fill(head, NONE);
    }

    static int bar(int entry) {
        return entry / STRIDE;
    }

    /** Which of a bar's pieces an entry is of: a bit for each of the first. */
    static int mask(int entry) {
        return entry % STRIDE;
    }

    int sum(int entry) {
        return sum[entry];
    }

    /** What the pieces of a bar measure together. */
    long load(int bar) {
        return load[bar];
    }

    /** What a bar is cut from. */
    int stock(int bar) {
        return stock[bar];
    }

    void setStock(int bar, int of) {
        stock[bar] = of;
    }

    /** The most that any bar takes. */
    long largest() {
        return largest;
    }

    /** Notes a bar's pieces in the place of those it had. */
    void put(int bar, int[] items) {
        remove(bar);
        long all = 0;
        for (int i : items) {
            all += order.size()[i];
        }
        load[bar] = all;
        int width = Math.min(WIDTH, items.length);
        sets[bar] = (1 << width) - (items.length > WIDTH ? 0 : 1);
        int base = bar * STRIDE;
        sum[base] = 0;
        for (int mask = 1; mask < sets[bar]; mask++) {
            int low = Integer.numberOfTrailingZeros(mask);
            sum[base + mask] = sum[base + (mask & mask - 1)] + order.size()[items[low]];
            link(base + mask);
        }
    }

    /** Forgets a bar. */
    void remove(int bar) {
        for (int mask = 1; mask < sets[bar]; mask++) {
            unlink(bar * STRIDE + mask);
        }
        sets[bar] = 0;
    }

    private int chain(long length) {
        return (int) (length * head.length / (largest + 1));
    }

    private void link(int entry) {
        int chain = chain(sum[entry]);
        next[entry] = head[chain];
        previous[entry] = NONE;
        if (head[chain] != NONE) {
            previous[head[chain]] = entry;
        }
        head[chain] = entry;
    }

    private void unlink(int entry) {
        if (previous[entry] == NONE) {
            head[chain(sum[entry])] = next[entry];
        } else {
            next[previous[entry]] = next[entry];
        }
        if (next[entry] != NONE) {
            previous[next[entry]] = previous[entry];
        }
    }

    /** An entry with a sum between two, drawn by lot from a chain drawn by lot; −1 when there is none in it. */
    int find(long least, long most, SplittableRandom lot) {
        if (most < 0 || least > largest) {
            return NONE;
        }
        int from = chain(Math.max(0, least));
        int to = chain(Math.min(largest, most));
        int found = NONE;
        int seen = 0;
        for (int e = head[from + lot.nextInt(Math.max(0, to - from) + 1)]; e != NONE && seen < MOST_SEEN; e = next[e]) {
            if (sum[e] >= least && sum[e] <= most && lot.nextInt(++seen) == 0) {
                found = e;
            }
        }
        return found;
    }
}
