package org.baywright.model.cutting;

import java.util.stream.IntStream;

/**
 * Bounds that need no linear program.
 *
 * @source L2: Martello & Toth (1990), Discrete Applied Mathematics 28, 59–70
 */
final class QuickBounds {
    private static final int MOST_THRESHOLDS = 2000;

    private QuickBounds() {}

    /** The better of the length bound and, where one stock length can be bought without limit, L2. */
    static long of(Order order) {
        boolean plain = order.stocks() == 1 && !order.isLimited(0);
        return plain ? Math.max(length(order), bars(order) * order.cost()[0]) : length(order);
    }

    /** All pieces cut without loss from the stock that is cheapest by its length, once the yard is used up. */
    private static long length(Order order) {
        double load = 0;
        for (int i = 0; i < order.count(); i++) {
            load += (double) order.size()[i] * order.demand()[i];
        }
        double rate = Double.POSITIVE_INFINITY;
        for (int s = 0; s < order.stocks(); s++) {
            if (order.cost()[s] == 0) {
                load -= (double) order.limit()[s] * Math.max(0, order.capacity()[s]);
            } else if (order.capacity()[s] > 0) {
                rate = Math.min(rate, (double) order.cost()[s] / order.capacity()[s]);
            }
        }
        return load <= 0 ? 0 : (long) Math.ceil(load * rate * (1 - 1e-12) - 1e-9);
    }

    /**
     * L2: for a threshold, pieces longer than the bar less the threshold stand alone, those over half a bar do not share
     * one, and the room they leave takes what it can of the rest down to the threshold.
     */
    private static long bars(Order order) {
        int step = 1 + order.count() / MOST_THRESHOLDS;
        return IntStream.range(0, order.count() / step)
                .map(k -> order.size()[k * step])
                .filter(size -> 2 * size <= order.capacity()[0])
                .mapToLong(threshold -> bars(order, threshold))
                .reduce(bars(order, 0), Math::max);
    }

    private static long bars(Order order, int threshold) {
        long capacity = order.capacity()[0];
        long alone = 0;
        long halves = 0;
        long room = 0;
        for (int i = 0; i < order.count(); i++) {
            long size = order.size()[i];
            long n = order.demand()[i];
            if (size > capacity - threshold) {
                alone += n;
            } else if (2 * size > capacity) {
                halves += n;
                room += n * (capacity - size);
            } else if (size >= threshold) {
                room -= n * size;
            }
        }
        return alone + halves + Math.max(0, (-room + capacity - 1) / capacity);
    }
}
