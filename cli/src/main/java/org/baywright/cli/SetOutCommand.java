package org.baywright.cli;

import java.util.Map;
import org.baywright.render.output.OutputFolder;
import picocli.CommandLine.Command;

/** Writes the set-out: setout.pdf, setout.csv, parts.csv and summary.json. */
@Command(
        name = "setout",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description =
                "Writes the set-out for string lines and drill: setout.pdf, setout.csv, parts.csv and summary.json.")
final class SetOutCommand extends WritingCommand {
    @Override
    Map<String, OutputFolder.Content> files(Outputs outputs) {
        return SetOutOutputs.of(outputs.building());
    }
}
