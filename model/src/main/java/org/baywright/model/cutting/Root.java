package org.baywright.model.cutting;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The linear program's answer for a whole order, from which patterns can be ruled out. */
final class Root {
    private static final int FEW_NODES = 300;
    private static final long MOST_NODES = 20_000_000;
    private static final long MOST_NODES_FOR_FEW = 1_000_000;
    // How much of the gap is tried; the first share that leaves few patterns counts.
    private static final double[] SHARES = {1, 0.5, 0.25, 0.125};

    private final Order order;
    private final int mostPatterns;
    private final Prices prices;
    private final double bound;
    private final double perCost;

    Root(Order order, Relaxation relaxation, int mostPatterns) {
        this.order = order;
        this.mostPatterns = mostPatterns;
        prices = relaxation.prices();
        perCost = prices.scale() / order.dearest();
        bound = relaxation.bound();
    }

    /**
     * Looks for a plan at the bound among the patterns that fall least short of their cost: few enough that a short search
     * of their tree often finds what rounding does not, or shows that there is none; then the bound rises.
     *
     * @source the integer program over few columns as a heuristic: Sadykov et al. (2019), INFORMS Journal on Computing
     *     31(2), 251–267
     */
    void tryFew(Incumbent incumbent, Deadline until) {
        boolean goesOn = true;
        while (goesOn && !incumbent.isProven()) {
            Incumbent atBound = new Incumbent(incumbent.bound() + 1);
            goesOn = isNoneAt(atBound, until);
            atBound.best().ifPresent(incumbent::offer);
            if (goesOn) {
                incumbent.raiseBound(atBound.budget() + 1);
            }
        }
    }

    /** Whether it is sure that there is no plan at the bound. */
    private boolean isNoneAt(Incumbent atBound, Deadline until) {
        for (double share : SHARES) {
            Optional<List<Pattern>> few = within(atBound.budget(), share, MOST_NODES_FOR_FEW, until);
            if (few.isPresent()) {
                return new Tree(order, few.get(), atBound, until).search(FEW_NODES) && share == 1;
            }
        }
        return false;
    }

    /** Whether nothing better than the incumbent is left, once what was found is taken in. */
    boolean isClosed(Incumbent incumbent, long nodes, Deadline until) {
        return within(incumbent.budget(), 1, MOST_NODES, until)
                .map(patterns -> new Tree(order, patterns, incumbent, until).search(nodes))
                .orElse(false);
    }

    /** The patterns that fall short of their cost by no more than a share of what a budget is over the bound. */
    private Optional<List<Pattern>> within(long budget, double share, long nodes, Deadline until) {
        double gap = share * (budget - bound + 1e-6) * perCost;
        double[] floor = Arrays.stream(prices.bar()).mapToDouble(b -> b - gap).toArray();
        return Enumeration.of(order, prices.item(), floor, mostPatterns, nodes, until);
    }
}
