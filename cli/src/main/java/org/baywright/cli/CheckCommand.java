package org.baywright.cli;

import org.baywright.model.cladding.Building;
import picocli.CommandLine.Command;

/** Reads a definition and prints what it comes to. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = "Reads a definition, reports all problems and advice, and prints the headline figures.")
final class CheckCommand extends ShedCommand {
    @Override
    void work(Building building) {
        new Headline(building).lines().forEach(out()::println);
    }
}
