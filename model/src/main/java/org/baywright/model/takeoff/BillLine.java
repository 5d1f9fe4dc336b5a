package org.baywright.model.takeoff;

/**
 * One line of a bill: net + allowance = order, in one unit.
 *
 * @param group where it stands in the bill
 * @param item what it is
 * @param quantity how many to order
 * @param unit what net, allowance and order are counted in
 * @param net what the model holds
 * @param allowance saw cuts, off-cuts, laps, spares and rounding up to what is sold
 * @param massKg of the order; zero when it is not weighed
 */
public record BillLine(
        BillGroup group, BillItem item, int quantity, Unit unit, double net, double allowance, double massKg) {
    /** What amounts are counted in. */
    public enum Unit {
        EACH("no.", 0),
        METRES("m", 2),
        SQUARE_METRES("m2", 1),
        CUBIC_METRES("m3", 2),
        KILOGRAMS("kg", 1),
        LITRES("L", 1);

        private final String symbol;
        private final int decimals;

        Unit(String symbol, int decimals) {
            this.symbol = symbol;
            this.decimals = decimals;
        }

        /** As printed, and as a price list writes it. */
        public String symbol() {
            return symbol;
        }

        /** How many are printed. */
        public int decimals() {
            return decimals;
        }
    }

    /** So many pieces, with spares. */
    static BillLine counted(BillGroup group, BillItem item, int net, int order) {
        return new BillLine(group, item, order, Unit.EACH, net, order - net, 0);
    }

    /** An amount that is sold in so many packs, lengths or rolls. */
    static BillLine measured(BillGroup group, BillItem item, int packs, Unit unit, double net, double order) {
        return new BillLine(group, item, packs, unit, net, order - net, 0);
    }

    /** What to order. */
    public double order() {
        return net + allowance;
    }
}
