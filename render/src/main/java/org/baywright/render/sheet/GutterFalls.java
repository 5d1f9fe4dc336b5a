package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.baywright.model.cladding.GutterRun;

/** A gutter as it falls: to each downpipe from the high points halfway to its neighbours. */
record GutterFalls(GutterRun run, List<Pipe> pipes) {
    /** Areas are printed to a tenth. */
    private static final double PRINTED_M2 = 0.1;

    /**
     * A downpipe.
     *
     * @param name such as DP1
     * @param fall the gutter that falls to it
     */
    record Pipe(String name, GutterRun.Fall fall) {}

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
        List<Pipe> pipes = new ArrayList<>();
        for (GutterRun.Fall fall : run.falls()) {
            pipes.add(new Pipe("DP" + (before + pipes.size() + 1), fall));
        }
        return new GutterFalls(run, pipes);
    }

    /** Runs of neighbours that take the same water, to what is printed of it. */
    static List<List<Pipe>> alike(List<Pipe> pipes) {
        List<List<Pipe>> runs = new ArrayList<>();
        for (Pipe pipe : pipes) {
            List<Pipe> last = runs.isEmpty() ? List.of() : runs.get(runs.size() - 1);
            if (last.isEmpty()
                    || Math.abs(last.get(0).fall().catchmentM2() - pipe.fall().catchmentM2()) > PRINTED_M2) {
                runs.add(new ArrayList<>());
            }
            runs.get(runs.size() - 1).add(pipe);
        }
        return runs;
    }

    /** Runs of neighbours that are wanted, so that a long gutter is told in few words. */
    List<List<Pipe>> runs(Predicate<Pipe> wanted) {
        List<List<Pipe>> runs = new ArrayList<>();
        boolean goesOn = false;
        for (Pipe pipe : pipes) {
            boolean isWanted = wanted.test(pipe);
            if (isWanted && !goesOn) {
                runs.add(new ArrayList<>());
            }
            if (isWanted) {
                runs.get(runs.size() - 1).add(pipe);
            }
            goesOn = isWanted;
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
