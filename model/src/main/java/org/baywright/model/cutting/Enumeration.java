package org.baywright.model.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * All patterns a better plan can be made of: those whose worth falls short of their cost by no more than the gap between
 * the bound and the plan to be bettered. Patterns with room for one more wanted piece are left out, since a cover can
 * use the fuller one.
 *
 * @source enumeration of columns within the gap: Baldacci, Christofides & Mingozzi (2008), Mathematical Programming 115,
 *     351–385
 */
final class Enumeration {
    private static final int STEPS_PER_NODE = 20;
    private static final int STEPS_PER_ITEM = 5;

    private final Order order;
    private final long[] value;
    private final double[] rate;
    private final int[] counts;
    private final int most;
    private final long mostNodes;
    private final Deadline deadline;
    private final Wedges wedges;
    private final List<Pattern> patterns = new ArrayList<>();
    private int stock;
    private double floor;
    private long nodes;

    private Enumeration(Order order, long[] value, int most, long mostNodes, Deadline deadline) {
        this.order = order;
        this.value = value;
        this.most = most;
        this.mostNodes = mostNodes;
        this.deadline = deadline;
        wedges = new Wedges(order.items());
        counts = new int[order.count()];
        rate = new double[order.count() + 1];
        for (int i = order.count() - 1; i >= 0; i--) {
            rate[i] = Math.max(rate[i + 1], (double) value[i] / order.size()[i] * (1 + 1e-12));
        }
    }

    /**
     * All patterns of each stock worth at least its floor under the values, or empty when there are more than can be
     * handled or finding them takes more than so many nodes.
     */
    static Optional<List<Pattern>> of(
            Order order, long[] value, double[] floor, int most, long mostNodes, Deadline deadline) {
        Enumeration e = new Enumeration(order, value, most, mostNodes, deadline);
        for (int s = 0; s < order.stocks(); s++) {
            e.stock = s;
            e.floor = floor[s];
            if (order.limit()[s] > 0 && !e.extend(0, order.capacity()[s], 0)) {
                return Optional.empty();
            }
        }
        return Optional.of(e.patterns);
    }

    /** Adds items from i on; false when there is too much to do. */
    private boolean extend(int i, int room, double worth) {
        if (++nodes > mostNodes || patterns.size() > most || nodes % 4096 == 0 && deadline.passed()) {
            return false;
        }
        deadline.count(STEPS_PER_NODE);
        if (worth >= floor) {
            addIfFull(room);
        }
        for (int j = i; j < counts.length && worth + room * rate[j] >= floor; j++) {
            int need = order.size()[j] + (familyOpen(j) ? 0 : order.overlap()[order.family()[j]]);
            deadline.count(STEPS_PER_ITEM);
            if (counts[j] < order.demand()[j] && need <= room) {
                counts[j]++;
                boolean done = !hasRoom(room - need) || extend(j, room - need, worth + value[j]);
                counts[j]--;
                if (!done) {
                    return false;
                }
            }
        }
        return true;
    }

    private void addIfFull(int room) {
        deadline.count((long) STEPS_PER_ITEM * order.count());
        for (int i = order.count() - 1; i >= 0; i--) {
            int need = order.size()[i] + (familyOpen(i) ? 0 : order.overlap()[order.family()[i]]);
            if (counts[i] < order.demand()[i] && need <= room && hasRoomWith(i, room - need)) {
                return;
            }
        }
        patterns.add(Pattern.of(stock, counts));
    }

    /** Whether what the slanted pieces lose fits, too; fewer pieces never need more. */
    private boolean hasRoom(int room) {
        return !wedges.areAny() || wedges.lossUm(counts) <= order.spare()[stock] + room * order.unitUm();
    }

    private boolean hasRoomWith(int i, int room) {
        counts[i]++;
        boolean has = hasRoom(room);
        counts[i]--;
        return has;
    }

    private boolean familyOpen(int i) {
        int family = order.family()[i];
        if (order.overlap()[family] == 0) {
            return true;
        }
        for (int j = 0; j < counts.length; j++) {
            if (counts[j] > 0 && order.family()[j] == family) {
                return true;
            }
        }
        return false;
    }
}
