package org.baywright.model.cutting;

import java.util.Arrays;
import java.util.List;

/** The pieces behind each state of a search: for each node its last chunk and the node before; node 0 is the empty bar. */
final class Trail {
    private int[] chunk = new int[256];
    private int[] before = new int[256];
    private int nodes = 1;

    /** The number of a new node. */
    int add(int nodeBefore, int lastChunk) {
        if (nodes == chunk.length) {
            chunk = Arrays.copyOf(chunk, 2 * nodes);
            before = Arrays.copyOf(before, 2 * nodes);
        }
        chunk[nodes] = lastChunk;
        before[nodes] = nodeBefore;
        return nodes++;
    }

    /** How many of each item are behind a node. */
    int[] counts(int node, List<Chunk> chunks, int items) {
        int[] counts = new int[items];
        for (int n = node; n != 0; n = before[n]) {
            Chunk c = chunks.get(chunk[n]);
            counts[c.item()] += c.copies();
        }
        return counts;
    }
}
