package org.baywright.model.cutting;

/**
 * What a plan of a cost may waste. What bars waste is what their cost would buy of the stock that is cheapest by its
 * length, less their pieces.
 *
 * @param budget the cost of the plan
 * @param dearest the cost of the dearest bar
 * @param lengthPerCost the bar length that a cost step buys at best
 * @param mostInAll what the plan wastes
 */
record Waste(long budget, long dearest, double lengthPerCost, double mostInAll) {
    /** For a plan of a cost. */
    static Waste of(Order order, long budget) {
        double rate = 0;
        for (int s = 0; s < order.stocks(); s++) {
            rate = Math.max(rate, (double) order.capacity()[s] / order.cost()[s]);
        }
        long pieces = 0;
        for (int i = 0; i < order.count(); i++) {
            pieces += (long) order.size()[i] * order.demand()[i];
        }
        return new Waste(budget, order.dearest(), rate, rate * budget - pieces);
    }

    /** What bars of a cost waste that hold so much. */
    double of(long cost, long load) {
        return lengthPerCost * cost - load;
    }

    /** What bars of a cost may waste: no more than their share, as long as there are others to come. */
    double most(long cost) {
        double share = cost >= budget - dearest ? 1 : (double) cost / budget;
        // Half a unit for the rounding of the rate.
        return mostInAll * share + 0.5;
    }
}
