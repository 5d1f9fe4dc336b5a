package org.baywright.model.cutting;

import java.util.Arrays;
import java.util.List;
import java.util.Set;

/**
 * Column generation: the linear program over all patterns, of which only those worth having are ever made. Its bound is
 * recomputed in whole numbers from rounded prices, so that no rounding of the simplex can make it too high. Prices are
 * pulled towards those of the best bound so far, since the simplex's own swing wildly at first.
 *
 * @source Gilmore & Gomory (1961, 1963); whole-number prices: Held, Cook & Sewell (2012), Mathematical Programming
 *     Computation 4, 363–381; pulled prices: Wentges (1997), International Transactions in Operational Research 4,
 *     151–162
 */
final class Relaxation {
    // How many states the pricing keeps at first, and how many patterns it hands over.
    private static final int NARROW = 1000;
    private static final int MOST_FOUND = 20;
    // How far prices are pulled towards the centre.
    private static final double PULL = 0.8;

    // Rounds without a twentieth of the gap closed before the program is left as it is.
    private static final int PATIENCE = 60;
    private static final double MOST_SLACK_LOST = 0.1;

    private final Order order;
    private final int[] demand;
    private final int[] left;
    private final Deadline deadline;
    private final Master master;
    private final double scale;
    private Prices centre;
    private final long budget;
    private double bound = Double.NEGATIVE_INFINITY;
    // Kept, since the program goes on to be asked for less.
    private List<Use> uses = List.of();

    private Relaxation(
            Order order, int[] demand, int[] left, long budget, Prices centre, Master master, Deadline deadline) {
        this.order = order;
        this.budget = budget;
        this.demand = demand;
        this.left = left;
        this.centre = centre;
        this.deadline = deadline;
        scale = centre.scale();
        this.master = master;
        raiseBound(centre);
    }

    /** The program of a whole order, some patterns given to start from. */
    static Relaxation of(Order order, Set<Pattern> start, Deadline deadline) {
        long pieces = Arrays.stream(order.demand()).asLongStream().sum();
        double scale = 0x1p60 / (Master.STAND_IN * (pieces + 1));
        Prices prices = Prices.byLength(order, scale);
        Master master = Master.forPricing(order, order.demand(), order.limit(), deadline);
        Relaxation whole =
                new Relaxation(order, order.demand(), order.limit(), Long.MAX_VALUE, prices, master, deadline);
        start.forEach(whole.master::add);
        return whole;
    }

    /**
     * The program of what is left after some bars are cut and may still be spent. It is the same program asked for less,
     * so it starts from where that was left.
     */
    Relaxation rest(int[] demandLeft, int[] stockLeft, long budgetLeft) {
        Relaxation rest = new Relaxation(order, demandLeft, stockLeft, budgetLeft, centre, master, deadline);
        uses.stream()
                .map(Use::pattern)
                .filter(p -> p.timesWithin(demandLeft) > 0 && rest.affords(p))
                .forEach(master::add);
        return rest;
    }

    /**
     * Whether a plan within the budget can hold a bar of a pattern: at sound prices no bar falls short of what it must
     * earn by more than the budget is over the bound.
     */
    boolean affords(Pattern pattern) {
        double gap = (budget - bound + 1e-6) / order.dearest();
        return centre.worth(pattern) >= centre.bar()[pattern.stock] - gap * scale;
    }

    /** The most a plan may cost. */
    long budget() {
        return budget;
    }

    /** A proven lower bound, in cost steps of the order. */
    double bound() {
        return bound;
    }

    /** The prices that gave the bound. */
    Prices prices() {
        return centre;
    }

    /** The bars of the program's answer, exchanges carried out; none before it is solved. */
    List<Use> uses() {
        return uses;
    }

    /**
     * Adds patterns until none helps, until the bound passes the budget, until more patterns cannot raise the rounded
     * bound, or until little is gained.
     *
     * @return whether a plan within the budget may exist
     */
    boolean solve() {
        Pricer pricer = new Pricer(order, deadline);
        int width = NARROW;
        int missed = 0;
        int rounds = 0;
        double gap = Double.POSITIVE_INFINITY;
        master.ask(demand, left, p -> p.timesWithin(demand) > 0 && affords(p));
        while (!deadline.passed() && !isSettled() && ++rounds <= PATIENCE) {
            double pull = Math.max(0, 1 - (1 - PULL) * (1 + missed));
            Prices now = Prices.of(master, order, scale).towards(centre, pull);
            Pricer.Found found = pricer.search(now.item(), demand, now.thresholds(left), width, MOST_FOUND);
            raiseBound(now.sound(order, found.most()));
            if (addHelps(found.patterns())) {
                missed = 0;
                master.optimise();
            } else if (pull > 0) {
                missed++;
            } else if (!found.complete()) {
                width *= 8;
            } else {
                break;
            }
            if (master.cost() - bound < 0.95 * gap) {
                gap = master.cost() - bound;
                rounds = 0;
            }
        }
        uses = Use.exchanged(order, demand, master.uses());
        return Math.ceil(bound) <= budget;
    }

    private boolean addHelps(List<Pattern> patterns) {
        boolean helps = false;
        for (Pattern p : patterns) {
            helps |= affords(p) && master.isWanted(p) && master.add(p);
        }
        return helps;
    }

    /** Takes the bound that sound prices give if it is better, and the prices with it. */
    private void raiseBound(Prices sound) {
        double exact = sound.bound(order, demand, left);
        // Far more than the rounding of the few sums behind it.
        double safe = exact - 1e-12 * Math.abs(exact) - 1e-9;
        if (safe > bound) {
            bound = safe;
            centre = sound;
        }
    }

    /**
     * Whether the bound passes the budget, or rounded up says all it ever will. Below a budget the answer must also leave
     * most of the slack there is, or rounding it would use up more than there is.
     */
    private boolean isSettled() {
        double cost = master.cost() - 1e-4;
        boolean close = budget == Long.MAX_VALUE || cost - bound <= MOST_SLACK_LOST * (budget - bound);
        return Math.ceil(bound) > budget || !master.isPretence() && close && Math.ceil(bound) >= Math.ceil(cost);
    }
}
