package org.baywright.model.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Some pieces of one item, taken onto a bar together or not at all. Chunks of 1, 2, 4 and so on pieces make any number.
 *
 * @param item of which the pieces are
 * @param copies how many
 * @param size bar length they take
 * @param value what they are worth
 */
record Chunk(int item, int copies, int size, long value) {
    /** The chunks of all items worth something, families together, best worth for their length first. */
    static List<Chunk> of(Order order, long[] value, int[] demand, int largest) {
        List<Chunk> chunks = new ArrayList<>();
        for (int i : sequence(order, value, demand)) {
            int copies = Math.min(demand[i], largest / order.size()[i]);
            for (int n = 1; copies > 0; n = Math.min(2 * n, copies)) {
                chunks.add(new Chunk(i, n, n * order.size()[i], n * value[i]));
                copies -= n;
            }
        }
        return chunks;
    }

    private static int[] sequence(Order order, long[] value, int[] demand) {
        double[] rate = new double[value.length];
        double[] familyRate = new double[order.overlap().length];
        List<Integer> items = new ArrayList<>();
        for (int i = 0; i < value.length; i++) {
            if (value[i] > 0 && demand[i] > 0) {
                items.add(i);
                rate[i] = (double) value[i] / order.size()[i];
                int f = order.family()[i];
                familyRate[f] = Math.max(familyRate[f], rate[i]);
            }
        }
        items.sort(Comparator.comparingDouble((Integer i) -> -familyRate[order.family()[i]])
                .thenComparingInt(i -> order.family()[i])
                .thenComparingDouble(i -> -rate[i])
                .thenComparingInt(i -> i));
        return items.stream().mapToInt(i -> i).toArray();
    }
}
