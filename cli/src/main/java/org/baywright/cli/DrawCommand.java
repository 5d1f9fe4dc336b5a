package org.baywright.cli;

import java.util.Map;
import org.baywright.render.output.OutputFolder;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Writes the drawings: drawings.pdf, parts.csv and summary.json. */
@Command(
        name = "draw",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = "Writes the drawings: drawings.pdf, parts.csv and summary.json.")
final class DrawCommand extends WritingCommand {
    @Option(names = "--svg", description = "Writes each sheet as an SVG file too.")
    private boolean svg;

    @Override
    Map<String, OutputFolder.Content> files(Outputs outputs) {
        return outputs.drawings(svg);
    }
}
