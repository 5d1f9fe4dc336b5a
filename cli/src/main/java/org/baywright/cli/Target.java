package org.baywright.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import org.baywright.render.output.OutputFolder;
import picocli.CommandLine.Option;

/** Where a command writes. */
final class Target {
    @Option(names = "--out", required = true, paramLabel = "DIR", description = "The folder to write to.")
    private Path folder;

    /** Writes every file or none; drawings also replace the single sheets of an earlier run. */
    void write(Map<String, OutputFolder.Content> files) throws IOException {
        boolean drawn = files.containsKey(Outputs.DRAWINGS);
        OutputFolder.write(folder, files, name -> drawn && Outputs.isSheet(name));
    }

    /** The files by their paths. */
    List<String> names(Collection<String> files) {
        return files.stream().map(name -> folder.resolve(name).toString()).toList();
    }
}
