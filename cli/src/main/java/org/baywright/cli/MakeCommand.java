package org.baywright.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import org.baywright.render.output.OutputFolder;
import org.baywright.render.sheet.SetScope;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Writes everything that the other commands write. */
@Command(
        name = "make",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = {
            "Writes everything: drawings, order, bill of materials, set-out, piece drawings, drill templates, plates for"
                    + " profile cutting, shop sheets, cut list and cutting plan, parts and summary.",
            "The files: drawings.pdf, order.pdf, order.xlsx, bill-of-materials.csv, setout.pdf, setout.csv,"
                    + " piece-drawings.pdf, templates.pdf, plate-MARK.dxf for each plate, shop.pdf, cut-list.pdf,"
                    + " cut-list.csv, cutting-plan.pdf, cutting-plan.csv, parts.csv and summary.json."
        })
final class MakeCommand extends OrderingCommand {
    @Option(names = "--svg", description = "Writes each sheet as an SVG file too.")
    private boolean svg;

    @Override
    Map<String, OutputFolder.Content> files(Outputs outputs) {
        Map<String, OutputFolder.Content> files = new LinkedHashMap<>(outputs.drawings(SetScope.ALL, svg));
        files.putAll(outputs.order());
        files.putAll(SetOutOutputs.of(outputs.building()));
        files.putAll(PieceOutputs.of(outputs.building()));
        files.putAll(ShopOutputs.of(outputs.building()));
        files.putAll(CutOutputs.of(outputs));
        return files;
    }
}
