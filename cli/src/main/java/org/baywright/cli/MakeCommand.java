package org.baywright.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import org.baywright.render.output.OutputFolder;
import org.baywright.render.sheet.SetScope;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Writes everything: drawings, order, bill of materials, cut list and cutting plan, parts and summary. */
@Command(
        name = "make",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = "Writes everything: drawings, order, bill of materials, cut list and plan, parts and summary.")
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
