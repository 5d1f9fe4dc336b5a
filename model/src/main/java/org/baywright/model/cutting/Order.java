package org.baywright.model.cutting;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * A cutting job as whole numbers: equal pieces are one item, items stand largest first, lengths and costs are divided by
 * their greatest common divisor. An item's size holds its kerf, a capacity has the last kerf added and the end trim
 * taken off, so a bar fits when Σ size + Σ overlap of the families on it ≤ capacity.
 *
 * @param items the groups of equal pieces, largest first
 * @param size bar length each item takes
 * @param demand how many of each item
 * @param family which mitre each item has; 0 when it adds no overlap
 * @param overlap bar length a family takes once on each bar
 * @param capacity room on a bar of each stock
 * @param cost of a bar of each stock
 * @param limit bars of each stock
 * @param spare what a stock has beyond its capacity, less than a unit, in micrometres
 * @param unitUm how many micrometres a length of one stands for
 * @param costUnit what a cost of one stands for
 */
record Order(
        List<Item> items,
        int[] size,
        int[] demand,
        int[] family,
        int[] overlap,
        int[] capacity,
        long[] cost,
        int[] limit,
        long[] spare,
        long unitUm,
        double costUnit) {
    private static final double MICROMETRES = 1000;
    private static final long TOO_LONG = 2 * (long) (Stock.LONGEST_MM * MICROMETRES);

    /** What makes pieces interchangeable. */
    record Item(long lengthUm, Mitre mitre, Setbacks setbacks) {
        static Item of(Piece piece) {
            return new Item(micrometres(piece.lengthMm()), piece.mitre(), piece.setbacks());
        }

        static Item of(Cut cut) {
            return new Item(micrometres(cut.lengthMm()), cut.mitre(), cut.setbacks());
        }

        double lengthMm() {
            return lengthUm / MICROMETRES;
        }

        /** Bar length it takes with its kerf; a part of a micrometre counts as a whole one. */
        long load(Saw saw) {
            return lengthUm + roundUp(mitre.kerfMm(saw.kerfMm()));
        }

        long overlap() {
            return roundUp(mitre.overlapMm());
        }
    }

    static Order of(CuttingJob job) {
        Map<Item, Integer> quantities = new LinkedHashMap<>();
        job.pieces().forEach(p -> quantities.merge(Item.of(p), p.quantity(), Math::addExact));
        List<Item> items = new ArrayList<>(quantities.keySet());
        items.sort(Comparator.comparingLong((Item i) -> -i.load(job.saw())).thenComparingLong(i -> -i.overlap()));
        List<Long> overlaps = new ArrayList<>(List.of(0L));
        List<Mitre> families = new ArrayList<>(List.of(Mitre.SQUARE));
        int[] family =
                items.stream().mapToInt(i -> familyOf(i, families, overlaps)).toArray();
        long unit = 0;
        for (Item item : items) {
            unit = gcd(gcd(unit, item.load(job.saw())), item.overlap());
        }
        long step = Math.max(1, unit);
        long[] cost = job.stocks().stream()
                .mapToLong(s -> Math.round(s.cost() * Stock.COST_STEPS))
                .toArray();
        long costStep = 0;
        for (long c : cost) {
            costStep = gcd(costStep, c);
        }
        costStep = Math.max(1, costStep);
        for (int s = 0; s < cost.length; s++) {
            cost[s] /= costStep;
        }
        return new Order(
                List.copyOf(items),
                items.stream()
                        .mapToInt(i -> Math.toIntExact(i.load(job.saw()) / step))
                        .toArray(),
                items.stream().mapToInt(quantities::get).toArray(),
                family,
                overlaps.stream().mapToInt(o -> Math.toIntExact(o / step)).toArray(),
                job.stocks().stream()
                        .mapToInt(s -> (int) Math.floorDiv(capacity(s, job.saw()), step))
                        .toArray(),
                cost,
                job.stocks().stream().mapToInt(Stock::limit).toArray(),
                job.stocks().stream()
                        .mapToLong(s -> Math.floorMod(capacity(s, job.saw()), step))
                        .toArray(),
                step,
                costStep / Stock.COST_STEPS);
    }

    private static int familyOf(Item item, List<Mitre> families, List<Long> overlaps) {
        if (item.overlap() == 0) {
            return 0;
        }
        int at = families.indexOf(item.mitre());
        if (at < 0) {
            families.add(item.mitre());
            overlaps.add(item.overlap());
            at = families.size() - 1;
        }
        return at;
    }

    private static long capacity(Stock stock, Saw saw) {
        return micrometres(stock.lengthMm()) - roundUp(saw.endTrimMm()) + micrometres(saw.kerfMm());
    }

    private static long micrometres(double mm) {
        return Math.round(mm * MICROMETRES);
    }

    /** Up to the next micrometre, forgiving the last bits of a double; at most what no bar takes. */
    private static long roundUp(double mm) {
        return (long) Math.min(TOO_LONG, Math.ceil(mm * MICROMETRES - 1e-6));
    }

    private static long gcd(long a, long b) {
        return BigInteger.valueOf(a).gcd(BigInteger.valueOf(b)).longValue();
    }

    /** Whether a bar of a stock takes a piece alone. */
    static boolean fitsAlone(Piece piece, Stock stock, Saw saw) {
        Item item = Item.of(piece);
        return item.load(saw) + item.overlap() <= capacity(stock, saw);
    }

    boolean fitsAlone(int i, int s) {
        return (long) size[i] + overlap[family[i]] <= capacity[s];
    }

    /** Whether for each item there is stock without limit that takes it. */
    boolean isBuyable() {
        return IntStream.range(0, count())
                .allMatch(i -> IntStream.range(0, stocks()).anyMatch(s -> !isLimited(s) && fitsAlone(i, s)));
    }

    int count() {
        return size.length;
    }

    /** The cost of the dearest bar, at least 1. */
    long dearest() {
        return Math.max(1, Arrays.stream(cost).max().orElse(1));
    }

    int stocks() {
        return capacity.length;
    }

    boolean hasFamilies() {
        return overlap.length > 1;
    }

    boolean isLimited(int s) {
        return limit[s] != Stock.UNLIMITED;
    }

    /** The room a pattern takes on its bar. */
    long load(Pattern pattern) {
        long load = 0;
        boolean[] open = new boolean[overlap.length];
        for (int k = 0; k < pattern.item.length; k++) {
            int i = pattern.item[k];
            load += (long) size[i] * pattern.count[k];
            if (!open[family[i]]) {
                open[family[i]] = true;
                load += overlap[family[i]];
            }
        }
        return load;
    }

    /** What a pattern leaves of its bar, in micrometres. */
    long leftUm(Pattern pattern) {
        return spare[pattern.stock] + unitUm * (capacity[pattern.stock] - load(pattern));
    }

    /** The cheapest stock a load fits on of which some is left, or −1; the shorter one when they cost the same. */
    int cheapest(long load, int[] left) {
        int best = -1;
        for (int s = 0; s < stocks(); s++) {
            if (left[s] > 0 && load <= capacity[s] && (best < 0 || isCheaper(s, best))) {
                best = s;
            }
        }
        return best;
    }

    private boolean isCheaper(int s, int than) {
        return cost[s] < cost[than] || cost[s] == cost[than] && capacity[s] < capacity[than];
    }

    /** Takes bars from what is left of a stock, unless it never runs out. */
    void draw(int[] left, int s, int bars) {
        if (isLimited(s)) {
            left[s] -= bars;
        }
    }
}
