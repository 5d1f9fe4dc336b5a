package org.baywright.model.cutting;

import java.util.Arrays;

/**
 * What pieces are worth and what a bar must earn, as whole numbers.
 *
 * @param item worth of a piece of each item
 * @param bar what a bar of each stock must earn: its cost, and more where it runs short
 * @param scale the whole number for the cost of the dearest bar
 */
record Prices(long[] item, long[] bar, double scale) {
    /** The prices of a linear program, rounded down. */
    static Prices of(Master master, Order order, double scale) {
        double[] price = master.prices();
        long[] item = new long[order.count()];
        for (int i = 0; i < item.length; i++) {
            item[i] = (long) (Math.min(Master.STAND_IN, Math.max(0, price[i])) * scale);
        }
        long[] bar = new long[order.stocks()];
        for (int s = 0; s < bar.length; s++) {
            bar[s] = (long) ((order.cost()[s] / master.dearest() - master.limitPrice(s)) * scale);
        }
        return new Prices(item, bar, scale);
    }

    /** Each piece worth its share of the bar that is cheapest by its length. */
    static Prices byLength(Order order, double dearest, double scale) {
        double rate = Double.POSITIVE_INFINITY;
        for (int s = 0; s < order.stocks(); s++) {
            if (order.cost()[s] > 0 && order.capacity()[s] > 0) {
                rate = Math.min(rate, order.cost()[s] / dearest / order.capacity()[s] * scale);
            }
        }
        double each = Double.isInfinite(rate) ? 0 : rate;
        long[] item =
                Arrays.stream(order.size()).mapToLong(s -> (long) (s * each)).toArray();
        long[] bar = new long[order.stocks()];
        for (int s = 0; s < bar.length; s++) {
            bar[s] = (long) Math.max(order.cost()[s] / dearest * scale, order.capacity()[s] * each);
        }
        return new Prices(item, bar, scale);
    }

    /** Prices a share of the way to others. */
    Prices towards(Prices other, double share) {
        return share == 0 ? this : new Prices(mix(item, other.item, share), mix(bar, other.bar, share), scale);
    }

    private static long[] mix(long[] from, long[] to, double share) {
        long[] mixed = new long[from.length];
        for (int k = 0; k < mixed.length; k++) {
            mixed[k] = from[k] + (long) (share * (to[k] - from[k]));
        }
        return mixed;
    }

    /** What a bar of each stock must be worth to be taken into the program; all the world when none is left. */
    long[] thresholds(int[] left) {
        long[] threshold = new long[bar.length];
        for (int s = 0; s < bar.length; s++) {
            threshold[s] = left[s] == 0 ? Long.MAX_VALUE : bar[s] + (long) (1e-9 * scale);
        }
        return threshold;
    }

    /**
     * The nearest prices at which no bar is worth more than it must earn: all cut down until that holds for the stock
     * that can be bought freely, then limited stock made to earn what its best bar is worth.
     *
     * @param most no bar of a stock is worth more at these prices
     * @source Farley (1990), Operations Research 38(5), 922–923
     */
    Prices sound(Order order, long[] most, double dearest) {
        double shrink = 1;
        for (int s = 0; s < most.length; s++) {
            if (!order.isLimited(s)) {
                shrink = Math.max(shrink, most[s] / cost(order, s, dearest) * (1 + 1e-15));
            }
        }
        double by = shrink;
        long[] soundItem = Arrays.stream(item).map(v -> (long) (v / by)).toArray();
        long[] soundBar = new long[bar.length];
        for (int s = 0; s < bar.length; s++) {
            soundBar[s] = (long) cost(order, s, dearest);
            if (order.isLimited(s) && most[s] < Long.MAX_VALUE) {
                soundBar[s] = Math.max(soundBar[s], (long) Math.ceil(most[s] / by));
            }
        }
        return new Prices(soundItem, soundBar, scale);
    }

    /** The lower bound that sound prices give on the cost of a demand, in units of the dearest bar. */
    double bound(Order order, int[] demand, int[] left, double dearest) {
        double worth = 0;
        for (int i = 0; i < demand.length; i++) {
            worth += (double) item[i] * demand[i];
        }
        for (int s = 0; s < bar.length; s++) {
            if (order.isLimited(s)) {
                worth -= left[s] * (bar[s] - cost(order, s, dearest));
            }
        }
        return worth / scale;
    }

    private double cost(Order order, int s, double dearest) {
        return order.cost()[s] / dearest * scale;
    }
}
