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
    // What a step counts towards the deadline.
    private static final int WEIGHT = 30;
    private static final double WEIGHT_PER_ITEM = 0.5;
    // Up to so many layouts all groups of three are tried and up to so many items all plans, beyond that only pairs.
    private static final int FEW_LAYOUTS = 60;
    private static final int FEW_ITEMS = 300;

    private final Order order;
    private final Steps steps;

    private LayoutSearch(Order order, Deadline deadline) {
        this.order = order;
        steps = new Steps(deadline, (long) (WEIGHT + WEIGHT_PER_ITEM * order.count()));
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
        steps.set(isSmall ? STEPS_FOR_ALL : 0);
        for (int layouts = isAllUnlike ? best.layouts() : 1; layouts <= best.layouts() && steps.areLeft(); layouts++) {
            Recut all = new Recut(order, steps, order.demand(), order.limit(), best.cost(), layouts, best);
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
                steps.set(allowance);
                fewer = regrouped(best, group);
                allowance = Math.max(0, steps.left());
            }
        }
        return best;
    }

    /** The plan with some group of its layouts cut again as one fewer. */
    private Optional<Draft> regrouped(Draft plan, int group) {
        List<Map.Entry<Pattern, Integer>> layouts = new ArrayList<>(plan.times().entrySet());
        int[] chosen = new int[group];
        for (int k = 0; k < group; k++) {
            chosen[k] = k;
        }
        while (group <= layouts.size() && steps.areLeft()) {
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
        long before = steps.left() - layouts.size() / STEPS_PER_LAYOUT;
        long given = Math.min(before, STEPS_FOR_FEW);
        steps.set(given);
        Optional<Draft> fewer = new Recut(order, steps, demand, left, part.cost(), chosen.length - 1, part).search();
        steps.set(before - (given - steps.left()));
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
}
