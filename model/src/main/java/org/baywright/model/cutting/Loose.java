package org.baywright.model.cutting;

import java.util.Arrays;
import java.util.SplittableRandom;

/** The pieces that are on no bar. */
final class Loose {
    private final Order order;
    private int[] item = new int[64];
    private int count;
    private long load;

    Loose(Order order) {
        this.order = order;
    }

    int count() {
        return count;
    }

    /** What all of them measure together. */
    long load() {
        return load;
    }

    int size(int place) {
        return order.size()[item[place]];
    }

    int[] items() {
        return Arrays.copyOf(item, count);
    }

    void add(int i) {
        if (count == item.length) {
            item = Arrays.copyOf(item, 2 * count);
        }
        item[count++] = i;
        load += order.size()[i];
    }

    int removeLast() {
        load -= size(count - 1);
        return item[--count];
    }

    /** Brings some pieces, drawn by lot, to the end; what they measure together. */
    long choose(int pieces, SplittableRandom lot) {
        long sum = 0;
        for (int k = 0; k < pieces; k++) {
            int to = count - 1 - k;
            int from = lot.nextInt(to + 1);
            int i = item[from];
            item[from] = item[to];
            item[to] = i;
            sum += order.size()[i];
        }
        return sum;
    }

    /** Whether each of the last pieces has its like among some of a bar, and there are as many of these. */
    boolean isSame(int pieces, int[] bar, int mask) {
        int left = mask;
        for (int k = count - pieces; k < count && Integer.bitCount(mask) == pieces; k++) {
            int before = left;
            for (int bit = left; bit != 0 && left == before; bit &= bit - 1) {
                if (bar[Integer.numberOfTrailingZeros(bit)] == item[k]) {
                    left &= ~Integer.lowestOneBit(bit);
                }
            }
        }
        return left == 0;
    }

    /** Sorts the pieces, longest first; returns the last few as they stood before. */
    int[] sortAfter(int last) {
        int[] added = Arrays.copyOfRange(item, count - last, count);
        Arrays.sort(item, 0, count);
        return added;
    }

    int placeOf(int i) {
        return Arrays.binarySearch(item, 0, count, i);
    }

    /** The first place from one on with a piece no longer than that; the count when there is none. */
    int firstWithin(int from, long room) {
        int low = from;
        int high = count;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (size(middle) <= room) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }

    /** Takes the pieces chosen away. */
    int[] take(boolean[] chosen) {
        int[] taken = new int[count];
        int n = 0;
        int kept = 0;
        for (int k = 0; k < chosen.length; k++) {
            if (chosen[k]) {
                load -= size(k);
                taken[n++] = item[k];
            } else {
                item[kept++] = item[k];
            }
        }
        count = kept;
        return Arrays.copyOf(taken, n);
    }
}
