package org.baywright.model.cutting;

/** Tries to fill a bar from loose pieces, which are sorted by length; the last piece is looked up, not tried. */
final class Filling {
    private final Loose loose;
    private final long capacity;
    private final long slack;
    private final boolean[] chosen;
    private final int most;
    private int tries;

    /**
     * For a bar.
     *
     * @param slack by how much it may fall short
     * @param most how much is tried
     */
    Filling(Loose loose, long capacity, long slack, int most) {
        this.loose = loose;
        this.capacity = capacity;
        this.slack = slack;
        this.most = most;
        chosen = new boolean[loose.count()];
    }

    /** Whether a full bar was found that holds the piece of a place. */
    boolean with(int k) {
        chosen[k] = true;
        long room = capacity - loose.size(k);
        return room >= 0 && extend(0, room);
    }

    /** Which pieces fill it. */
    boolean[] chosen() {
        return chosen;
    }

    /** How much was tried. */
    int tried() {
        return tries;
    }

    private boolean extend(int from, long room) {
        if (room <= slack) {
            return true;
        }
        int fits = loose.firstWithin(from, room);
        int last = fits < chosen.length && chosen[fits] ? fits + 1 : fits;
        if (last >= chosen.length) {
            return false;
        }
        if (loose.size(last) >= room - slack) {
            chosen[last] = true;
            return true;
        }
        long least = loose.size(chosen.length - 1);
        for (int k = last; k < chosen.length - 1 && ++tries < most; k++) {
            long rest = room - loose.size(k);
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
