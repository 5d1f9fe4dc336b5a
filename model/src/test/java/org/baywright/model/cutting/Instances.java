package org.baywright.model.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

/**
 * Cutting jobs made by the recipes of published bin-packing sets, from fixed seeds. Where a recipe plants a packing, the
 * optimum is known.
 */
final class Instances {
    private Instances() {}

    /** A job of one stock length; the optimum in bars, or 0 when it is not known. */
    record Instance(String name, int capacity, int[] sizes, int optimum) {
        CuttingJob job() {
            List<Piece> pieces =
                    Arrays.stream(sizes).mapToObj(s -> Piece.square(s, 1)).toList();
            return new CuttingJob(pieces, List.of(Stock.length(capacity)), Saw.NONE);
        }
    }

    /** A list as a shed gives it: 5 to 40 lengths, up to 1000 pieces, one to three stock lengths, a saw. Ours. */
    static CuttingJob shed(int seed) {
        Random random = new Random(seed);
        int lengths = 5 + random.nextInt(36);
        List<Piece> pieces = IntStream.range(0, lengths)
                .mapToObj(k -> Piece.square((2000 + random.nextInt(77_000)) / 10.0, 1 + random.nextInt(1000 / lengths)))
                .toList();
        List<Stock> stocks = List.of(Stock.length(8000), Stock.length(12_000), Stock.length(9000))
                .subList(0, 1 + random.nextInt(3));
        return new CuttingJob(pieces, stocks, new Saw(3, 10));
    }

    /**
     * Uniform sizes.
     *
     * @source Falkenauer (1996), Journal of Heuristics 2, 5–30: 20 to 100 in 150
     */
    static Instance uniform(int n, int low, int high, int capacity, int seed) {
        Random random = new Random(seed);
        int[] sizes = IntStream.range(0, n)
                .map(k -> low + random.nextInt(high - low + 1))
                .toArray();
        return new Instance("uniform " + n + " in " + capacity, capacity, sizes, 0);
    }

    /**
     * Bars of exactly three pieces with nothing left over.
     *
     * @source Falkenauer (1996): the largest from 0.38 to 0.49 of the bar, the second over a quarter, the third the rest
     */
    static Instance triplets(int bars, int capacity, int seed) {
        Random random = new Random(seed);
        int[] sizes = new int[3 * bars];
        for (int b = 0; b < bars; b++) {
            int first = (int) (capacity * (0.38 + 0.11 * random.nextDouble()));
            int half = (capacity - first) / 2;
            int second = capacity / 4 + random.nextInt(Math.max(1, half - capacity / 4));
            sizes[3 * b] = first;
            sizes[3 * b + 1] = second;
            sizes[3 * b + 2] = capacity - first - second;
        }
        return new Instance("triplets " + 3 * bars + " in " + capacity, capacity, sizes, bars);
    }

    /** Bars cut at random into a number of pieces with nothing left over. */
    static Instance perfect(int bars, int fewest, int most, int capacity, int seed) {
        Random random = new Random(seed);
        List<Integer> sizes = new ArrayList<>();
        for (int b = 0; b < bars; b++) {
            int pieces = fewest + random.nextInt(most - fewest + 1);
            int[] cuts = random.ints(1, capacity)
                    .distinct()
                    .limit(pieces - 1)
                    .sorted()
                    .toArray();
            int before = 0;
            for (int cut : cuts) {
                sizes.add(cut - before);
                before = cut;
            }
            sizes.add(capacity - before);
        }
        int[] all = sizes.stream().mapToInt(s -> s).toArray();
        return new Instance("perfect " + fewest + "-" + most + " of " + bars, capacity, all, bars);
    }

    /**
     * Weibull sizes.
     *
     * @source Castiñeiras, De Cauwer & O'Sullivan (2012), CP 2012, LNCS 7514, 207–222
     */
    static Instance weibull(int n, double shape, int capacity, int seed) {
        Random random = new Random(seed);
        int[] sizes = IntStream.range(0, n)
                .map(k -> (int) Math.ceil(capacity / 4.0 * Math.pow(-Math.log(1 - random.nextDouble()), 1 / shape)))
                .map(s -> Math.max(1, Math.min(s, capacity)))
                .toArray();
        return new Instance("weibull " + n + " shape " + shape, capacity, sizes, 0);
    }

    /**
     * Few sizes that differ little, a third of the bar or so, or 20 to 35 % of a long bar.
     *
     * @source Scholl, Klein & Jürgens (1997), Computers & Operations Research 24(7), 627–645, third set
     */
    static Instance longBar(int n, int seed) {
        return renamed(uniform(n, 20_000, 35_000, 100_000, seed), "scholl-3 " + n);
    }

    /**
     * Sizes near a mean.
     *
     * @source Scholl, Klein & Jürgens (1997), second set: capacity 1000, mean a share of it, spread a share of the mean
     */
    static Instance aroundMean(int n, int perBar, double spread, int seed) {
        int mean = 1000 / perBar;
        int low = (int) (mean * (1 - spread));
        int high = (int) (mean * (1 + spread));
        return renamed(uniform(n, Math.max(1, low), Math.min(1000, high), 1000, seed), "scholl-2 " + n);
    }

    /**
     * Many small sizes in long bars.
     *
     * @source Schwerin & Wäscher (1997), International Transactions in Operational Research 4, 377–389: 150 to 200 in 1000
     */
    static Instance schwerin(int n, int seed) {
        return renamed(uniform(n, 150, 200, 1000, seed), "schwerin " + n);
    }

    /**
     * A spread of sizes under a share of the bar.
     *
     * @source Delorme, Iori & Martello (2016), European Journal of Operational Research 255, 1–20: random jobs of 50 to
     *     1000 sizes, the least a tenth or a fifth of the bar, the most half to four fifths
     */
    static Instance spread(int n, int capacity, double least, double most, int seed) {
        return renamed(
                uniform(n, (int) (least * capacity), (int) (most * capacity), capacity, seed),
                "delorme " + n + " in " + capacity);
    }

    /**
     * Bars of three pieces with nothing left over and hardly two sizes alike, one piece cut in two: hard to find, as in
     * the augmented jobs whose length bound is met.
     *
     * @source Delorme, Iori & Martello (2016), European Journal of Operational Research 255, 1–20: capacity 2500 to 80000
     */
    static Instance augmented(int bars, int capacity, int seed) {
        Random random = new Random(seed);
        List<Integer> sizes = new ArrayList<>();
        for (int b = 0; b < bars; b++) {
            int first = capacity / 3 + random.nextInt(capacity / 6);
            int second = capacity / 5 + random.nextInt(capacity / 3 - capacity / 5);
            sizes.add(first);
            sizes.add(second);
            sizes.add(capacity - first - second);
        }
        int cut = sizes.remove(0);
        int part = 1 + random.nextInt(cut - 1);
        sizes.add(part);
        sizes.add(cut - part);
        return planted("augmented", bars, capacity, sizes);
    }

    private static Instance planted(String recipe, int bars, int capacity, List<Integer> sizes) {
        int[] all = sizes.stream().mapToInt(s -> s).toArray();
        return new Instance(recipe + " " + all.length + " in " + capacity, capacity, all, bars);
    }

    /**
     * Sizes from next to nothing to a share of a bar of 10000, kept when the length bound is nearly met.
     *
     * @source Wäscher & Gau (1996), OR Spektrum 18, 131–144: capacity 10000, the largest a quarter of it to all of it
     */
    static Instance wide(int n, double most, int seed) {
        for (int k = 0; ; k++) {
            Instance i = uniform(n, 1, (int) (most * 10_000), 10_000, 1000 * seed + k);
            double bars = Arrays.stream(i.sizes()).sum() / 10_000.0;
            if (Math.ceil(bars) - bars < 0.02) {
                return renamed(i, "waescher-gau " + n);
            }
        }
    }

    /**
     * Few sizes, each asked for several times, in a very long bar.
     *
     * @source Gschwind & Irnich (2016), INFORMS Journal on Computing 28(1), 175–194: capacity 500000
     */
    static Instance longest(int lengths, double most, int seed) {
        Random random = new Random(seed);
        int[] sizes = IntStream.range(0, lengths)
                .map(k -> 500 + random.nextInt((int) (most * 500_000) - 500))
                .flatMap(size -> IntStream.generate(() -> size).limit(1 + random.nextInt(5)))
                .toArray();
        return new Instance("gschwind-irnich " + lengths, 500_000, sizes, 0);
    }

    /**
     * Of the shape of the 28 jobs known as hard: 160 to 200 sizes of 1 to 800 in 1000, kept when the length bound is
     * nearly met.
     *
     * @source Schoenfield (2002), US Army Space and Missile Defense Command, technical report
     */
    static Instance hard(int n, int seed) {
        for (int k = 0; ; k++) {
            Instance i = uniform(n, 1, 800, 1000, 1000 * seed + k);
            double bars = Arrays.stream(i.sizes()).sum() / 1000.0;
            if (Math.ceil(bars) - bars < 0.01) {
                return renamed(i, "tight 1-800 " + n);
            }
        }
    }

    private static Instance renamed(Instance i, String name) {
        return new Instance(name, i.capacity(), i.sizes(), i.optimum());
    }
}
