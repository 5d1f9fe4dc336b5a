package org.baywright.model.cutting;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Best fit decreasing: longest piece first, each on the open bar where it leaves least, a new bar when there is none.
 *
 * @source Johnson, D. S., et al. (1974), SIAM Journal on Computing 3(4), 299–325
 */
final class BestFit {
    private final Order order;
    private final int[] left;
    private final Integer[] opening;
    private final TreeMap<Integer, Deque<OpenBar>> byRoom = new TreeMap<>();
    private final List<OpenBar> bars = new ArrayList<>();

    private static final class OpenBar {
        final BitSet families = new BitSet();
        int[] items = new int[4];
        int length;
        int room;

        void put(int i, int taken) {
            if (length == items.length) {
                items = Arrays.copyOf(items, 2 * length);
            }
            items[length++] = i;
            room -= taken;
        }
    }

    private BestFit(Order order, int[] left, int preferred) {
        this.order = order;
        this.left = left.clone();
        opening = new Integer[order.stocks()];
        Arrays.setAll(opening, s -> s);
        Arrays.sort(
                opening,
                Comparator.comparingInt((Integer s) -> order.cost()[s] == 0 ? 0 : 1)
                        .thenComparingInt(s -> s == preferred ? 0 : 1)
                        .thenComparingDouble(s -> (double) order.cost()[s] / order.capacity()[s])
                        .thenComparingInt(s -> s));
    }

    /** The cheapest packing of a demand over the choices of the stock to open first; empty when stock runs out. */
    static Optional<Draft> pack(Order order, int[] demand, int[] left) {
        Optional<Draft> best = Optional.empty();
        for (int s = 0; s < order.stocks(); s++) {
            Optional<Draft> draft = pack(order, demand, left, s);
            if (draft.isPresent()
                    && (best.isEmpty() || draft.get().cost() < best.get().cost())) {
                best = draft;
            }
        }
        return best;
    }

    private static Optional<Draft> pack(Order order, int[] demand, int[] left, int preferred) {
        BestFit fit = new BestFit(order, left, preferred);
        for (int i = 0; i < demand.length; i++) {
            for (int n = 0; n < demand[i]; n++) {
                if (!fit.put(i)) {
                    return Optional.empty();
                }
            }
        }
        return Optional.of(fit.draft());
    }

    private boolean put(int i) {
        int family = order.family()[i];
        OpenBar bar = openBarFor(i, family);
        if (bar == null) {
            return false;
        }
        int taken = order.size()[i] + (bar.families.get(family) ? 0 : order.overlap()[family]);
        bar.families.set(family);
        bar.put(i, taken);
        byRoom.computeIfAbsent(bar.room, r -> new ArrayDeque<>()).push(bar);
        return true;
    }

    private OpenBar openBarFor(int i, int family) {
        int size = order.size()[i];
        int whole = size + order.overlap()[family];
        for (Map.Entry<Integer, Deque<OpenBar>> entry : byRoom.tailMap(size).entrySet()) {
            for (OpenBar bar : entry.getValue()) {
                if (bar.room >= whole || bar.families.get(family)) {
                    entry.getValue().remove(bar);
                    if (entry.getValue().isEmpty()) {
                        byRoom.remove(entry.getKey());
                    }
                    return bar;
                }
            }
        }
        return newBarFor(i);
    }

    private OpenBar newBarFor(int i) {
        for (int s : opening) {
            if (left[s] > 0 && order.fitsAlone(i, s)) {
                order.draw(left, s, 1);
                OpenBar bar = new OpenBar();
                bar.room = order.capacity()[s];
                bar.items[0] = s;
                bar.length = 1;
                bars.add(bar);
                return bar;
            }
        }
        return null;
    }

    private Draft draft() {
        Draft draft = new Draft(order);
        for (OpenBar bar : bars) {
            int stock = bar.items[0];
            Pattern pattern = Pattern.ofSorted(stock, Arrays.copyOfRange(bar.items, 1, bar.length), bar.length - 1);
            if (order.isLimited(stock)) {
                left[stock]++;
            }
            int cheapest = order.cheapest(order.load(pattern), left);
            order.draw(left, cheapest, 1);
            draft.add(pattern.from(cheapest), 1);
        }
        return draft;
    }
}
