package org.baywright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.baywright.model.cladding.Building;
import org.baywright.model.definition.Places;
import org.baywright.model.definition.Reading;
import org.baywright.model.problem.Problem;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** What every command on a definition does: read, report, and work on the model if nothing stops it. */
abstract class ShedCommand implements Callable<Integer> {
    @Mixin
    private Source source;

    @Spec
    private CommandSpec spec;

    private Places places;

    @Override
    public final Integer call() throws IOException {
        Reading reading = source.read();
        places = reading.places();
        Optional<Building> building = built(reading, others(), err());
        if (building.isEmpty()) {
            return Baywright.PROBLEMS;
        }
        work(building.get());
        return Baywright.DONE;
    }

    /** The building of a definition, once every problem is told; empty when one stops the work. */
    static Optional<Building> built(Reading reading, List<Problem> others, PrintWriter err) {
        List<Problem> problems = new ArrayList<>(reading.problems());
        problems.addAll(others);
        Report.print(problems, err);
        long errors = problems.stream().filter(Problem::isError).count();
        if (reading.definition().isEmpty() || errors > 0) {
            err.println(errors == 1 ? "1 error; nothing written" : errors + " errors; nothing written");
            return Optional.empty();
        }
        return Optional.of(Building.of(reading.definition().get()));
    }

    /** What is wrong with other files that the command reads. */
    List<Problem> others() throws IOException {
        return List.of();
    }

    /** The command's own work. */
    abstract void work(Building building) throws IOException;

    /** Where the keys of the definition were read. */
    final Places places() {
        return places;
    }

    final PrintWriter out() {
        return spec.commandLine().getOut();
    }

    final PrintWriter err() {
        return spec.commandLine().getErr();
    }
}
