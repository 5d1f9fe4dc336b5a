package org.baywright.model.takeoff;

/** Rounding up to what is sold. */
final class Packs {
    private Packs() {}

    /** The fewest packs that hold an amount. */
    static int holding(double amount, double pack) {
        return (int) Math.ceil(amount / pack - 1e-9);
    }

    /** The least number with spares that comes in whole packs. */
    static int count(int net, double spare, int pack) {
        return net == 0 ? 0 : pack * holding(net * (1 + spare), pack);
    }
}
