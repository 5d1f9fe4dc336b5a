package org.baywright.cli;

import java.util.Map;
import org.baywright.render.output.OutputFolder;
import picocli.CommandLine.Command;

/** Writes the bill of materials: order.pdf, order.xlsx, bill-of-materials.csv, parts.csv and summary.json. */
@Command(
        name = "order",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description =
                "Writes the bill of materials: order.pdf, order.xlsx, bill-of-materials.csv, parts.csv and summary.json.")
final class OrderCommand extends OrderingCommand {

    @Override
    Map<String, OutputFolder.Content> files(Outputs outputs) {
        return outputs.order();
    }
}
