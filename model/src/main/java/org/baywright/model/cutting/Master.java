package org.baywright.model.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.function.Predicate;

/**
 * The linear program over the patterns known so far: cover each item's demand at least cost, without overdrawing
 * limited stock. A revised simplex with a dense inverse: primal steps after patterns join or leave, dual steps after the
 * demand changes, so each program of a search starts from the last one's basis.
 *
 * <p>Rows: one for each item (≥), then one for each limited stock (≤). Columns: one slack for each row, one stand-in for
 * each item at a cost no plan would pay, then the patterns. Costs are in units of the dearest bar.
 *
 * @source Gilmore & Gomory (1961), Operations Research 9(6), 849–859; revised simplex: Chvátal, Linear Programming (1983)
 */
final class Master {
    /** The cost of a piece from nowhere. */
    static final double STAND_IN = 1000;

    private static final double TINY = 1e-9;

    private final Order order;
    private final Deadline deadline;
    private final int items;
    private final int rows;
    private final int[] limitRow;
    private final int[] leastRow;
    private final double dearest;
    private final List<Column> columns = new ArrayList<>();
    private final Set<Pattern> known = new HashSet<>();
    private final double[][] inverse;
    private final int[] basis;
    private final double[] level;
    private final double[] price;
    private final double[] nudge;
    private final double[] plain;
    private final double[] right;
    private int steps;

    private static final class Column {
        final Pattern pattern;
        final double cost;
        final int[] row;
        final double[] entry;
        boolean barred;
        boolean basic;
        double weight = 1;

        Column(Pattern pattern, double cost, int[] row, double[] entry) {
            this.pattern = pattern;
            this.cost = cost;
            this.row = row;
            this.entry = entry;
        }

        double cost() {
            return barred ? cost + STAND_IN : cost;
        }

        double dot(double[] vector) {
            double sum = 0;
            for (int k = 0; k < row.length; k++) {
                sum += entry[k] * vector[row[k]];
            }
            return sum;
        }
    }

    /**
     * A program to generate columns for. A piece may take the place of a longer one, which keeps prices in the order of
     * length from the start and changes no optimum.
     *
     * @source Valério de Carvalho (2005), INFORMS Journal on Computing 17(2), 175–182
     */
    static Master forPricing(Order order, Deadline deadline) {
        Master master = new Master(order, false, deadline);
        master.addExchanges();
        return master;
    }

    /** A program to branch on: the bars of each stock can be held between a least and a most. */
    static Master forBranching(Order order, Deadline deadline) {
        return new Master(order, true, deadline);
    }

    private Master(Order order, boolean counted, Deadline deadline) {
        this.order = order;
        this.deadline = deadline;
        items = order.count();
        limitRow = new int[order.stocks()];
        int row = items;
        for (int s = 0; s < limitRow.length; s++) {
            limitRow[s] = counted || order.isLimited(s) ? row++ : -1;
        }
        leastRow = new int[order.stocks()];
        for (int s = 0; s < leastRow.length; s++) {
            leastRow[s] = counted ? row++ : -1;
        }
        rows = row;
        dearest = Math.max(1, Arrays.stream(order.cost()).max().orElse(1));
        inverse = new double[rows][rows];
        basis = new int[rows];
        level = new double[rows];
        price = new double[rows];
        nudge = new double[rows];
        plain = new double[rows];
        right = new double[rows];
        // A fixed seed: the nudges only break ties, and break them the same way each time.
        Random random = new Random(20240229);
        for (int r = 0; r < rows; r++) {
            nudge[r] = 1e-6 * (1 + random.nextDouble());
        }
        addSlacksAndStandIns();
    }

    private void addExchanges() {
        int[] before = new int[order.overlap().length];
        Arrays.fill(before, -1);
        for (int i = 0; i < items; i++) {
            int longer = before[order.family()[i]];
            if (longer >= 0) {
                columns.add(new Column(null, 0, new int[] {longer, i}, new double[] {-1, 1}));
            }
            before[order.family()[i]] = i;
        }
    }

    private void addSlacksAndStandIns() {
        for (int r = 0; r < rows; r++) {
            columns.add(new Column(null, 0, new int[] {r}, new double[] {isCover(r) ? -1 : 1}));
        }
        for (int i = 0; i < items; i++) {
            columns.add(new Column(null, STAND_IN, new int[] {i}, new double[] {1}));
        }
        for (int r = 0; r < rows; r++) {
            inverse[r][r] = r >= items && isCover(r) ? -1 : 1;
            basis[r] = r < items ? rows + r : r;
            columns.get(basis[r]).basic = true;
        }
        setRight(order.demand(), order.limit(), new int[order.stocks()]);
        refresh();
    }

    /** Whether a row asks for something rather than limits it. */
    private boolean isCover(int r) {
        return r < items || leastRow[0] >= 0 && r >= leastRow[0];
    }

    /** What a cost of one in this program stands for, in the cost steps of the order. */
    double dearest() {
        return dearest;
    }

    /** How many patterns are known. */
    int patterns() {
        return known.size();
    }

    boolean add(Pattern pattern) {
        if (!known.add(pattern)) {
            return false;
        }
        int n = pattern.item.length;
        int limit = limitRow[pattern.stock];
        int least = leastRow[pattern.stock];
        int[] row = Arrays.copyOf(pattern.item, n + (limit < 0 ? 0 : 1) + (least < 0 ? 0 : 1));
        double[] entry = new double[row.length];
        Arrays.fill(entry, 1);
        for (int k = 0; k < n; k++) {
            entry[k] = pattern.count[k];
        }
        if (limit >= 0) {
            row[n] = limit;
        }
        if (least >= 0) {
            row[n + 1] = least;
        }
        columns.add(new Column(pattern, order.cost()[pattern.stock] / dearest, row, entry));
        return true;
    }

    /** Whether a bar of a pattern is worth more than it costs at the present prices. */
    boolean isWanted(Pattern pattern) {
        double worth = limitPrice(pattern.stock);
        for (int k = 0; k < pattern.item.length; k++) {
            worth += pattern.count[k] * price[pattern.item[k]];
        }
        return worth > order.cost()[pattern.stock] / dearest + 1e-8;
    }

    /** Bars all patterns but those allowed; barred ones in use are driven out by {@link #optimise}. */
    void setAllowed(Predicate<Pattern> allowed) {
        for (Column c : columns) {
            c.barred = c.pattern != null && !allowed.test(c.pattern);
        }
        findPrices();
    }

    /** Lets all known patterns be used again. */
    void allowAll() {
        setAllowed(p -> true);
    }

    /** Changes what is to be covered and what may be drawn; call {@link #repair} next. */
    void setRight(int[] demand, int[] left, int[] least) {
        for (int i = 0; i < items; i++) {
            plain[i] = Math.max(0, demand[i]);
            right[i] = demand[i] > 0 ? demand[i] + nudge[i] : -nudge[i];
        }
        for (int s = 0; s < limitRow.length; s++) {
            if (limitRow[s] >= 0) {
                plain[limitRow[s]] = left[s];
                right[limitRow[s]] = left[s] + nudge[limitRow[s]];
            }
            if (leastRow[s] >= 0) {
                plain[leastRow[s]] = least[s];
                right[leastRow[s]] = least[s] - nudge[leastRow[s]];
            }
        }
        findLevels();
    }

    /** The price of each row in the present basis: items at least 0, limited stock at most 0. */
    double[] prices() {
        return price.clone();
    }

    double limitPrice(int stock) {
        return limitRow[stock] < 0 ? 0 : Math.min(0, price[limitRow[stock]]);
    }

    /** The cost of the present basis in cost steps of the order, stand-ins included, nudges left out. */
    double cost() {
        double cost = 0;
        for (int r = 0; r < rows; r++) {
            cost += price[r] * plain[r];
        }
        return cost * dearest;
    }

    /**
     * A lower bound on the cost of covering with the allowed patterns, whatever the simplex has rounded: prices cut
     * down until no pattern is worth more than it costs, less what free bars are still worth.
     *
     * @source Farley (1990), Operations Research 38(5), 922–923
     */
    double safeBound() {
        double[] sound = soundPrices();
        double shrink = 1;
        double[] excess = new double[limitRow.length];
        for (Column c : columns) {
            if (c.pattern != null && !c.barred) {
                double worth = c.dot(sound);
                if (c.cost > 0) {
                    shrink = Math.max(shrink, worth / c.cost);
                } else {
                    excess[c.pattern.stock] = Math.max(excess[c.pattern.stock], worth);
                }
            }
        }
        double bound = 0;
        for (int r = 0; r < rows; r++) {
            bound += sound[r] * Math.max(0, plain[r]);
        }
        for (int s = 0; s < excess.length; s++) {
            bound -= excess[s] > 0 ? excess[s] * plain[limitRow[s]] : 0;
        }
        return bound / shrink * dearest - 1e-9 * Math.abs(bound) - 1e-9;
    }

    private double[] soundPrices() {
        double[] sound = new double[rows];
        for (int r = 0; r < rows; r++) {
            sound[r] = isCover(r) ? Math.max(0, price[r]) : Math.min(0, price[r]);
        }
        return sound;
    }

    /** True while pieces still come from nowhere or barred patterns are in use. */
    boolean isPretence() {
        for (int r = 0; r < rows; r++) {
            if (columns.get(basis[r]).cost() >= STAND_IN && level[r] > 1e-4) {
                return true;
            }
        }
        return false;
    }

    /** The patterns in use, and how many bars of each, a fraction as a rule; exchanges are left out. */
    Map<Pattern, Double> uses() {
        Map<Pattern, Double> uses = new LinkedHashMap<>();
        for (int r = 0; r < rows; r++) {
            Column c = columns.get(basis[r]);
            if (c.pattern != null && !c.barred && level[r] > 1e-4) {
                uses.put(c.pattern, level[r]);
            }
        }
        return uses;
    }

    /** Primal steps until no known pattern helps. */
    void optimise() {
        while (!deadline.passed()) {
            int entering = cheapestColumn();
            if (entering < 0 || !enter(entering)) {
                return;
            }
        }
    }

    /** The column that promises most for its length, by reference weights: Forrest & Goldfarb (1992). */
    private int cheapestColumn() {
        int best = -1;
        double most = 0;
        for (int j = 0; j < columns.size(); j++) {
            Column c = columns.get(j);
            if (!c.basic && !c.barred) {
                double reduced = c.cost - c.dot(price);
                if (reduced < -1e-8 && reduced * reduced > most * c.weight) {
                    most = reduced * reduced / c.weight;
                    best = j;
                }
            }
        }
        return best;
    }

    private void reweigh(int r, int j, double pivot) {
        double weight = columns.get(j).weight;
        for (Column c : columns) {
            if (!c.basic && !c.barred) {
                double ratio = c.dot(inverse[r]) / pivot;
                c.weight = Math.max(c.weight, ratio * ratio * weight);
            }
        }
        columns.get(basis[r]).weight = Math.max(1, weight / (pivot * pivot));
    }

    private boolean enter(int j) {
        double[] direction = direction(columns.get(j));
        int leaving = -1;
        double step = Double.POSITIVE_INFINITY;
        for (int r = 0; r < rows; r++) {
            if (direction[r] > TINY) {
                double ratio = Math.max(0, level[r]) / direction[r];
                if (ratio < step - 1e-12 || ratio < step + 1e-12 && direction[r] > direction[leaving]) {
                    step = ratio;
                    leaving = r;
                }
            }
        }
        if (leaving >= 0) {
            reweigh(leaving, j, direction[leaving]);
            pivot(leaving, j, direction);
        }
        return leaving >= 0;
    }

    /** Dual steps until no level is negative; true unless no cover exists. */
    boolean repair() {
        while (!deadline.passed()) {
            int leaving = -1;
            double lowest = -1e-8;
            for (int r = 0; r < rows; r++) {
                if (level[r] < lowest) {
                    lowest = level[r];
                    leaving = r;
                }
            }
            if (leaving < 0) {
                return true;
            }
            int entering = dualEntering(inverse[leaving]);
            if (entering < 0) {
                return false;
            }
            pivot(leaving, entering, direction(columns.get(entering)));
        }
        return false;
    }

    private int dualEntering(double[] rho) {
        int best = -1;
        double least = Double.POSITIVE_INFINITY;
        double bestAlpha = 0;
        for (int j = 0; j < columns.size(); j++) {
            Column c = columns.get(j);
            if (!c.basic && !c.barred) {
                double alpha = -c.dot(rho);
                if (alpha > 1e-7) {
                    double ratio = Math.max(0, c.cost - c.dot(price)) / alpha;
                    if (ratio < least - 1e-12 || ratio < least + 1e-12 && alpha > bestAlpha) {
                        least = ratio;
                        bestAlpha = alpha;
                        best = j;
                    }
                }
            }
        }
        return best;
    }

    private double[] direction(Column c) {
        double[] direction = new double[rows];
        for (int r = 0; r < rows; r++) {
            direction[r] = c.dot(inverse[r]);
        }
        return direction;
    }

    private void pivot(int r, int j, double[] direction) {
        Column in = columns.get(j);
        double reduced = in.cost() - in.dot(price);
        double[] pivotRow = inverse[r];
        double scale = 1 / direction[r];
        for (int k = 0; k < rows; k++) {
            pivotRow[k] *= scale;
            price[k] += reduced * pivotRow[k];
        }
        level[r] *= scale;
        for (int q = 0; q < rows; q++) {
            double factor = direction[q];
            if (q != r && factor != 0) {
                subtract(inverse[q], pivotRow, factor);
                level[q] -= factor * level[r];
            }
        }
        columns.get(basis[r]).basic = false;
        in.basic = true;
        basis[r] = j;
        if (++steps % 100 == 0) {
            refresh();
        }
    }

    private static void subtract(double[] from, double[] row, double factor) {
        for (int k = 0; k < row.length; k++) {
            from[k] -= factor * row[k];
        }
    }

    /** Recomputes levels and prices, and the inverse when it has drifted. */
    private void refresh() {
        if (drift() > 1e-7) {
            invert();
        }
        findLevels();
        findPrices();
    }

    /** How far the basis times its levels misses the right side. */
    private double drift() {
        findLevels();
        double[] miss = right.clone();
        for (int r = 0; r < rows; r++) {
            Column c = columns.get(basis[r]);
            for (int k = 0; k < c.row.length; k++) {
                miss[c.row[k]] -= c.entry[k] * level[r];
            }
        }
        return Arrays.stream(miss).map(Math::abs).max().orElse(0);
    }

    private void findLevels() {
        for (int r = 0; r < rows; r++) {
            double sum = 0;
            for (int k = 0; k < rows; k++) {
                sum += inverse[r][k] * right[k];
            }
            level[r] = sum;
        }
    }

    private void findPrices() {
        Arrays.fill(price, 0);
        for (int r = 0; r < rows; r++) {
            double cost = columns.get(basis[r]).cost();
            if (cost != 0) {
                subtract(price, inverse[r], -cost);
            }
        }
    }

    /** The inverse afresh, by entering the basic columns one by one into a unit basis, largest pivot first. */
    private void invert() {
        int[] wanted = basis.clone();
        for (int r = 0; r < rows; r++) {
            Arrays.fill(inverse[r], 0);
            inverse[r][r] = 1;
        }
        boolean[] taken = new boolean[rows];
        for (int j : wanted) {
            double[] direction = direction(columns.get(j));
            int at = -1;
            for (int r = 0; r < rows; r++) {
                if (!taken[r] && (at < 0 || Math.abs(direction[r]) > Math.abs(direction[at]))) {
                    at = r;
                }
            }
            taken[at] = true;
            basis[at] = j;
            double scale = 1 / direction[at];
            for (int k = 0; k < rows; k++) {
                inverse[at][k] *= scale;
            }
            for (int q = 0; q < rows; q++) {
                if (q != at && direction[q] != 0) {
                    subtract(inverse[q], inverse[at], direction[q]);
                }
            }
        }
    }
}
