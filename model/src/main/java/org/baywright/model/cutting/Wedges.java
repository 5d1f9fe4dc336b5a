package org.baywright.model.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * The least that the slanted pieces of a bar lose between them, in whichever order and however turned. Seen along the
 * setbacks of one plane, each piece is a step from one of its ends to the other, and the bar a closed walk from square
 * to square that takes all steps. So each gap between two neighbouring setbacks is crossed an even number of times: once
 * more where the pieces cross it an odd number of times, and there and back where none does but some lie beyond.
 *
 * @source the rural postman on a line: Frederickson (1979), Journal of the ACM 26(3), 538–554, gives the general problem
 */
final class Wedges {
    private static final double MICROMETRES = 1000;

    private record Gap(long lengthUm, boolean[] crossed, boolean[] beyond) {}

    private final List<Gap> gaps = new ArrayList<>();

    Wedges(List<Order.Item> items) {
        List<Integer> planes =
                items.stream().map(i -> i.setbacks().plane()).distinct().toList();
        planes.forEach(plane -> measure(items, plane));
    }

    private void measure(List<Order.Item> items, int plane) {
        double[] levels = items.stream()
                .map(Order.Item::setbacks)
                .filter(s -> s.plane() == plane)
                .flatMapToDouble(s -> DoubleStream.of(s.lesserMm(), s.steeperMm()))
                .filter(mm -> mm > 0)
                .distinct()
                .sorted()
                .toArray();
        double from = 0;
        for (double to : levels) {
            // A micrometre less, so that no rounding makes the loss too great.
            long length = (long) Math.floor((to - from) * MICROMETRES) - 1;
            if (length > 0) {
                gaps.add(gap(items, plane, from, to, length));
            }
            from = to;
        }
    }

    private static Gap gap(List<Order.Item> items, int plane, double from, double to, long lengthUm) {
        boolean[] crossed = new boolean[items.size()];
        boolean[] beyond = new boolean[items.size()];
        for (int i = 0; i < crossed.length; i++) {
            Setbacks s = items.get(i).setbacks();
            beyond[i] = s.plane() == plane && s.steeperMm() >= to;
            crossed[i] = beyond[i] && s.lesserMm() <= from;
        }
        return new Gap(lengthUm, crossed, beyond);
    }

    /** Whether any piece is slanted. */
    boolean areAny() {
        return !gaps.isEmpty();
    }

    /** The least loss of a bar with so many of each item. */
    long lossUm(int[] counts) {
        long loss = 0;
        for (Gap gap : gaps) {
            int crossings = 0;
            boolean beyond = false;
            for (int i = 0; i < counts.length; i++) {
                crossings += gap.crossed[i] ? counts[i] : 0;
                beyond |= gap.beyond[i] && counts[i] > 0;
            }
            int more = crossings % 2 == 1 ? 1 : crossings == 0 && beyond ? 2 : 0;
            loss += more * gap.lengthUm;
        }
        return loss;
    }
}
