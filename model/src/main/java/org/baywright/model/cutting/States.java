package org.baywright.model.cutting;

import java.util.Arrays;

/** Undominated ways to fill a bar, by load; worth grows with load. Each has the node of a {@link Trail} behind it. */
final class States {
    int[] load = new int[64];
    long[] worth = new long[64];
    int[] node = new int[64];
    int length;

    void push(int l, long w, int n) {
        if (length == load.length) {
            load = Arrays.copyOf(load, 2 * length);
            worth = Arrays.copyOf(worth, 2 * length);
            node = Arrays.copyOf(node, 2 * length);
        }
        load[length] = l;
        worth[length] = w;
        node[length++] = n;
    }

    /** Copies a state to an earlier place. */
    void move(int from, int to) {
        load[to] = load[from];
        worth[to] = worth[from];
        node[to] = node[from];
    }

    /** The same ways with more on the bar. */
    States heavier(int by) {
        States heavier = new States();
        for (int s = 0; s < length; s++) {
            heavier.push(load[s] + by, worth[s], node[s]);
        }
        return heavier;
    }
}
