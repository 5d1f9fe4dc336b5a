package org.baywright.model.rules;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.baywright.model.catalogue.RainwaterGoods;
import org.baywright.model.catalogue.RainwaterGoods.DownpipeSize;
import org.baywright.model.cladding.Cladding;
import org.baywright.model.cladding.GutterRun;
import org.baywright.model.cladding.PipeLimits;
import org.baywright.model.definition.RoofWater;

/** Advice: a downpipe that gets more than it should, where doors and open bays leave no place for another. */
final class DownpipeRule implements Rule {
    /** Shares of a limit beyond which it is passed; what is printed is rounded to about as much. */
    private static final double PASSED = 1.001;

    @Override
    public void check(Asked asked) {
        RoofWater water = asked.definition().envelope().roofWater();
        List<GutterRun> runs = asked.shed().map(Cladding::gutters).orElse(List.of());
        List<String> told =
                runs.stream().flatMap(run -> told(run, water).stream()).toList();
        if (!told.isEmpty()) {
            asked.advice(
                    "downpipe-short",
                    "roofWater.downpipe",
                    String.join("; ", told) + "; beside doors and open bays there is no place for one more",
                    larger(runs, water) + "give a pipe a post of its own, or move the door");
        }
    }

    /** Names the smallest downpipe that takes what the worst pipe gets, where it gets too much roof and there is one. */
    private static String larger(List<GutterRun> runs, RoofWater water) {
        double mostM2 = runs.stream()
                .flatMap(run -> run.falls().stream())
                .mapToDouble(GutterRun.Fall::catchmentM2)
                .max()
                .orElse(0);
        double takes = PipeLimits.of(water).roofM2();
        if (mostM2 <= takes * PASSED) {
            return "name a larger gutter, ";
        }
        return RainwaterGoods.shipped().downpipes().stream()
                .filter(pipe -> pipe.areaMm2() * takes >= water.downpipe().areaMm2() * mostM2)
                .min(Comparator.comparingDouble(DownpipeSize::areaMm2))
                .map(pipe -> "name " + pipe.name() + " or a larger one, ")
                .orElse("no downpipe in the catalogue takes so much: ");
    }

    /** The worst pipe of a gutter. */
    private static Optional<String> told(GutterRun run, RoofWater water) {
        PipeLimits limits = PipeLimits.of(water);
        return run.falls().stream()
                .max(Comparator.comparingDouble(f -> share(f, limits)))
                .filter(f -> share(f, limits) > PASSED)
                .map(f -> "on gutter line " + run.slope().line().letter() + " the downpipe " + Asked.mm(f.at().y())
                        + " mm from frame 1 takes " + passed(f, limits, water));
    }

    private static double share(GutterRun.Fall fall, PipeLimits limits) {
        return Math.max(
                fall.catchmentM2() / limits.roofM2(),
                Math.max((fall.to() - fall.from()) / limits.gutter(), fall.sideLs() / limits.sideLs()));
    }

    private static String passed(GutterRun.Fall fall, PipeLimits limits, RoofWater water) {
        if (fall.catchmentM2() > limits.roofM2() * PASSED) {
            return String.format(
                    Locale.ROOT,
                    "%.1f m² of roof; a %s takes about %.1f m² at %.0f mm/h (from memory)",
                    fall.catchmentM2(),
                    water.downpipe().name(),
                    limits.roofM2(),
                    water.rainfallMmPerH());
        }
        return fall.sideLs() > limits.sideLs() * PASSED
                ? String.format(
                        Locale.ROOT,
                        "%.2f L/s from one side; a %s brings about %.2f L/s (from memory)",
                        fall.sideLs(),
                        water.gutter().name(),
                        limits.sideLs())
                : Asked.mm(fall.to() - fall.from()) + " mm of gutter; at most " + Asked.mm(limits.gutter())
                        + " is usual (from memory)";
    }
}
