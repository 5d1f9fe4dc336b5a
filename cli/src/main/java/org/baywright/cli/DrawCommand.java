package org.baywright.cli;

import java.util.Map;
import org.baywright.render.output.OutputFolder;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Writes the drawings: drawings.pdf, parts.csv and summary.json. */
@Command(
        name = "draw",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = "Writes the drawings: drawings.pdf, parts.csv and summary.json.")
final class DrawCommand extends WritingCommand {
    @Mixin
    private SheetOptions sheets;

    @Override
    Map<String, OutputFolder.Content> files(Outputs outputs) {
        return outputs.drawings(sheets.scope(), sheets.svg());
    }
}
