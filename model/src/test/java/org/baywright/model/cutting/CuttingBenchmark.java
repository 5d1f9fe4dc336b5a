package org.baywright.model.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

/**
 * Prints for each made set how many jobs end at the best possible number of bars, how many are proven, and the time:
 * {@code CuttingBenchmark [seconds] [jobs] [word]}. The best possible is known where a packing was planted or the plan is
 * proven; any other job counts as missed.
 */
public final class CuttingBenchmark {
    private static final String ROW = "%-30s %5d %7d %7d %8.3f %8.3f  %s%n";

    private final double seconds;
    private final int jobs;
    private final Sum all = new Sum();

    private CuttingBenchmark(double seconds, int jobs) {
        this.seconds = seconds;
        this.jobs = jobs;
    }

    /** What came of the jobs of a set. */
    private static final class Sum {
        private final List<Double> times = new ArrayList<>();
        private final List<Integer> missed = new ArrayList<>();
        private int proven;

        void add(int job, boolean isBest, boolean isProven, double took) {
            times.add(took);
            proven += isProven ? 1 : 0;
            if (!isBest) {
                missed.add(job);
            }
        }

        void print(String name) {
            System.out.printf(
                    Locale.ROOT,
                    ROW,
                    name,
                    times.size(),
                    times.size() - missed.size(),
                    proven,
                    times.stream().mapToDouble(t -> t).average().orElse(0),
                    times.stream().mapToDouble(t -> t).max().orElse(0),
                    missed.isEmpty() ? "" : "missed " + missed);
        }
    }

    /** Runs all sets, or those whose name holds a word. */
    public static void main(String[] args) {
        double seconds = args.length > 0 ? Double.parseDouble(args[0]) : 10;
        int jobs = args.length > 1 ? Integer.parseInt(args[1]) : 5;
        new CuttingBenchmark(seconds, jobs).run(args.length > 2 ? args[2] : "");
    }

    private static List<IntFunction<Instances.Instance>> sets() {
        return List.of(
                k -> Instances.uniform(120, 20, 100, 150, k),
                k -> Instances.uniform(250, 20, 100, 150, k),
                k -> Instances.uniform(500, 20, 100, 150, k),
                k -> Instances.uniform(1000, 20, 100, 150, k),
                k -> Instances.triplets(20, 1000, k),
                k -> Instances.triplets(40, 1000, k),
                k -> Instances.triplets(83, 1000, k),
                k -> Instances.triplets(167, 1000, k),
                k -> Instances.triplets(167, 10_000, k),
                k -> Instances.uniform(500, 1 + 10 * (k % 3), 100, 100 + 25 * (k % 3), k),
                k -> Instances.aroundMean(100, 3 + 2 * (k % 4), 0.2 + 0.35 * (k / 2 % 3), k),
                k -> Instances.aroundMean(200, 3 + 2 * (k % 4), 0.2 + 0.35 * (k / 2 % 3), k),
                k -> Instances.aroundMean(500, 3 + 2 * (k % 4), 0.2 + 0.35 * (k / 2 % 3), k),
                k -> Instances.longBar(200, k),
                k -> Instances.schwerin(100, k),
                k -> Instances.schwerin(120, k),
                k -> Instances.wide(60 + 20 * k, 0.25 + 0.15 * (k % 5), k),
                k -> Instances.hard(160, k),
                k -> Instances.hard(180, k),
                k -> Instances.hard(200, k),
                k -> Instances.spread(300, 1000, 0.1, 0.5 + 0.15 * (k % 3), k),
                k -> Instances.spread(1000, 1000, 0.1 + 0.1 * (k % 2), 0.5 + 0.15 * (k % 3), k),
                k -> Instances.spread(1000, 10_000, 0.1, 0.5 + 0.15 * (k % 3), k),
                k -> Instances.augmented(67, 2500, k),
                k -> Instances.augmented(134, 10_000, k),
                k -> Instances.augmented(200, 20_000, k),
                k -> Instances.augmented(267, 40_000, k),
                k -> Instances.augmented(334, 80_000, k),
                k -> Instances.longest(125, 0.2 + 0.15 * (k % 3), k),
                k -> Instances.longest(250, 0.2 + 0.15 * (k % 3), k),
                k -> Instances.perfect(50, 2, 6, 1000, k),
                k -> Instances.perfect(150, 2, 6, 1000, k),
                k -> Instances.perfect(100, 2, 6, 10_000, k),
                k -> Instances.perfect(200, 3, 5, 100_000, k),
                k -> Instances.weibull(200, 0.5 + 0.35 * k, 1000, k),
                k -> Instances.weibull(1000, 0.5 + 0.35 * k, 1000, k));
    }

    private void run(String word) {
        System.out.printf("%-30s %5s %7s %7s %8s %8s%n", "set", "jobs", "best", "proven", "mean s", "worst s");
        if ("sheds".contains(word)) {
            runSheds();
        }
        sets().forEach(set -> run(set, word));
        all.print("all but sheds");
    }

    private void runSheds() {
        Sum sum = new Sum();
        for (int k = 0; k < 300; k++) {
            long start = System.nanoTime();
            boolean proven =
                    Cutter.plan(Instances.shed(k), Deadline.in(seconds)).proven();
            sum.add(k, proven, proven, (System.nanoTime() - start) / 1e9);
        }
        sum.print("sheds");
    }

    private void run(IntFunction<Instances.Instance> set, String word) {
        String name = set.apply(0).name();
        if (name.contains(word)) {
            Sum sum = new Sum();
            IntStream.range(0, jobs).forEach(k -> run(set.apply(k), k, sum));
            sum.print(name);
        }
    }

    private void run(Instances.Instance instance, int job, Sum sum) {
        long start = System.nanoTime();
        CuttingPlan plan = Cutter.plan(instance.job(), Deadline.in(seconds));
        double took = (System.nanoTime() - start) / 1e9;
        boolean isBest = plan.proven() || plan.barCount() == instance.optimum();
        sum.add(job, isBest, plan.proven(), took);
        all.add(all.times.size(), isBest, plan.proven(), took);
    }
}
