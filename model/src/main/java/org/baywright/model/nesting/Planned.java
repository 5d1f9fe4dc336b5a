package org.baywright.model.nesting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.baywright.model.cutting.Bar;
import org.baywright.model.cutting.Closing;
import org.baywright.model.cutting.Cutter;
import org.baywright.model.cutting.CuttingJob;
import org.baywright.model.cutting.CuttingPlan;
import org.baywright.model.cutting.Deadline;
import org.baywright.model.cutting.Saw;
import org.baywright.model.cutting.Stock;

/**
 * The bars of one section, the cheapest of the ways tried that really fit.
 *
 * @param least the plan of the job that bounds them
 * @param boundCost no plan costs less
 * @param searched whether the search came to its end
 * @param bars those cut alike together
 */
record Planned(CuttingPlan least, double boundCost, boolean searched, List<LaidBar> bars) {
    private static final double FINE = 1e-6;

    /**
     * Tries the jobs of a section from the least on, until a way that fits costs no more than the bound; none when no way
     * was found to cut all of limited stock.
     */
    static Optional<Planned> of(SectionJobs jobs, Deadline deadline) {
        boolean exact = jobs.needs().stream().allMatch(n -> n.blank().isSquare());
        return Cutter.planIfAny(jobs.least(), deadline.share(exact ? 1 : 2))
                .flatMap(least -> of(jobs, least, exact, deadline));
    }

    private static Optional<Planned> of(SectionJobs jobs, CuttingPlan least, boolean exact, Deadline deadline) {
        Attempt first = Attempt.of(jobs, least);
        Attempt best = first;
        List<Supplier<CuttingJob>> ways = exact ? List.of() : List.of(jobs::paired, jobs::nested, jobs::tipToTip);
        for (int i = 0; i < ways.size() && !best.isBest(least); i++) {
            Optional<Attempt> next =
                    Cutter.planIfAny(ways.get(i).get(), deadline.share(2)).map(plan -> Attempt.of(jobs, plan));
            if (next.isPresent()) {
                best = cheaper(best, next.get());
                if (!best.isBest(least) && !next.get().misfits.isEmpty()) {
                    best = cheaper(best, next.get().mended(jobs, deadline.share(2)));
                }
            }
        }
        if (!best.isBest(least) && !exact) {
            best = cheaper(best, first.mended(jobs, deadline.share(1)));
        }
        double bound = least.lowerBound();
        boolean searched = least.proven();
        if (!best.isBest(least) && !exact) {
            Closing closing = Closing.under(jobs.exact(), best.cost(), deadline.share(1));
            if (closing.better().isPresent()) {
                best = cheaper(best, Attempt.of(jobs, closing.better().get()));
            }
            bound = Math.max(bound, closing.boundCost());
            searched = closing.closed();
        }
        return best.misfits.isEmpty()
                ? Optional.of(new Planned(least, bound, searched, best.alike()))
                : Optional.empty();
    }

    /** No plan buys less: the bound on the cost where bars are weighed by their length. */
    double boundMm() {
        return least.isByLength() ? boundCost : least.purchasedBoundMm();
    }

    private static Attempt cheaper(Attempt a, Attempt b) {
        if (a.misfits.isEmpty() != b.misfits.isEmpty()) {
            return a.misfits.isEmpty() ? a : b;
        }
        return b.cost() < a.cost() - FINE ? b : a;
    }

    /** The bars of a plan with the pieces laid in them, and the bars that do not take theirs. */
    private record Attempt(List<LaidBar> fits, List<LaidBar> misfits) {
        static Attempt of(SectionJobs jobs, CuttingPlan plan) {
            Map<String, Blank> byMark = new LinkedHashMap<>();
            jobs.needs().forEach(n -> byMark.put(n.blank().mark(), n.blank()));
            List<LaidBar> fits = new ArrayList<>();
            List<LaidBar> misfits = new ArrayList<>();
            for (Bar bar : plan.bars()) {
                List<Blank> blanks = bar.marks().stream().map(byMark::get).toList();
                LaidBar laid = laid(bar.layout().stock(), blanks, jobs.saw());
                (laid.fits() ? fits : misfits).add(laid);
            }
            return new Attempt(fits, misfits);
        }

        private static LaidBar laid(Stock stock, List<Blank> blanks, Saw saw) {
            return new LaidBar(stock, Nest.of(blanks, saw), 1, saw);
        }

        double cost() {
            return fits.stream().mapToDouble(b -> b.stock().cost()).sum()
                    + misfits.stream().mapToDouble(b -> b.stock().cost()).sum();
        }

        boolean isBest(CuttingPlan least) {
            return misfits.isEmpty() && cost() <= least.lowerBound() * (1 + FINE) + FINE;
        }

        /** The bars that fit as they are, and what the others held planned anew so that it is sure to fit. */
        Attempt mended(SectionJobs jobs, Deadline deadline) {
            Map<Blank, Integer> wanting = new LinkedHashMap<>();
            misfits.forEach(bar -> bar.pieces().forEach(p -> wanting.merge(p.blank(), 1, Integer::sum)));
            List<Need> needs = new ArrayList<>();
            wanting.forEach((blank, n) -> needs.add(new Need(blank, n)));
            if (needs.isEmpty()) {
                return this;
            }
            SectionJobs rest = new SectionJobs(needs, left(jobs.stocks()), jobs.saw());
            return Cutter.planIfAny(rest.nested(), deadline)
                    .map(plan -> of(rest, plan))
                    .map(this::with)
                    .orElse(this);
        }

        private Attempt with(Attempt mended) {
            List<LaidBar> all = new ArrayList<>(fits);
            all.addAll(mended.fits);
            return new Attempt(all, mended.misfits);
        }

        /** What is left of counted stock when the bars that fit are taken. */
        private List<Stock> left(List<Stock> stocks) {
            List<Stock> left = new ArrayList<>();
            for (Stock stock : stocks) {
                int drawn = (int)
                        fits.stream().filter(b -> isSame(b.stock(), stock)).count();
                left.add(stock.isLimited() ? stock.limitedTo(stock.limit() - drawn) : stock);
            }
            return left;
        }

        private static boolean isSame(Stock a, Stock b) {
            return a.lengthMm() == b.lengthMm() && a.cost() == b.cost();
        }

        List<LaidBar> alike() {
            Map<LaidBar, Integer> times = new LinkedHashMap<>();
            fits.forEach(bar -> times.merge(bar, 1, Integer::sum));
            List<LaidBar> bars = new ArrayList<>();
            times.forEach((bar, n) -> bars.add(bar.times(n)));
            bars.sort(Comparator.comparingInt(b -> -b.times()));
            return bars;
        }
    }
}
