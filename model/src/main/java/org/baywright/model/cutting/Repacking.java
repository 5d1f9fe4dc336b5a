package org.baywright.model.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Random;

/**
 * Packs a number of bars of one stock length ever fuller: a few bars and some of the pieces that are on none are thrown
 * together, and the bars filled again one after the other, each as full as can be. What fills them no worse is kept, and
 * as the first is filled best, the room left gathers on few bars, until a piece that is on none goes there.
 *
 * @source filling one bar as full as can be: Gupta & Ho (1999), Production Planning & Control 10, 598–603; Fleszar & Hindi
 *     (2002), Computers & Operations Research 29, 821–839; bars and unplaced pieces together: Buljubašić & Vasquez
 *     (2016), Computers & Operations Research 76, 12–21
 */
final class Repacking {
    private static final int MOST_LOOSE = 8;
    private static final int MOST_PIECES = 32;
    private static final int NODES = 2000;
    // How many pieces the bars thrown together hold at most, on the mean.
    private static final int FEW_PIECES = 18;
    // What a step costs beside the pieces it tries.
    private static final int STEP = 200;
    private static final int STEPS_PER_WORK = 12;

    private final Order order;
    private final int capacity;
    private final int mostBars;
    // A fixed seed: the same job is packed the same way each time.
    private final Random random = new Random(20240229);
    private final List<Integer> loose = new ArrayList<>();
    private Draft best;
    private int[][] bars;
    private long[] room;
    private long work;

    /** Starts from a plan. */
    Repacking(Order order, Draft plan) {
        this.order = order;
        capacity = order.capacity()[0];
        best = plan;
        long pieces = Arrays.stream(order.demand()).asLongStream().sum();
        mostBars = (int) Math.max(3, FEW_PIECES * plan.bars() / pieces);
        unpack();
    }

    /** The fullest bars of the best plan but one, and the pieces of the other. */
    private void unpack() {
        List<Pattern> patterns = new ArrayList<>();
        best.times().forEach((p, n) -> patterns.addAll(Collections.nCopies(n, p)));
        patterns.sort(Comparator.comparingLong((Pattern p) -> -order.load(p)));
        Pattern last = patterns.remove(patterns.size() - 1);
        Arrays.stream(items(last)).forEach(loose::add);
        bars = patterns.stream().map(Repacking::items).toArray(int[][]::new);
        room = patterns.stream().mapToLong(p -> capacity - order.load(p)).toArray();
    }

    /**
     * Goes on packing, one bar less after another, for a measure of work, until a deadline or until a plan costs no more
     * than is enough.
     *
     * @return the best plan yet
     */
    Draft improve(long enough, long allowed, Deadline deadline) {
        long end = work + allowed;
        while (best.cost() > enough && work < end && bars.length > 0 && !deadline.passed()) {
            if (loose.isEmpty()) {
                best = draft();
                unpack();
            } else {
                long before = work;
                work += STEP;
                repack(chosen(Math.min(bars.length, 1 + random.nextInt(mostBars))));
                deadline.count(STEPS_PER_WORK * (work - before));
            }
        }
        return best;
    }

    /** The best plan yet. */
    Draft best() {
        return best;
    }

    static int[] items(Pattern pattern) {
        int[] items = new int[Arrays.stream(pattern.count).sum()];
        int n = 0;
        for (int k = 0; k < pattern.item.length; k++) {
            Arrays.fill(items, n, n += pattern.count[k], pattern.item[k]);
        }
        return items;
    }

    /** Some bars, the first one with room as a rule, the others half of the time. */
    private int[] chosen(int count) {
        int[] chosen = new int[count];
        for (int k = 0; k < count; k++) {
            int b = k == 0 || random.nextBoolean() ? barWithRoom() : random.nextInt(bars.length);
            while (contains(chosen, k, b)) {
                b = (b + 1) % bars.length;
            }
            chosen[k] = b;
        }
        return chosen;
    }

    private int barWithRoom() {
        int b = random.nextInt(bars.length);
        for (int n = 0; n < 20 && room[b] == 0; n++) {
            b = random.nextInt(bars.length);
        }
        return b;
    }

    private static boolean contains(int[] numbers, int length, int number) {
        for (int k = 0; k < length; k++) {
            if (numbers[k] == number) {
                return true;
            }
        }
        return false;
    }

    private void repack(int[] chosen) {
        Collections.shuffle(loose, random);
        int taken = Math.min(MOST_LOOSE, loose.size());
        List<Integer> pool = new ArrayList<>(loose.subList(0, taken));
        for (int b : chosen) {
            for (int i : bars[b]) {
                pool.add(i);
            }
        }
        if (pool.size() > MOST_PIECES) {
            return;
        }
        Collections.shuffle(pool, random);
        int[][] filled = new int[chosen.length][];
        long[] left = new long[chosen.length];
        for (int k = 0; k < chosen.length; k++) {
            Fill fill = new Fill(pool);
            work += fill.nodes;
            filled[k] = fill.take(pool);
            left[k] = capacity - fill.load;
        }
        if (isNoWorse(left, chosen)) {
            for (int k = 0; k < chosen.length; k++) {
                bars[chosen[k]] = filled[k];
                room[chosen[k]] = left[k];
            }
            loose.subList(0, taken).clear();
            loose.addAll(pool);
        }
    }

    /** Less room in all than in the bars as they are, or as much with no less of it in one place. */
    private boolean isNoWorse(long[] now, int[] chosen) {
        long less = 0;
        long most = 0;
        long mostBefore = 0;
        for (int k = 0; k < chosen.length; k++) {
            long before = room[chosen[k]];
            less += before - now[k];
            most = Math.max(most, now[k]);
            mostBefore = Math.max(mostBefore, before);
        }
        return less > 0 || less == 0 && most >= mostBefore;
    }

    /** The fullest bar that can be made of a pool of pieces, as far as a number of tries tells. */
    private final class Fill {
        private final int[] size;
        private final long[] rest;
        private final boolean[] on;
        private final boolean[] bestOn;
        private long load;
        private int nodes;

        Fill(List<Integer> pool) {
            int n = pool.size();
            size = new int[n];
            rest = new long[n + 1];
            for (int k = n - 1; k >= 0; k--) {
                size[k] = order.size()[pool.get(k)];
                rest[k] = rest[k + 1] + size[k];
            }
            on = new boolean[n];
            bestOn = on.clone();
            extend(0, 0);
        }

        private void extend(int k, long now) {
            if (now > load) {
                load = now;
                System.arraycopy(on, 0, bestOn, 0, on.length);
            }
            if (k < size.length && load < capacity && now + rest[k] > load && ++nodes < NODES) {
                if (now + size[k] <= capacity) {
                    on[k] = true;
                    extend(k + 1, now + size[k]);
                    on[k] = false;
                }
                extend(k + 1, now);
            }
        }

        int[] take(List<Integer> pool) {
            int[] taken = new int[size.length];
            int n = 0;
            int left = 0;
            for (int k = 0; k < size.length; k++) {
                if (bestOn[k]) {
                    taken[n++] = pool.get(k);
                } else {
                    pool.set(left++, pool.get(k));
                }
            }
            pool.subList(left, pool.size()).clear();
            Arrays.sort(taken, 0, n);
            return Arrays.copyOf(taken, n);
        }
    }

    private Draft draft() {
        Draft draft = new Draft(order);
        for (int[] items : bars) {
            if (items.length > 0) {
                draft.add(Pattern.ofSorted(0, items, items.length), 1);
            }
        }
        return draft;
    }
}
