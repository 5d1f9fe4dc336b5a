package org.baywright.model.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Rounds the linear program down bar by bar, solving it again for what is left after each step. Where it fails, the
 * least trusted choices are tried otherwise: limited discrepancy search.
 *
 * @source residual rounding: Wäscher & Gau (1996), OR Spektrum 18, 131–144; diving with discrepancies: Sadykov et al.
 *     (2019), INFORMS Journal on Computing 31(2), 251–267
 */
final class Dive {
    private static final int FEW_PIECES = 5000;
    private static final int STEPS_PER_PIECE = 1000;
    private static final double NEARLY_WHOLE = 0.8;

    private final Order order;
    private Relaxation whole;
    private final Incumbent incumbent;
    private final Deadline deadline;

    /** Dives from the solved program of a whole order. */
    Dive(Order order, Relaxation whole, Incumbent incumbent, Deadline deadline) {
        this.order = order;
        this.whole = whole;
        this.incumbent = incumbent;
        this.deadline = deadline;
    }

    /** Searches with at most so many choices against the program's advice. */
    void run(int discrepancies) {
        Step start = new Step(new Draft(order), order.demand(), order.limit());
        if (whole.budget() != incumbent.budget()) {
            // What cannot better the present plan is left out from the start.
            whole = whole.rest(start.demand, start.left, incumbent.budget());
            whole.solve();
            incumbent.raiseBound(whole.bound());
        }
        if (!incumbent.isProven()) {
            down(start, whole, discrepancies);
        }
    }

    private void down(Step at, Relaxation relaxation, int discrepancies) {
        offerBestFit(at);
        List<Use> uses = new ArrayList<>(relaxation.uses());
        uses.removeIf(u -> !relaxation.affords(u.pattern()));
        uses.sort(Comparator.comparingDouble((Use u) -> -u.bars()));
        if (!uses.isEmpty() && uses.get(0).bars() > 1 - 1e-3) {
            Step step = at.copy();
            uses.forEach(u -> step.take(u.pattern(), (int) (u.bars() + 1e-3)));
            go(step, relaxation, uses, discrepancies);
        } else {
            branch(at, relaxation, uses, discrepancies);
        }
    }

    private void go(Step step, Relaxation from, List<Use> uses, int discrepancies) {
        if (!incumbent.isProven() && !deadline.passed()) {
            Relaxation rest = from.rest(step.demand, step.left, incumbent.budget() - step.fixed.cost());
            if (rest.solve() && !deadline.passed()) {
                down(step, rest, discrepancies);
            }
        }
    }

    private void branch(Step at, Relaxation relaxation, List<Use> uses, int discrepancies) {
        for (int k = 0; k < uses.size() && k <= discrepancies; k++) {
            Step step = at.copy();
            if (step.take(uses.get(k).pattern(), 1) > 0) {
                if (k == 0) {
                    uses.stream().skip(1).filter(u -> u.bars() > NEARLY_WHOLE).forEach(u -> step.take(u.pattern(), 1));
                }
                go(step, relaxation, uses, discrepancies - k);
            }
        }
    }

    /** The bars fixed so far, the rest by best fit. */
    private void offerBestFit(Step at) {
        int pieces = Arrays.stream(at.demand).sum();
        if (pieces <= FEW_PIECES) {
            deadline.count((long) STEPS_PER_PIECE * pieces * order.stocks());
            BestFit.pack(order, at.demand, at.left).ifPresent(rest -> {
                Draft draft = at.fixed.copy();
                draft.addAll(rest);
                incumbent.offer(draft);
            });
        }
    }

    /** What is fixed and what is left after some bars are taken. */
    private final class Step {
        final Draft fixed;
        final int[] demand;
        final int[] left;

        Step(Draft fixed, int[] demand, int[] left) {
            this.fixed = fixed.copy();
            this.demand = demand.clone();
            this.left = left.clone();
        }

        Step copy() {
            return new Step(fixed, demand, left);
        }

        int take(Pattern pattern, int wanted) {
            int times = Math.min(Math.min(wanted, pattern.timesWithin(demand)), left[pattern.stock]);
            if (times > 0) {
                pattern.take(demand, times);
                order.draw(left, pattern.stock, times);
                fixed.add(pattern, times);
            }
            return times;
        }
    }
}
