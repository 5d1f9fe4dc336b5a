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
    private static final double NEARLY_WHOLE = 0.8;

    private final Order order;
    private final Relaxation relaxation;
    private final Incumbent incumbent;
    private final Deadline deadline;

    Dive(Order order, Relaxation relaxation, Incumbent incumbent, Deadline deadline) {
        this.order = order;
        this.relaxation = relaxation;
        this.incumbent = incumbent;
        this.deadline = deadline;
    }

    /** Searches the whole order with at most so many choices against the program's advice. */
    void run(int discrepancies) {
        down(new Draft(order), order.demand(), order.limit(), discrepancies);
    }

    private boolean isOver() {
        return incumbent.isProven() || deadline.passed();
    }

    private void down(Draft fixed, int[] demand, int[] left, int discrepancies) {
        if (isOver() || !relaxation.solve(demand, left, incumbent.budget() - fixed.cost()) || isOver()) {
            return;
        }
        if (Arrays.stream(demand).sum() <= FEW_PIECES) {
            BestFit.pack(order, demand, left).ifPresent(rest -> {
                Draft whole = fixed.copy();
                whole.addAll(rest);
                incumbent.offer(whole);
            });
        }
        List<Use> uses =
                new ArrayList<>(Use.exchanged(order, demand, relaxation.master().uses()));
        uses.sort(Comparator.comparingDouble((Use u) -> -u.bars()));
        if (!uses.isEmpty() && uses.get(0).bars() > 1 - 1e-3) {
            Step step = new Step(fixed, demand, left);
            uses.forEach(u -> step.take(u.pattern(), (int) (u.bars() + 1e-3)));
            down(step.fixed, step.demand, step.left, discrepancies);
        } else {
            branch(fixed, demand, left, discrepancies, uses);
        }
    }

    private void branch(Draft fixed, int[] demand, int[] left, int discrepancies, List<Use> uses) {
        for (int k = 0; k < uses.size() && k <= discrepancies; k++) {
            Step step = new Step(fixed, demand, left);
            if (step.take(uses.get(k).pattern(), 1) == 0) {
                continue;
            }
            if (k == 0) {
                uses.stream().skip(1).filter(u -> u.bars() > NEARLY_WHOLE).forEach(u -> step.take(u.pattern(), 1));
            }
            down(step.fixed, step.demand, step.left, discrepancies - k);
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
