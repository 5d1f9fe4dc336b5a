package org.baywright.model.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * Looks for a plan of a given number of bars where next to nothing may be left over. All bars kept are so full that their
 * room adds up to no more than such a plan leaves; the other pieces are loose. A few loose pieces take the place of
 * pieces of a bar that are together as long, over and over, and whenever loose pieces fill a bar they become one. Once
 * the loose pieces are no longer than one bar the plan is there. From time to time a bar is broken up, to get away.
 *
 * @source swaps between bars and the pieces on none: Buljubašić & Vasquez (2016), Computers & Operations Research 76,
 *     12–21; all that is kept within the waste of the bound: Alvim, Ribeiro, Glover & Aloise (2004), Journal of
 *     Heuristics 10, 205–229
 */
final class Swapping {
    private static final int MOST_PIECES = 5000;
    // What forming a bar may cost in tries after a swap.
    private static final int FORMING_TRIES = 400;
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
    private final Deadline deadline;
    private final int capacity;
    private final int target;
    // What a plan of so many bars leaves over, and what the bars kept have used of it.
    private final long waste;
    private long used;
    private final SplittableRandom random = new SplittableRandom(20240229);
    private final List<int[]> bars = new ArrayList<>();
    private final Loose loose = new Loose();
    private final SumIndex index;
    private long work;
    private int idle;
    private boolean done;

    private Swapping(Order order, Draft plan, int target, Deadline deadline) {
        this.order = order;
        this.deadline = deadline;
        this.target = target;
        capacity = order.capacity()[0];
        waste = (long) target * capacity
                - plan.times().entrySet().stream()
                        .mapToLong(e -> order.load(e.getKey()) * e.getValue())
                        .sum();
        index = new SumIndex(order, target, waste == 0 ? FINE : COARSE);
        unpack(plan);
    }

    /** The walk towards a plan of so many bars, if the order is of the kind this is for. */
    static Optional<Swapping> towards(Order order, Draft plan, long bars, Deadline deadline) {
        boolean suits = LocalSearch.suits(order)
                && bars > 2
                && Arrays.stream(order.demand()).asLongStream().sum() <= MOST_PIECES;
        return Optional.of(plan)
                .filter(p -> suits)
                .map(p -> new Swapping(order, p, (int) bars, deadline))
                .filter(s -> s.waste >= 0 && s.waste < s.capacity);
    }

    /** Keeps the fullest bars of a plan as far as their room goes. */
    private void unpack(Draft plan) {
        List<Pattern> patterns = new ArrayList<>();
        plan.times().forEach((p, n) -> patterns.addAll(Collections.nCopies(n, p)));
        patterns.sort((a, b) -> Long.compare(order.load(b), order.load(a)));
        for (Pattern p : patterns) {
            long room = capacity - order.load(p);
            int[] items = Repacking.items(p);
            if (used + room <= waste / 2 && bars.size() < target - 2) {
                keep(items, room);
            } else {
                Arrays.stream(items).forEach(loose::add);
            }
        }
    }

    private void keep(int[] items, long room) {
        used += room;
        bars.add(items);
        index.put(bars.size() - 1, items);
    }

    /** Goes on for a measure of work; the plan, once it is found. */
    Optional<Draft> improve(long allowed) {
        long end = work + allowed;
        for (long turn = 0; !done && work < end && isNear() && (turn % 64 != 0 || !deadline.passed()); turn++) {
            work++;
            idle++;
            if (swap() || idle > MOST_IDLE) {
                breakUp();
            }
        }
        return done ? Optional.of(draft()) : Optional.empty();
    }

    /** Whether the bars kept came near to all in good time; where they do not, such a plan is most unlikely. */
    private boolean isNear() {
        return work < APPROACH || bars.size() >= target - NEAR;
    }

    /** Tries to put some loose pieces, drawn by lot, in the place of pieces of a bar; whether anything came of it. */
    private boolean swap() {
        int count = Math.min(loose.count, 1 + random.nextInt(MOST_SWAPPED));
        long sum = loose.choose(count, random);
        if (sum > capacity || bars.isEmpty()) {
            form(Math.min(1, loose.count));
            return true;
        }
        // As much shorter as some bar has room for, or as much longer as there is room left to give.
        long room = capacity - index.load(random.nextInt(bars.size()));
        long most = sum + Math.max(0, waste / 2 - used);
        int entry = index.find(sum - room, most, random);
        if (entry < 0) {
            return false;
        }
        int bar = SumIndex.bar(entry);
        long load = index.load(bar) - index.sum(entry) + sum;
        if (load > capacity) {
            return false;
        }
        idle = 0;
        int mask = SumIndex.mask(entry);
        exchange(bar, mask, count, load);
        form(Integer.bitCount(mask));
        return true;
    }

    /** Puts the loose pieces chosen, which stand last, in the place of those of a bar. */
    private void exchange(int bar, int mask, int count, long load) {
        int[] items = bars.get(bar);
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
        used += index.load(bar) - load;
        bars.set(bar, now);
        index.put(bar, now);
    }

    /** Makes a bar of loose pieces, one of the last few among them, if they fill one. */
    private void form(int last) {
        int[] added = Arrays.copyOfRange(loose.item, loose.count - last, loose.count);
        loose.sort();
        for (int i : added) {
            Filling filling = new Filling();
            if (filling.with(loose.placeOf(i))) {
                int[] items = loose.take(filling.chosen);
                long room = capacity;
                for (int item : items) {
                    room -= order.size()[item];
                }
                keep(items, room);
                done = bars.size() >= target - 1;
                return;
            }
        }
    }

    private void breakUp() {
        int step = Math.max(0, Math.min(SELDOM.length, target - bars.size() - 1) - 1);
        if (!done && !bars.isEmpty() && (idle > MOST_IDLE || random.nextInt(SELDOM[step]) == 0)) {
            idle = 0;
            int b = random.nextInt(bars.size());
            int[] items = bars.get(b);
            used -= capacity - index.load(b);
            int last = bars.size() - 1;
            index.remove(b);
            int[] moved = bars.remove(last);
            if (b != last) {
                index.remove(last);
                bars.set(b, moved);
                index.put(b, moved);
            }
            Arrays.stream(items).forEach(loose::add);
        }
    }

    private Draft draft() {
        Draft draft = new Draft(order);
        bars.forEach(items -> draft.add(pattern(items), 1));
        if (loose.count > 0) {
            draft.add(pattern(Arrays.copyOf(loose.item, loose.count)), 1);
        }
        return draft;
    }

    private static Pattern pattern(int[] items) {
        int[] sorted = items.clone();
        Arrays.sort(sorted);
        return Pattern.ofSorted(0, sorted, sorted.length);
    }

    /** Tries to fill a bar from the loose pieces, sorted by length; the last one is looked up. */
    private final class Filling {
        private final boolean[] chosen = new boolean[loose.count];
        private final long slack = waste - used;
        private int tries = FORMING_TRIES;

        /** A bar that holds the piece of a place. */
        boolean with(int k) {
            chosen[k] = true;
            return extend(0, capacity - order.size()[loose.item[k]]);
        }

        private boolean extend(int from, long room) {
            if (room <= slack) {
                return true;
            }
            int fits = loose.firstWithin(from, room);
            if (fits == chosen.length) {
                return false;
            }
            int last = chosen[fits] ? fits + 1 : fits;
            if (last < chosen.length && order.size()[loose.item[last]] >= room - slack) {
                chosen[last] = true;
                return true;
            }
            int least = order.size()[loose.item[chosen.length - 1]];
            for (int k = last; k < chosen.length - 1 && --tries > 0; k++) {
                long rest = room - order.size()[loose.item[k]];
                work++;
                if (!chosen[k] && rest >= least) {
                    chosen[k] = true;
                    if (extend(k + 1, rest)) {
                        return true;
                    }
                    chosen[k] = false;
                }
            }
            return false;
        }
    }

    /** The pieces that are on no bar. */
    private final class Loose {
        private int[] item = new int[64];
        private int count;

        void add(int i) {
            if (count == item.length) {
                item = Arrays.copyOf(item, 2 * count);
            }
            item[count++] = i;
        }

        int removeLast() {
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

        /** Longest first. */
        void sort() {
            Arrays.sort(item, 0, count);
        }

        int placeOf(int i) {
            return Arrays.binarySearch(item, 0, count, i);
        }

        /** The first place from one on with a piece no longer than that. */
        int firstWithin(int from, long room) {
            int low = from;
            int high = count;
            while (low < high) {
                int middle = (low + high) >>> 1;
                if (order.size()[item[middle]] <= room) {
                    high = middle;
                } else {
                    low = middle + 1;
                }
            }
            return low;
        }

        int[] take(boolean[] chosen) {
            int[] taken = new int[count];
            int n = 0;
            int kept = 0;
            for (int k = 0; k < chosen.length; k++) {
                if (chosen[k]) {
                    taken[n++] = item[k];
                } else {
                    item[kept++] = item[k];
                }
            }
            count = kept;
            return Arrays.copyOf(taken, n);
        }
    }
}
