package org.baywright.model.cutting;

import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The integer program over a complete set of patterns, by branch and bound. First the number of bars of each stock is
 * made whole; then a pattern's number of bars is set to each whole number in turn, nearest to the linear program's first,
 * until the bound passes the budget on both sides.
 *
 * @source Land & Doig (1960), Econometrica 28(3), 497–520
 */
final class Tree {
    private static final double WHOLE = 1e-3;

    private final Order order;
    private final Incumbent incumbent;
    private final Deadline deadline;
    private final Master master;
    private final Set<Pattern> set = new HashSet<>();
    private final long budget;
    private long nodes;

    Tree(Order order, List<Pattern> patterns, Incumbent incumbent, Deadline deadline) {
        this.order = order;
        this.incumbent = incumbent;
        this.deadline = deadline;
        budget = incumbent.budget();
        master = Master.forBranching(order, deadline);
        patterns.forEach(master::await);
    }

    /** Whether a part of the tree holds anything better, as far as it was searched. */
    private enum Outcome {
        NOTHING,
        SEARCHED,
        BROKEN_OFF
    }

    /** What is fixed so far and what is left to decide, the bars of each stock between a least and a most. */
    private record Node(Draft fixed, int[] demand, int[] most, int[] least) {
        Node with(Pattern pattern, int bars) {
            Draft next = fixed.copy();
            next.add(pattern, bars);
            int[] rest = demand.clone();
            pattern.take(rest, bars);
            int s = pattern.stock;
            return new Node(next, rest, with(most, s, most[s] - bars), with(least, s, Math.max(0, least[s] - bars)));
        }

        Node withMost(int s, int bars) {
            return new Node(fixed, demand, with(most, s, bars), least);
        }

        Node withLeast(int s, int bars) {
            return new Node(fixed, demand, most, with(least, s, bars));
        }

        private static int[] with(int[] numbers, int at, int number) {
            int[] changed = numbers.clone();
            changed[at] = number;
            return changed;
        }
    }

    /**
     * Searches up to so many nodes, or until it has found something better, as fewer patterns can better that.
     *
     * @return whether nothing better than the incumbent remains
     */
    boolean search(long mostNodes) {
        nodes = mostNodes;
        int pieces = Arrays.stream(order.demand()).sum();
        int[] most = Arrays.stream(order.limit()).map(n -> Math.min(n, pieces)).toArray();
        Node root = new Node(new Draft(order), order.demand(), most, new int[order.stocks()]);
        return search(root) != Outcome.BROKEN_OFF;
    }

    private Outcome search(Node node) {
        if (--nodes < 0 || incumbent.budget() < budget || deadline.passed()) {
            return Outcome.BROKEN_OFF;
        }
        if (!isHopeful(node)) {
            return Outcome.NOTHING;
        }
        List<Use> uses = Use.of(master.uses());
        double[] bars = new double[order.stocks()];
        uses.forEach(u -> bars[u.pattern().stock] += u.bars());
        for (int s = 0; s < bars.length; s++) {
            if (fraction(bars[s]) > WHOLE) {
                return branch(node, s, (int) bars[s]);
            }
        }
        Optional<Use> use =
                uses.stream().filter(u -> fraction(u.bars()) > WHOLE).max(Comparator.comparingDouble(Use::bars));
        return use.isPresent() ? branch(node, use.get()) : offer(node, uses);
    }

    private static double fraction(double bars) {
        return Math.abs(bars - Math.rint(bars));
    }

    private boolean isHopeful(Node node) {
        master.allowAll();
        master.optimise();
        master.setRight(node.demand, node.most, node.least);
        if (!master.repair() && !deadline.passed()) {
            return false;
        }
        master.setAllowed(p -> !set.contains(p));
        master.optimise();
        return deadline.passed() || Math.ceil(master.safeBound()) + node.fixed.cost() <= incumbent.budget();
    }

    private Outcome offer(Node node, List<Use> uses) {
        Draft whole = node.fixed.copy();
        uses.forEach(u -> whole.add(u.pattern(), (int) Math.rint(u.bars())));
        if (!master.isPretence() && Arrays.stream(whole.missing(order.demand())).allMatch(d -> d <= 0)) {
            incumbent.offer(whole);
        }
        return isHopeful(node) ? Outcome.BROKEN_OFF : Outcome.SEARCHED;
    }

    private Outcome branch(Node node, int stock, int bars) {
        Outcome down = search(node.withMost(stock, bars));
        if (down == Outcome.BROKEN_OFF) {
            return down;
        }
        Outcome up = search(node.withLeast(stock, bars + 1));
        return up == Outcome.BROKEN_OFF ? up : Outcome.SEARCHED;
    }

    /** Nearest number first; the bound is convex in the number, so once it fails it fails further out as well. */
    private Outcome branch(Node node, Use use) {
        int below = (int) use.bars();
        int most = node.most[use.pattern().stock];
        int down = below;
        int up = below + 1;
        set.add(use.pattern());
        Outcome outcome = Outcome.SEARCHED;
        while (outcome != Outcome.BROKEN_OFF && (down >= 0 || up <= most)) {
            boolean upward = down < 0 || up <= most && up - use.bars() < use.bars() - down;
            outcome = search(node.with(use.pattern(), upward ? up : down));
            boolean fails = outcome == Outcome.NOTHING;
            if (upward) {
                up = fails ? most + 1 : up + 1;
            } else {
                down = fails ? -1 : down - 1;
            }
        }
        set.remove(use.pattern());
        return outcome == Outcome.BROKEN_OFF ? outcome : Outcome.SEARCHED;
    }
}
