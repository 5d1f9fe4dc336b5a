package org.baywright.model.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.IntFunction;

/** Prints how many jobs of each made set are solved, and in what time: {@code CuttingBenchmark [seconds] [jobs] [word]}. */
public final class CuttingBenchmark {
    private final double seconds;
    private final int jobs;
    private final String word;
    private int solved;
    private int tried;

    private CuttingBenchmark(double seconds, int jobs, String word) {
        this.seconds = seconds;
        this.jobs = jobs;
        this.word = word;
    }

    /** Runs all sets, or those whose name holds a word. */
    public static void main(String[] args) {
        new CuttingBenchmark(
                        args.length > 0 ? Double.parseDouble(args[0]) : 10,
                        args.length > 1 ? Integer.parseInt(args[1]) : 10,
                        args.length > 2 ? args[2] : "")
                .run();
    }

    private void run() {
        System.out.printf(
                "%-28s %5s %7s %7s %8s %8s %8s%n", "set", "jobs", "proven", "planted", "mean s", "max s", "gap bars");
        List<IntFunction<Instances.Instance>> sets = List.of(
                k -> Instances.uniform(120, 20, 100, 150, k),
                k -> Instances.uniform(250, 20, 100, 150, k),
                k -> Instances.uniform(500, 20, 100, 150, k),
                k -> Instances.uniform(1000, 20, 100, 150, k),
                k -> Instances.triplets(20, 1000, k),
                k -> Instances.triplets(40, 1000, k),
                k -> Instances.triplets(83, 1000, k),
                k -> Instances.triplets(167, 1000, k),
                k -> Instances.triplets(167, 10_000, k),
                k -> Instances.perfect(50, 2, 6, 1000, k),
                k -> Instances.perfect(150, 2, 6, 1000, k),
                k -> Instances.perfect(100, 2, 6, 10_000, k),
                k -> Instances.perfect(200, 3, 5, 100_000, k),
                k -> Instances.weibull(200, 0.5 + 0.35 * k, 1000, k),
                k -> Instances.weibull(1000, 0.5 + 0.35 * k, 1000, k),
                k -> Instances.longBar(200, k),
                k -> Instances.aroundMean(200, 3 + 2 * (k % 4), 0.5, k),
                k -> Instances.aroundMean(500, 3 + 2 * (k % 4), 0.9, k),
                k -> Instances.schwerin(120, k),
                k -> Instances.uniform(200, 1, 100, 100, k),
                k -> Instances.uniform(1000, 50, 500, 1000, k),
                k -> Instances.uniform(500, 1000, 5000, 10_000, k),
                k -> Instances.hard(160, k),
                k -> Instances.hard(200, k));
        sets.forEach(this::run);
        System.out.printf(Locale.ROOT, "%d of %d at the optimum (%.1f %%)%n", solved, tried, 100.0 * solved / tried);
    }

    private void run(IntFunction<Instances.Instance> set) {
        String name = set.apply(0).name();
        if (!name.contains(word)) {
            return;
        }
        int proven = 0;
        int planted = 0;
        int best = 0;
        int gap = 0;
        List<Double> times = new ArrayList<>();
        for (int k = 0; k < jobs; k++) {
            Instances.Instance instance = set.apply(k);
            long start = System.nanoTime();
            CuttingPlan plan = Cutter.plan(instance.job(), seconds);
            times.add((System.nanoTime() - start) / 1e9);
            boolean meets = plan.barCount() == instance.optimum();
            proven += plan.proven() ? 1 : 0;
            planted += meets ? 1 : 0;
            best += plan.proven() || meets ? 1 : 0;
            gap += (int) Math.round((plan.cost() - plan.lowerBound()) / instance.capacity());
        }
        solved += best;
        tried += jobs;
        System.out.printf(
                Locale.ROOT,
                "%-28s %5d %7d %7s %8.3f %8.3f %8d%n",
                name,
                jobs,
                proven,
                set.apply(0).optimum() == 0 ? "-" : Integer.toString(planted),
                times.stream().mapToDouble(t -> t).average().orElse(0),
                times.stream().mapToDouble(t -> t).max().orElse(0),
                gap);
    }
}
