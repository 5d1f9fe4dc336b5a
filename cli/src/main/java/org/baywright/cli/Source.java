package org.baywright.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.baywright.model.catalogue.Catalogue;
import org.baywright.model.definition.DefinitionReader;
import org.baywright.model.definition.Reading;
import org.baywright.model.problem.Problem;
import org.baywright.model.rules.ShedRules;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The definition a command works on: a file or standard input, with what was set on the command line. */
final class Source {
    @Parameters(paramLabel = "FILE", description = "The definition, YAML or JSON; - reads standard input.")
    private String file;

    @Option(
            names = "--set",
            paramLabel = "KEY=VALUE",
            description = "Sets a key of the definition, dotted: --set roofPitch=12 --set leanTos[0].width=4000.")
    private List<String> settings = new ArrayList<>();

    /** What came of reading and checking: every problem, and the definition when none stops the work. */
    Reading read() throws IOException {
        return read(file, settings);
    }

    /** The same of a file named otherwise. */
    static Reading read(String file, List<String> settings) throws IOException {
        Reading reading =
                DefinitionReader.read(TextFile.name(file), TextFile.read(file), settings, Catalogue.shipped());
        if (reading.definition().isEmpty()) {
            return reading;
        }
        List<Problem> all = new ArrayList<>(reading.problems());
        all.addAll(ShedRules.check(reading.definition().get(), reading.places()::where));
        boolean stopped = all.stream().anyMatch(Problem::isError);
        return new Reading(stopped ? Optional.empty() : reading.definition(), all, reading.places());
    }
}
