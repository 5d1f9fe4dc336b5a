package org.baywright.model.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Collectors;
import org.baywright.model.problem.Problem;
import org.baywright.model.problem.Where;

/**
 * Plans the cutting of bars: least cost, then fewest different layouts, then the longest single off-cut. In steps, each
 * taken only while the plan is not proven best:
 *
 * <ol>
 *   <li>a first plan by {@link BestFit} and a first bound by {@link QuickBounds};
 *   <li>a better plan by {@link LocalSearch}, which goes on beside all that follows; with several stock lengths it begins
 *       after the first dive;
 *   <li>the linear program over all patterns by {@link Relaxation}, which gives the bound that is nearly always met;
 *   <li>plans rounded from it by {@link Dive};
 *   <li>where they leave a gap, {@link Enumeration} of the patterns that could close it and a {@link Tree} search.
 * </ol>
 *
 * <p>The cost is proven least; of the plans with that cost, {@link LayoutSearch} looks for fewer layouts and a longer
 * off-cut.
 */
public final class Cutter {
    private static final int MOST_ITEMS = 1500;
    private static final int MOST_PATTERNS = 20_000;
    // How much is repacked before the linear program is set up, and beside it: the program takes time as the square of
    // its rows.
    private static final long MOST_FIRST_WORK = 3_000_000;
    private static final long WORK_PER_PIECE = 6000;
    private static final long ROUND_WORK_PER_SQUARE = 250;
    private static final int MOST_DOUBLINGS = 4;

    private final Order order;
    private final Deadline deadline;
    private Optional<LocalSearch> local = Optional.empty();
    private long firstWork;

    private Cutter(Order order, Deadline deadline) {
        this.order = order;
        this.deadline = deadline;
    }

    /**
     * The best plan found by then; the same plan on every run, unless a deadline in seconds cuts it short.
     *
     * @throws IllegalArgumentException when a piece is longer than every stock length, naming it, or when limited stock
     *     runs out
     */
    public static CuttingPlan plan(CuttingJob job, Deadline deadline) {
        List<Problem> problems = job.problems("cut list");
        if (!problems.isEmpty()) {
            throw new IllegalArgumentException(
                    problems.stream().map(Problem::message).collect(Collectors.joining("; ")));
        }
        return planIfAny(job, deadline)
                .orElseThrow(() -> new IllegalArgumentException(
                        job.tooFewBars(Where.whole("cut list")).message()));
    }

    /** The same of pieces that each fit some stock; none when no way was found to cut them all from limited stock. */
    public static Optional<CuttingPlan> planIfAny(CuttingJob job, Deadline deadline) {
        if (job.pieces().isEmpty()) {
            return Optional.of(new CuttingPlan(job, List.of(), 0, true));
        }
        Order order = Order.of(job);
        Cutter cutter = new Cutter(order, deadline);
        return cutter.finished(job, cutter.solve());
    }

    private Incumbent solve() {
        Optional<Draft> first = BestFit.pack(order, order.demand(), order.limit());
        Incumbent incumbent = new Incumbent(order, first, QuickBounds.of(order));
        firstWork = Math.min(
                MOST_FIRST_WORK,
                WORK_PER_PIECE * Arrays.stream(order.demand()).asLongStream().sum());
        if (order.stocks() == 1) {
            // The bound by length is nearly always met; with several lengths to choose from it seldom is.
            new Aside(incumbent, firstWork).join(incumbent);
        }
        if (!incumbent.isProven() && isSearched(order)) {
            search(incumbent);
        }
        while (!incumbent.isProven() && LocalSearch.suits(order) && !deadline.passed()) {
            // Too many lengths for the program.
            new Aside(incumbent, MOST_FIRST_WORK).join(incumbent);
        }
        return incumbent;
    }

    private static boolean isSearched(Order order) {
        return order.count() <= MOST_ITEMS;
    }

    /** Whether the pieces are of few enough lengths for a search that goes on until it is proven. */
    static boolean isSearched(CuttingJob job) {
        return isSearched(Order.of(job));
    }

    private void search(Incumbent incumbent) {
        Set<Pattern> start = incumbent.best().map(b -> b.times().keySet()).orElse(Set.of());
        long work = Math.max(firstWork, ROUND_WORK_PER_SQUARE * order.count() * order.count());
        Aside aside = new Aside(incumbent, order.stocks() == 1 ? work : 0);
        Relaxation relaxation = Relaxation.of(order, start, aside.deadline);
        relaxation.solve();
        aside.join(incumbent);
        incumbent.raiseBound(relaxation.bound());
        Root root = new Root(order, relaxation, MOST_PATTERNS);
        for (int round = 0; !incumbent.isProven() && !deadline.passed(); round++) {
            aside = new Aside(incumbent, workBeside(round, work));
            new Dive(order, relaxation, incumbent, aside.deadline).run(round);
            if (round == 0 && !incumbent.isProven()) {
                root.tryFew(incumbent, aside.deadline);
            }
            if (round == 0 && order.stocks() > 1) {
                new Aside(incumbent, work).join(incumbent);
            }
            if (!incumbent.isProven() && root.isClosed(incumbent, 1000L << 2 * round, aside.deadline)) {
                incumbent.raiseBound(incumbent.budget() + 1);
            }
            aside.join(incumbent);
        }
    }

    /** How much is done beside a round; with several stock lengths the first dive nearly always does without. */
    private long workBeside(int round, long work) {
        if (order.stocks() == 1) {
            return work << Math.min(round, MOST_DOUBLINGS);
        }
        return round == 0 ? 0 : work << Math.min(round - 1, MOST_DOUBLINGS);
    }

    /**
     * A {@link LocalSearch} beside the main search, on a thread of its own. How much it does is fixed, and its outcome is
     * taken in at a fixed place, whichever of the two ends first, so that the plan is the same each time.
     */
    private final class Aside {
        final Deadline deadline;
        private final Deadline beside = Cutter.this.deadline.fork();
        private final long enough;
        private final Optional<CompletableFuture<Draft>> work;

        Aside(Incumbent incumbent, long measure) {
            enough = incumbent.bound();
            work = (measure > 0 ? localSearch(incumbent) : Optional.<LocalSearch>empty())
                    .map(search -> CompletableFuture.supplyAsync(() -> search.improve(enough, measure, beside)));
            deadline = Cutter.this.deadline.orWhen(() ->
                    work.isPresent() && work.get().isDone() && work.get().join().cost() <= enough);
        }

        void join(Incumbent incumbent) {
            work.map(CompletableFuture::join).ifPresent(found -> {
                incumbent.prefer(found);
                Cutter.this.deadline.join(beside, found.cost() <= enough);
            });
        }
    }

    /** The local search where it was left, or from the best plan where that is better by now. */
    private Optional<LocalSearch> localSearch(Incumbent incumbent) {
        if (!LocalSearch.suits(order) || incumbent.isProven()) {
            return Optional.empty();
        }
        Draft plan = incumbent.best().orElseThrow();
        if (local.isEmpty()) {
            local = Optional.of(new LocalSearch(order, plan));
        }
        local.get().startFrom(plan);
        return local;
    }

    private Optional<CuttingPlan> finished(CuttingJob job, Incumbent incumbent) {
        return incumbent.best().map(found -> {
            Draft best = YardFirst.used(order, LayoutSearch.improved(order, found, deadline));
            if (!best.isRight()) {
                throw new IllegalStateException("the plan found does not make what was asked");
            }
            return plan(job, order, best, incumbent);
        });
    }

    /** A draft with its layouts, most bars first. */
    static CuttingPlan plan(CuttingJob job, Order order, Draft draft, Incumbent incumbent) {
        List<Layout> layouts = new ArrayList<>();
        draft.times().entrySet().stream()
                .sorted(Comparator.comparingInt((Map.Entry<Pattern, Integer> e) -> -e.getValue())
                        .thenComparingInt(e -> e.getKey().item[0]))
                .forEach(e -> layouts.add(layout(job, order, e.getKey(), e.getValue())));
        return new CuttingPlan(job, layouts, incumbent.bound() * order.costUnit(), incumbent.isProven());
    }

    private static Layout layout(CuttingJob job, Order order, Pattern pattern, int times) {
        List<Cut> cuts = new ArrayList<>();
        for (int k = 0; k < pattern.item.length; k++) {
            Order.Item item = order.items().get(pattern.item[k]);
            cuts.add(new Cut(item.lengthMm(), item.mitre(), item.setbacks(), pattern.count[k]));
        }
        return new Layout(job.stocks().get(pattern.stock), cuts, times, job.saw());
    }
}
