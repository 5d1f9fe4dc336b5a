package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.baywright.model.cladding.GutterRun;
import org.baywright.model.geometry.Vec3;

/** A gutter as it falls: to each downpipe from the high points halfway to its neighbours. */
record GutterFalls(GutterRun run, List<Pipe> pipes) {
    /** Areas are printed to a tenth. */
    private static final double PRINTED_M2 = 0.1;

    /**
     * A downpipe.
     *
     * @param name such as DP1
     * @param at where it drops
     * @param from along the building, where the gutter starts to fall to it
     * @param to where that ends
     * @param catchmentM2 its share of the roof, by its length of gutter
     * @param flowLs its share of the water
     */
    record Pipe(String name, Vec3 at, double from, double to, double catchmentM2, double flowLs) {}

    /** Copies the list. */
    GutterFalls {
        pipes = List.copyOf(pipes);
    }

    /** All gutters, their downpipes numbered through. */
    static List<GutterFalls> of(List<GutterRun> runs) {
        List<GutterFalls> gutters = new ArrayList<>();
        int number = 0;
        for (GutterRun run : runs) {
            gutters.add(of(run, number));
            number += run.downpipes().size();
        }
        return gutters;
    }

    private static GutterFalls of(GutterRun run, int before) {
        List<Vec3> at = run.downpipes().stream()
                .sorted(Comparator.comparingDouble(Vec3::y))
                .toList();
        double low = Math.min(run.from().y(), run.to().y());
        double high = Math.max(run.from().y(), run.to().y());
        List<Pipe> pipes = new ArrayList<>();
        for (int i = 0; i < at.size(); i++) {
            double from = i == 0 ? low : (at.get(i - 1).y() + at.get(i).y()) / 2;
            double to =
                    i == at.size() - 1 ? high : (at.get(i).y() + at.get(i + 1).y()) / 2;
            double share = (to - from) / (high - low);
            String name = "DP" + (before + i + 1);
            pipes.add(new Pipe(name, at.get(i), from, to, share * run.catchmentM2(), share * run.flowLs()));
        }
        return new GutterFalls(run, pipes);
    }

    /** Runs of neighbours that take the same water, to what is printed of it. */
    static List<List<Pipe>> alike(List<Pipe> pipes) {
        List<List<Pipe>> runs = new ArrayList<>();
        for (Pipe pipe : pipes) {
            List<Pipe> last = runs.isEmpty() ? List.of() : runs.get(runs.size() - 1);
            if (last.isEmpty() || Math.abs(last.get(0).catchmentM2() - pipe.catchmentM2()) > PRINTED_M2) {
                runs.add(new ArrayList<>());
            }
            runs.get(runs.size() - 1).add(pipe);
        }
        return runs;
    }

    /** As {@code DP1 to DP3}. */
    String names() {
        return pipes.isEmpty() ? "no downpipe" : names(pipes);
    }

    /** The same of some of them. */
    static String names(List<Pipe> pipes) {
        String first = pipes.get(0).name();
        return pipes.size() == 1
                ? first
                : first + " to " + pipes.get(pipes.size() - 1).name();
    }
}
