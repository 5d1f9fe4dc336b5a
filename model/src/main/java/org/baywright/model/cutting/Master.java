package org.baywright.model.cutting;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * The linear program over the patterns known so far: cover each item's demand at least cost, without overdrawing
 * limited stock.
 *
 * <p>Rows: one for each item wanted (≥), one for each limited stock (≤), and to branch on, one for the least bars of each
 * stock (≥). Columns: one slack for each row, one stand-in for each item at a cost no plan would pay, exchanges of a
 * piece for a longer one, then the patterns. Costs are in units of the dearest bar.
 *
 * @source Gilmore & Gomory (1961), Operations Research 9(6), 849–859
 */
final class Master {
    /** The cost of a piece from nowhere. */
    static final double STAND_IN = Simplex.BARRED;

    /** The same while patterns are generated and each piece can have a bar of its own, which costs at most one. */
    private static final double OWN_BAR = 2;

    private static final int STEPS_PER_PATTERN = 40;

    private final Order order;
    private final Rows rows;
    private final double standIn;
    private final double dearest;
    private final Deadline deadline;
    private final Simplex simplex;
    // The patterns known so far, and the column of the first of them; the others follow it.
    private final List<Pattern> patterns = new ArrayList<>();
    private final Set<Pattern> known = new HashSet<>();
    private final int firstPattern;
    private final Pool waiting = new Pool();

    /**
     * A program to generate columns for. A piece may take the place of a longer one, which keeps prices in the order of
     * length from the start and changes no optimum.
     *
     * @source Valério de Carvalho (2005), INFORMS Journal on Computing 17(2), 175–182
     */
    static Master forPricing(Order order, int[] demand, int[] left, Deadline deadline) {
        Rows rows = new Rows(order, demand, false);
        Master master = new Master(order, rows, order.isBuyable() ? OWN_BAR : STAND_IN, deadline);
        master.setRight(demand, left, new int[left.length]);
        return master;
    }

    /** A program to branch on: the bars of each stock can be held between a least and a most. */
    static Master forBranching(Order order, Deadline deadline) {
        return new Master(order, new Rows(order, order.demand(), true), STAND_IN, deadline);
    }

    private Master(Order order, Rows rows, double standIn, Deadline deadline) {
        this.order = order;
        this.rows = rows;
        this.standIn = standIn;
        this.deadline = deadline;
        dearest = order.dearest();
        simplex = new Simplex(rows.count(), deadline);
        int[] start = new int[rows.count()];
        for (int r = 0; r < rows.count(); r++) {
            start[r] = unit(0, r, rows.isCover(r) ? -1 : 1);
        }
        for (int r = 0; r < rows.items(); r++) {
            start[r] = unit(standIn, r, 1);
        }
        if (!rows.areCounted()) {
            rows.exchanges().forEach(e -> simplex.add(new Column(0, e, new double[] {-1, 1})));
        }
        firstPattern = simplex.columns();
        simplex.start(start);
    }

    private int unit(double cost, int row, double entry) {
        return simplex.add(new Column(cost, new int[] {row}, new double[] {entry}));
    }

    /** The patterns known so far, in the order they came. */
    List<Pattern> patterns() {
        return Collections.unmodifiableList(patterns);
    }

    boolean add(Pattern pattern) {
        if (!known.add(pattern)) {
            return false;
        }
        patterns.add(pattern);
        simplex.add(column(pattern));
        return true;
    }

    /** Lets a pattern be used once it is worth more than it costs. */
    void await(Pattern pattern) {
        waiting.add(pattern, column(pattern));
    }

    private Column column(Pattern pattern) {
        return rows.column(pattern, order.cost()[pattern.stock] / dearest);
    }

    /** Whether a bar of a pattern is worth more than it costs at the present prices. */
    boolean isWanted(Pattern pattern) {
        double worth = limitPrice(pattern.stock);
        for (int k = 0; k < pattern.item.length; k++) {
            worth += pattern.count[k] * simplex.price(rows.ofItem(pattern.item[k]));
        }
        return worth > order.cost()[pattern.stock] / dearest + 1e-8;
    }

    /** Bars all patterns but those allowed; barred ones in use are driven out by {@link #optimise}. */
    void setAllowed(Predicate<Pattern> allowed) {
        deadline.count((long) STEPS_PER_PATTERN * patterns.size());
        for (int k = 0; k < patterns.size(); k++) {
            simplex.column(firstPattern + k).barred = !allowed.test(patterns.get(k));
        }
        simplex.findPrices();
    }

    /** Lets all known patterns be used again. */
    void allowAll() {
        setAllowed(p -> true);
    }

    /** Changes what is to be covered and what may be drawn; call {@link #repair} next. */
    void setRight(int[] demand, int[] left, int[] least) {
        rows.setRight(demand, left, least);
        simplex.setRight(rows.nudged());
    }

    /** Solves the program for a demand, some patterns allowed, from where the last one asked for was left. */
    void ask(int[] demand, int[] left, Predicate<Pattern> allowed) {
        setRight(demand, left, new int[left.length]);
        repair();
        setAllowed(allowed);
        optimise();
    }

    /** Primal steps until no pattern helps. */
    void optimise() {
        List<Pattern> joining;
        do {
            simplex.optimise();
            deadline.count((long) STEPS_PER_PATTERN * waiting.count());
            joining = simplex.isBrokenOff() ? List.of() : waiting.takeWanted(simplex.prices());
            joining.forEach(this::add);
        } while (!joining.isEmpty());
    }

    /** Dual steps until no level is negative; true unless no cover exists. */
    boolean repair() {
        boolean done = simplex.repair();
        if (!done && waiting.count() > 0 && !simplex.isBrokenOff()) {
            waiting.takeAll().forEach(this::add);
            done = simplex.repair();
        }
        return done;
    }

    /** What one more piece of each item costs in the present basis; nothing where none is wanted. */
    double[] prices() {
        double[] prices = new double[order.count()];
        for (int i = 0; i < prices.length; i++) {
            prices[i] = rows.ofItem(i) < 0 ? 0 : Math.max(0, simplex.price(rows.ofItem(i)));
        }
        return prices;
    }

    /** What one more bar of a limited stock costs: nothing or less. */
    double limitPrice(int stock) {
        return rows.ofLimit(stock) < 0 ? 0 : Math.min(0, simplex.price(rows.ofLimit(stock)));
    }

    /** The cost of the present basis in cost steps of the order, stand-ins included, nudges left out. */
    double cost() {
        double cost = 0;
        for (int r = 0; r < rows.count(); r++) {
            cost += simplex.price(r) * rows.plain(r);
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
        deadline.count((long) STEPS_PER_PATTERN * (patterns.size() + waiting.count()));
        double shrink = 1;
        double[] excess = new double[order.stocks()];
        for (int k = 0; k < patterns.size() + waiting.count(); k++) {
            int w = k - patterns.size();
            Column c = w < 0 ? simplex.column(firstPattern + k) : waiting.column(w);
            if (!c.barred) {
                double worth = c.dot(sound);
                if (c.cost > 0) {
                    shrink = Math.max(shrink, worth / c.cost);
                } else {
                    int s = (w < 0 ? patterns.get(k) : waiting.pattern(w)).stock;
                    excess[s] = Math.max(excess[s], worth);
                }
            }
        }
        double bound = 0;
        for (int r = 0; r < sound.length; r++) {
            bound += sound[r] * Math.max(0, rows.plain(r));
        }
        for (int s = 0; s < excess.length; s++) {
            bound -= excess[s] > 0 ? excess[s] * rows.plain(rows.ofLimit(s)) : 0;
        }
        return bound / shrink * dearest - 1e-9 * Math.abs(bound) - 1e-9;
    }

    private double[] soundPrices() {
        double[] sound = new double[rows.count()];
        for (int r = 0; r < sound.length; r++) {
            sound[r] = rows.isCover(r) ? Math.max(0, simplex.price(r)) : Math.min(0, simplex.price(r));
        }
        return sound;
    }

    /** True while pieces still come from nowhere or barred patterns are in use. */
    boolean isPretence() {
        return IntStream.range(0, rows.count())
                .anyMatch(r -> simplex.level(r) > 1e-4
                        && simplex.column(simplex.basic(r)).cost() >= standIn);
    }

    /** The patterns in use, and how many bars of each, a fraction as a rule; exchanges are left out. */
    Map<Pattern, Double> uses() {
        Map<Pattern, Double> uses = new LinkedHashMap<>();
        for (int r = 0; r < rows.count(); r++) {
            int j = simplex.basic(r);
            if (j >= firstPattern && !simplex.column(j).barred && simplex.level(r) > 1e-4) {
                uses.put(patterns.get(j - firstPattern), simplex.level(r));
            }
        }
        return uses;
    }
}
