package org.baywright.model.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * Looks for a plan of a given cost where next to nothing may be left over. All bars kept are so full that what they waste
 * adds up to no more than such a plan does; the other pieces are loose. A few loose pieces take the place of pieces of a
 * bar that are together as long, over and over, and whenever loose pieces fill a bar they become one. Once a bar takes
 * the loose pieces for what is left to spend, the plan is there. From time to time a bar is broken up, to get away.
 *
 * @source swaps between bars and the pieces on none: Buljubašić & Vasquez (2016), Computers & Operations Research 76,
 *     12–21; all that is kept within the waste of the bound: Alvim, Ribeiro, Glover & Aloise (2004), Journal of
 *     Heuristics 10, 205–229
 */
final class Swapping {
    private static final int MOST_PIECES = 60_000;
    private static final int MOST_BARS = 30_000;
    // In bars; where more may be wasted, other ways find a plan.
    private static final int MOST_WASTE = 3;
    private static final int[] NO_ITEMS = {};
    // What forming a bar may cost in tries after a swap.
    private static final int FORMING_TRIES = 400;
    private static final int STEPS_PER_WORK = 100;
    // One swap in so many is followed by breaking up a bar when two, three, ... bars' worth of pieces are loose.
    private static final int[] SELDOM = {30, 500, 2000, 5000, 10_000};
    // A bar is also broken up after so many tries without a swap.
    private static final int MOST_IDLE = 3000;
    private static final int MOST_SWAPPED = 3;
    // How many bars may still be loose after how much work.
    private static final int NEAR = 12;
    private static final long APPROACH = 5_000_000;
    // Chains of the index for each bar: many where a sum must be met exactly, so that most misses are seen at once.
    private static final int FINE = 100;
    private static final int COARSE = 8;

    private final Order order;
    private final long budget;
    private final long dearest;
    private final long cheapest;
    private final Waste waste;
    private final SplittableRandom random = new SplittableRandom(20240229);
    private final Kept kept;
    private final SumIndex index;
    private final Loose loose;
    private long work;
    private int idle;
    private boolean done;

    private Swapping(Order order, Draft plan, long budget) {
        this.order = order;
        this.budget = budget;
        dearest = order.dearest();
        cheapest = Arrays.stream(order.cost()).min().orElseThrow();
        loose = new Loose(order);
        waste = Waste.of(order, budget);
        kept = new Kept(order, (int) (budget / cheapest) + 1, waste.mostInAll() < 1 ? FINE : COARSE);
        index = kept.index();
        if (isTight()) {
            unpack(plan);
        }
    }

    /** The walk towards a plan of a cost, if the order is of the kind this is for. */
    static Optional<Swapping> towards(Order order, Draft plan, long cost) {
        boolean suits = suits(order)
                && cost > 2 * order.dearest()
                && cost / Arrays.stream(order.cost()).min().orElseThrow() < MOST_BARS
                && Arrays.stream(order.demand()).asLongStream().sum() <= MOST_PIECES;
        return Optional.of(plan)
                .filter(p -> suits)
                .map(p -> new Swapping(order, p, cost))
                .filter(Swapping::isTight);
    }

    /** Whether all stock can be bought without limit and nothing overlaps. */
    static boolean suits(Order order) {
        return !order.hasFamilies()
                && IntStream.range(0, order.stocks())
                        .allMatch(s -> !order.isLimited(s) && order.cost()[s] > 0 && order.capacity()[s] > 0);
    }

    private boolean isTight() {
        return waste.mostInAll() > -0.5 && waste.mostInAll() < MOST_WASTE * index.largest();
    }

    /** How much more may be wasted once so much is spent. */
    private double slack(long cost) {
        return waste.most(cost) - waste.of(kept.spent(), kept.held());
    }

    /** Keeps the fullest bars of a plan as far as their waste goes. */
    private void unpack(Draft plan) {
        List<Pattern> patterns = new ArrayList<>();
        plan.times().forEach((p, n) -> patterns.addAll(Collections.nCopies(n, p)));
        patterns.sort(Comparator.comparingDouble(p -> waste.of(order.cost()[p.stock], order.load(p))));
        for (Pattern p : patterns) {
            int[] items = Repacking.items(p);
            long cost = order.cost()[p.stock];
            if (waste.of(kept.spent() + cost, kept.held() + order.load(p)) <= waste.mostInAll() / 2
                    && kept.spent() + cost <= budget - 2 * dearest) {
                kept.add(items, p.stock);
            } else {
                Arrays.stream(items).forEach(loose::add);
            }
        }
    }

    /** Goes on for a measure of work or until a deadline; the plan, once it is found. */
    Optional<Draft> improve(long allowed, Deadline deadline) {
        long end = work + allowed;
        for (long turn = 0; !done && work < end && isNear() && (turn % 64 != 0 || !deadline.passed()); turn++) {
            long before = work;
            work++;
            idle++;
            if (swap() || idle > MOST_IDLE) {
                breakUp();
            }
            deadline.count(STEPS_PER_WORK * (work - before));
        }
        return done ? Optional.of(draft()) : Optional.empty();
    }

    /** Whether the bars kept came near to all in good time; where they do not, such a plan is most unlikely. */
    private boolean isNear() {
        return work < APPROACH || budget - kept.spent() <= NEAR * dearest;
    }

    /** Tries to put some loose pieces, drawn by lot, in the place of pieces of a bar; whether anything came of it. */
    private boolean swap() {
        int count = Math.min(loose.count(), 1 + random.nextInt(MOST_SWAPPED));
        long sum = loose.choose(count, random);
        if (sum > index.largest() || kept.count() == 0) {
            form(Math.min(1, loose.count()));
            return true;
        }
        int entry = index.find(sum - roomSomewhere(), sum + (long) Math.max(0, slack(kept.spent())), random);
        if (entry < 0 || loose.isSame(count, kept.items(SumIndex.bar(entry)), SumIndex.mask(entry))) {
            return false;
        }
        int bar = SumIndex.bar(entry);
        long load = index.load(bar) - index.sum(entry) + sum;
        int stock = order.cheapest(load, order.limit());
        if (stock < 0 || !isAllowed(bar, load, stock)) {
            return false;
        }
        idle = 0;
        int mask = SumIndex.mask(entry);
        exchange(bar, mask, count, stock);
        form(Integer.bitCount(mask));
        return true;
    }

    /** By how much pieces put in may be longer: what some bar has room for, or would have from another stock. */
    private long roomSomewhere() {
        int bar = random.nextInt(kept.count());
        int stock = random.nextBoolean() ? index.stock(bar) : random.nextInt(order.stocks());
        return order.capacity()[stock] - index.load(bar);
    }

    /** Whether a bar may come to hold so much, from a stock. */
    private boolean isAllowed(int bar, long load, int stock) {
        long cost = kept.spent() - order.cost()[index.stock(bar)] + order.cost()[stock];
        double now = waste.of(cost, kept.held() - index.load(bar) + load);
        return cost < budget && now - waste.of(kept.spent(), kept.held()) <= Math.max(0, slack(cost));
    }

    /** Puts the loose pieces chosen, which stand last, in the place of those of a bar. */
    private void exchange(int bar, int mask, int count, int stock) {
        int[] items = kept.items(bar);
        int[] now = new int[items.length - Integer.bitCount(mask) + count];
        int n = 0;
        for (int k = 0; k < count; k++) {
            now[n++] = loose.removeLast();
        }
        for (int k = 0; k < items.length; k++) {
            if (k < SumIndex.WIDTH && (mask >> k & 1) != 0) {
                loose.add(items[k]);
            } else {
                now[n++] = items[k];
            }
        }
        kept.replace(bar, now, stock);
    }

    /** Makes a bar of loose pieces, one of the last few among them, if they fill one. */
    private void form(int last) {
        int[] added = loose.sortAfter(last);
        for (int stock = 0; stock < order.stocks() && !isFinished(); stock++) {
            long left = budget - kept.spent() - order.cost()[stock];
            // What the bar may fall short by, once what this stock is dearer by its length is taken off.
            double most =
                    slack(kept.spent() + order.cost()[stock]) - waste.of(order.cost()[stock], order.capacity()[stock]);
            for (int i : most >= 0 && (left == 0 || left >= cheapest) ? added : NO_ITEMS) {
                Filling filling = new Filling(loose, order.capacity()[stock], (long) most, FORMING_TRIES);
                boolean full = filling.with(loose.placeOf(i));
                work += filling.tried();
                if (full) {
                    kept.add(loose.take(filling.chosen()), stock);
                    done = isFinished();
                    return;
                }
            }
        }
        done = isFinished();
    }

    /** Whether a bar for what is left to spend takes all that is loose. */
    private boolean isFinished() {
        int stock = order.cheapest(loose.load(), order.limit());
        return loose.count() == 0 || stock >= 0 && order.cost()[stock] <= budget - kept.spent();
    }

    private void breakUp() {
        int looseBars = (int) ((budget - kept.spent() + dearest - 1) / dearest);
        int step = Math.max(0, Math.min(SELDOM.length, looseBars - 1) - 1);
        if (!done && kept.count() > 0 && (idle > MOST_IDLE || random.nextInt(SELDOM[step]) == 0)) {
            idle = 0;
            for (int i : kept.remove(random.nextInt(kept.count()))) {
                loose.add(i);
            }
        }
    }

    private Draft draft() {
        Draft draft = kept.draft();
        if (loose.count() > 0) {
            draft.add(Kept.pattern(loose.items()).from(order.cheapest(loose.load(), order.limit())), 1);
        }
        return draft;
    }
}
