package org.baywright.cli;

import java.util.Map;
import org.baywright.render.output.OutputFolder;
import picocli.CommandLine.Command;

/** Writes the bill of materials: order.pdf, bill-of-materials.csv, parts.csv and summary.json. */
@Command(
        name = "order",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = "Writes the bill of materials: order.pdf, bill-of-materials.csv, parts.csv and summary.json.")
final class OrderCommand extends WritingCommand {

    @Override
    Map<String, OutputFolder.Content> files(Outputs outputs) {
        return outputs.order();
    }
}
