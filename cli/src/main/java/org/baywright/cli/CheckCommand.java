package org.baywright.cli;

import java.util.List;
import org.baywright.model.parts.Shed;
import org.baywright.model.problem.Problem;
import picocli.CommandLine.Command;

/** Reads a definition and prints what it comes to. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = "Reads a definition, reports all problems and advice, and prints the headline figures.")
final class CheckCommand extends ShedCommand {
    @Override
    void work(Shed shed, List<Problem> advice) {
        new Headline(shed).lines().forEach(out()::println);
    }
}
