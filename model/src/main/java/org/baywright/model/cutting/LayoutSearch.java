package org.baywright.model.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Among plans of one cost, looks for fewer different layouts and then for a longer off-cut: first by cutting a few
 * layouts again as fewer, then, for small jobs to the end, by trying every plan of one layout, two layouts and so on. It
 * stops after a fixed number of steps, so it promises the fewest layouts for small jobs only.
 *
 * @source cutting two or three layouts again as fewer: Foerster & Wäscher (2000), International Journal of Production
 *     Research 38(7), 1657–1676
 */
final class LayoutSearch {
    private static final long STEPS_FOR_FEW = 5_000;
    private static final long STEPS_FOR_ALL = 300_000;
    private static final int STEPS_PER_LAYOUT = 16;
    // Up to so many layouts all groups of three are tried and up to so many items all plans, beyond that only pairs.
    private static final int FEW_LAYOUTS = 60;
    private static final int FEW_ITEMS = 300;

    private final Order order;
    private final Deadline deadline;
    private long steps;

    private LayoutSearch(Order order, Deadline deadline) {
        this.order = order;
        this.deadline = deadline;
    }

    /** A plan that costs the same and is no worse in layouts, nor, with as many, in its longest off-cut. */
    static Draft improved(Order order, Draft plan, Deadline deadline) {
        return new LayoutSearch(order, deadline).improved(plan);
    }

    private Draft improved(Draft plan) {
        boolean isSmall = plan.layouts() <= FEW_LAYOUTS && order.count() <= FEW_ITEMS;
        // Where no two pieces are alike, no two bars are.
        boolean isAllUnlike = Arrays.stream(order.demand()).allMatch(d -> d == 1);
        Draft best = isAllUnlike ? plan : fewer(plan, isSmall ? 3 : 2);
        steps = isSmall ? STEPS_FOR_ALL : 0;
        for (int layouts = isAllUnlike ? best.layouts() : 1; layouts <= best.layouts() && isOpen(); layouts++) {
            Recut all = new Recut(order.demand(), order.limit(), best.cost(), layouts, best);
            best = all.search().orElse(best);
        }
        return best;
    }

    /** Groups of two layouts and so on up to a size cut again as one fewer, as long as that goes on. */
    private Draft fewer(Draft plan, int largestGroup) {
        Draft best = plan;
        long allowance = STEPS_FOR_ALL;
        for (int group = 2; group <= largestGroup; group++) {
            Optional<Draft> fewer = Optional.of(best);
            while (fewer.isPresent()) {
                best = fewer.get();
                steps = allowance;
                fewer = regrouped(best, group);
                allowance = Math.max(0, steps);
            }
        }
        return best;
    }

    private boolean isOpen() {
        return steps > 0 && !deadline.passed();
    }

    /** The plan with some group of its layouts cut again as one fewer. */
    private Optional<Draft> regrouped(Draft plan, int group) {
        List<Map.Entry<Pattern, Integer>> layouts = new ArrayList<>(plan.times().entrySet());
        int[] chosen = new int[group];
        for (int k = 0; k < group; k++) {
            chosen[k] = k;
        }
        while (group <= layouts.size() && isOpen()) {
            Optional<Draft> fewer = recut(plan, layouts, chosen);
            if (fewer.isPresent() || !next(chosen, layouts.size())) {
                return fewer;
            }
        }
        return Optional.empty();
    }

    private static boolean next(int[] chosen, int n) {
        int k = chosen.length - 1;
        while (k >= 0 && chosen[k] == n - chosen.length + k) {
            k--;
        }
        if (k < 0) {
            return false;
        }
        chosen[k]++;
        for (int q = k + 1; q < chosen.length; q++) {
            chosen[q] = chosen[q - 1] + 1;
        }
        return true;
    }

    private Optional<Draft> recut(Draft plan, List<Map.Entry<Pattern, Integer>> layouts, int[] chosen) {
        Draft part = new Draft(order);
        int[] demand = new int[order.count()];
        int[] left = order.limit().clone();
        plan.times().forEach((p, n) -> order.draw(left, p.stock, n));
        for (int k : chosen) {
            Pattern pattern = layouts.get(k).getKey();
            int bars = layouts.get(k).getValue();
            part.add(pattern, bars);
            pattern.take(demand, -bars);
            order.draw(left, pattern.stock, -bars);
        }
        // What it takes to set this up counts as well.
        steps -= layouts.size() / STEPS_PER_LAYOUT;
        long before = steps;
        steps = Math.min(steps, STEPS_FOR_FEW);
        long given = steps;
        Optional<Draft> fewer = new Recut(demand, left, part.cost(), chosen.length - 1, part).search();
        steps = before - (given - steps);
        return fewer.map(f -> {
            Draft changed = new Draft(order);
            for (int k = 0; k < layouts.size(); k++) {
                if (Arrays.binarySearch(chosen, k) < 0) {
                    changed.add(layouts.get(k).getKey(), layouts.get(k).getValue());
                }
            }
            changed.addAll(f);
            return changed;
        });
    }

    /** All ways to cut a demand within a cost and a number of layouts, the best of them kept. */
    private final class Recut {
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

        Recut(int[] demand, int[] left, long cost, int mostLayouts, Draft toBeat) {
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
            } else if (layouts > 0 && --steps > 0 && load * rate <= budget) {
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
                for (int bars = most; bars > 0 && isOpen(); bars--) {
                    fill(i, i, s, bars, order.capacity()[s], budget, layouts);
                }
            }
        }

        /** Decides on the items from j on for a layout that holds item i, the longest left. */
        private void fill(int i, int j, int s, int bars, int room, long budget, int layouts) {
            if (--steps <= 0 || steps % 4096 == 0 && deadline.passed()) {
                steps = Math.min(steps, 0);
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
}
