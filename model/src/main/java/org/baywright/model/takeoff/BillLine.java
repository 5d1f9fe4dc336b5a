package org.baywright.model.takeoff;

/**
 * One line of a bill: net + allowance = order, in one unit.
 *
 * @param group where it stands in the bill
 * @param item what it is
 * @param quantity how many to order
 * @param unit what net, allowance and order are counted in
 * @param net what the model holds
 * @param allowance saw cuts, off-cuts and spares
 * @param massKg of the order
 */
public record BillLine(
        BillGroup group, BillItem item, int quantity, Unit unit, double net, double allowance, double massKg) {
    /** What amounts are counted in. */
    public enum Unit {
        EACH("no."),
        METRES("m");

        private final String symbol;

        Unit(String symbol) {
            this.symbol = symbol;
        }

        /** As printed. */
        public String symbol() {
            return symbol;
        }
    }

    /** What to order. */
    public double order() {
        return net + allowance;
    }
}
