package org.baywright.model.cutting;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The integer program over a complete set of patterns, by branch and bound: a pattern's number of bars is set to each
 * whole number in turn, nearest to the linear program's first, until the bound passes the budget on both sides.
 *
 * @source Land & Doig (1960), Econometrica 28(3), 497–520
 */
final class Tree {
    private final Order order;
    private final Incumbent incumbent;
    private final Deadline deadline;
    private final Master master;
    private final Set<Pattern> set = new HashSet<>();
    private long nodes;

    Tree(Order order, List<Pattern> patterns, Incumbent incumbent, Deadline deadline) {
        this.order = order;
        this.incumbent = incumbent;
        this.deadline = deadline;
        master = new Master(order, false, deadline);
        patterns.forEach(master::add);
    }

    /** Searches up to so many nodes; true when nothing better than the incumbent remains. */
    boolean search(long mostNodes) {
        nodes = mostNodes;
        return search(new Draft(order), order.demand(), order.limit()).isPresent();
    }

    /** The bound of a node, or empty when the search was broken off. */
    private Optional<Boolean> search(Draft fixed, int[] demand, int[] left) {
        if (--nodes < 0 || deadline.passed()) {
            return Optional.empty();
        }
        if (!isHopeful(fixed, demand, left)) {
            return Optional.of(false);
        }
        Optional<Use> use = Use.of(master.uses()).stream()
                .filter(u -> fraction(u) > 1e-3)
                .max(Comparator.comparingDouble(Tree::fraction));
        if (use.isEmpty()) {
            offer(fixed);
            return isHopeful(fixed, demand, left) ? Optional.empty() : Optional.of(true);
        }
        return branch(use.get(), fixed, demand, left);
    }

    private static double fraction(Use use) {
        return Math.abs(use.bars() - Math.rint(use.bars()));
    }

    private boolean isHopeful(Draft fixed, int[] demand, int[] left) {
        master.allowAll();
        master.optimise();
        master.setRight(demand, left);
        if (!master.repair() && !deadline.passed()) {
            return false;
        }
        master.setAllowed(p -> !set.contains(p));
        master.optimise();
        return deadline.passed() || Math.ceil(master.safeBound()) + fixed.cost() <= incumbent.budget();
    }

    private void offer(Draft fixed) {
        Draft whole = fixed.copy();
        master.uses().forEach((p, bars) -> whole.add(p, (int) Math.rint(bars)));
        boolean covers = !master.isPretence();
        for (int missing : whole.missing(order.demand())) {
            covers &= missing <= 0;
        }
        if (covers) {
            incumbent.offer(whole);
        }
    }

    private Optional<Boolean> branch(Use use, Draft fixed, int[] demand, int[] left) {
        Pattern pattern = use.pattern();
        int below = (int) use.bars();
        set.add(pattern);
        boolean up = true;
        boolean down = true;
        Optional<Boolean> result = Optional.of(true);
        for (int k = 0; result.isPresent() && (up || down); k++) {
            boolean upward = use.bars() - below >= 0.5 == (k % 2 == 0);
            int bars = upward ? below + 1 + k / 2 : below - k / 2;
            if (upward ? !up : !down) {
                continue;
            }
            if (bars < 0 || bars > left[pattern.stock]) {
                up &= !upward;
                down &= upward;
                continue;
            }
            Draft next = fixed.copy();
            next.add(pattern, bars);
            int[] rest = demand.clone();
            pattern.take(rest, bars);
            int[] remaining = left.clone();
            order.draw(remaining, pattern.stock, bars);
            result = search(next, rest, remaining);
            // The bound is convex in the number of bars: once it fails, it fails further out as well.
            if (result.isPresent() && !result.get()) {
                up &= !upward;
                down &= upward;
            }
        }
        set.remove(pattern);
        return result.isPresent() ? Optional.of(true) : result;
    }
}
