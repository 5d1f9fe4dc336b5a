package org.baywright.cli;

import java.util.Map;
import org.baywright.render.output.OutputFolder;
import picocli.CommandLine.Command;

/** Writes what the shop works to: piece drawings, drill templates and plates for profile cutting. */
@Command(
        name = "pieces",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = "Writes piece-drawings.pdf, templates.pdf, a DXF file of each plate, parts.csv and summary.json.")
final class PiecesCommand extends WritingCommand {
    @Override
    Map<String, OutputFolder.Content> files(Outputs outputs) {
        return PieceOutputs.of(outputs.building());
    }
}
