package org.baywright.model.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The full bars of a {@link Swapping}, with what their pieces measure in an index. */
final class Kept {
    private final Order order;
    private final List<int[]> bars = new ArrayList<>();
    private final SumIndex index;
    private long spent;
    private long held;

    /** Up to so many bars, with some chains of the index for each. */
    Kept(Order order, int most, int chains) {
        this.order = order;
        index = new SumIndex(order, most, chains);
    }

    SumIndex index() {
        return index;
    }

    int count() {
        return bars.size();
    }

    /** What all of them cost. */
    long spent() {
        return spent;
    }

    /** What their pieces measure together. */
    long held() {
        return held;
    }

    int[] items(int bar) {
        return bars.get(bar);
    }

    void add(int[] items, int stock) {
        bars.add(items);
        note(bars.size() - 1, stock);
    }

    /** Other pieces on a bar, perhaps from another stock. */
    void replace(int bar, int[] items, int stock) {
        drop(bar);
        bars.set(bar, items);
        note(bar, stock);
    }

    /** Takes a bar away; the last one gets its number. Returns its pieces. */
    int[] remove(int bar) {
        int[] items = bars.get(bar);
        drop(bar);
        int last = bars.size() - 1;
        int[] moved = bars.get(last);
        if (bar != last) {
            int stock = index.stock(last);
            drop(last);
            bars.set(bar, moved);
            note(bar, stock);
        }
        bars.remove(last);
        return items;
    }

    private void note(int bar, int stock) {
        index.put(bar, bars.get(bar));
        index.setStock(bar, stock);
        spent += order.cost()[stock];
        held += index.load(bar);
    }

    private void drop(int bar) {
        spent -= order.cost()[index.stock(bar)];
        held -= index.load(bar);
        index.remove(bar);
    }

    Draft draft() {
        Draft draft = new Draft(order);
        for (int b = 0; b < bars.size(); b++) {
            draft.add(pattern(bars.get(b)).from(index.stock(b)), 1);
        }
        return draft;
    }

    static Pattern pattern(int[] items) {
        int[] sorted = items.clone();
        Arrays.sort(sorted);
        return Pattern.ofSorted(0, sorted, sorted.length);
    }
}
