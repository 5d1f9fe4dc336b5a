package org.baywright.cli;

import java.util.Map;
import org.baywright.render.output.OutputFolder;
import picocli.CommandLine.Command;

/** Writes the shop sheets: shop.pdf, parts.csv and summary.json. */
@Command(
        name = "shop",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description =
                "Writes the sheets for drilling, adhesive, welding, paint and lifting: shop.pdf, parts.csv and summary.json.")
final class ShopCommand extends WritingCommand {
    @Override
    Map<String, OutputFolder.Content> files(Outputs outputs) {
        return ShopOutputs.of(outputs.building());
    }
}
