package org.baywright.model.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** All ways to cut a demand within a cost and a number of layouts, the best of them kept. */
final class Recut {
    private final Order order;
    private final Steps steps;
    private final int[] demand;
    private final int[] left;
    private final long cost;
    private final int mostLayouts;
    private final double rate;
    private final int[] counts;
    private final List<Pattern> patterns = new ArrayList<>();
    private final List<Integer> times = new ArrayList<>();
    private Draft best;
    private boolean found;

    Recut(Order order, Steps steps, int[] demand, int[] left, long cost, int mostLayouts, Draft toBeat) {
        this.order = order;
        this.steps = steps;
        this.demand = demand.clone();
        this.left = left.clone();
        this.cost = cost;
        this.mostLayouts = mostLayouts;
        best = toBeat;
        counts = new int[order.count()];
        double least = Double.POSITIVE_INFINITY;
        for (int s = 0; s < order.stocks(); s++) {
            if (order.capacity()[s] > 0) {
                least = Math.min(least, (double) order.cost()[s] / order.capacity()[s]);
            }
        }
        rate = least * (1 - 1e-12);
    }

    Optional<Draft> search() {
        cut(cost, mostLayouts);
        return found ? Optional.of(best) : Optional.empty();
    }

    private void cut(long budget, int layouts) {
        int i = 0;
        double load = 0;
        for (int j = order.count() - 1; j >= 0; j--) {
            load += (double) order.size()[j] * demand[j];
            i = demand[j] > 0 ? j : i;
        }
        if (load == 0) {
            accept();
        } else if (layouts > 0 && steps.take() && load * rate <= budget) {
            if (layouts == 1) {
                cutAlike(budget);
            } else {
                chooseLayout(i, budget, layouts);
            }
        }
    }

    /** All that is left as bars of one layout. */
    private void cutAlike(long budget) {
        int common = 0;
        for (int d : demand) {
            common = gcd(common, d);
        }
        for (int bars = common; bars > 0; bars--) {
            if (common % bars == 0) {
                int by = bars;
                Pattern pattern =
                        Pattern.of(0, Arrays.stream(demand).map(d -> d / by).toArray());
                tryAllStock(pattern, bars, budget);
            }
        }
    }

    private void tryAllStock(Pattern pattern, int bars, long budget) {
        long load = order.load(pattern);
        for (int s = 0; s < order.stocks(); s++) {
            if (load <= order.capacity()[s] && bars <= left[s] && order.cost()[s] * bars <= budget) {
                patterns.add(pattern.from(s));
                times.add(bars);
                accept();
                patterns.remove(patterns.size() - 1);
                times.remove(times.size() - 1);
            }
        }
    }

    private int gcd(int a, int b) {
        return b == 0 ? a : gcd(b, a % b);
    }

    private void chooseLayout(int i, long budget, int layouts) {
        for (int s = 0; s < order.stocks(); s++) {
            int most = Math.min(left[s], demand[i]);
            if (order.cost()[s] > 0) {
                most = (int) Math.min(most, budget / order.cost()[s]);
            }
            for (int bars = most; bars > 0 && steps.areLeft(); bars--) {
                fill(i, i, s, bars, order.capacity()[s], budget, layouts);
            }
        }
    }

    /** Decides on the items from j on for a layout that holds item i, the longest left. */
    private void fill(int i, int j, int s, int bars, int room, long budget, int layouts) {
        if (!steps.take()) {
            return;
        }
        int next = j;
        while (next < order.count() && demand[next] < bars) {
            next++;
        }
        if (next == order.count()) {
            cutWith(s, bars, budget, layouts);
            return;
        }
        int first = order.overlap()[order.family()[next]];
        for (int k = i; k < next && first > 0; k++) {
            first = counts[k] > 0 && order.family()[k] == order.family()[next] ? 0 : first;
        }
        int most = Math.max(0, Math.min(demand[next] / bars, (room - first) / order.size()[next]));
        for (int n = most; n >= (next == i ? 1 : 0); n--) {
            counts[next] = n;
            int taken = n == 0 ? 0 : n * order.size()[next] + first;
            fill(i, next + 1, s, bars, room - taken, budget, layouts);
        }
        counts[next] = 0;
    }

    private void cutWith(int s, int bars, long budget, int layouts) {
        Pattern pattern = Pattern.of(s, counts);
        int[] saved = counts.clone();
        Arrays.fill(counts, 0);
        pattern.take(demand, bars);
        order.draw(left, s, bars);
        patterns.add(pattern);
        times.add(bars);
        cut(budget - order.cost()[s] * bars, layouts - 1);
        patterns.remove(patterns.size() - 1);
        times.remove(times.size() - 1);
        order.draw(left, s, -bars);
        pattern.take(demand, -bars);
        System.arraycopy(saved, 0, counts, 0, counts.length);
    }

    private void accept() {
        Draft draft = new Draft(order);
        for (int k = 0; k < patterns.size(); k++) {
            draft.add(patterns.get(k), times.get(k));
        }
        boolean better = draft.layouts() < best.layouts()
                || draft.layouts() == best.layouts() && draft.longestOffcut() > best.longestOffcut();
        if (draft.cost() <= cost && better) {
            best = draft;
            found = true;
        }
    }
}
