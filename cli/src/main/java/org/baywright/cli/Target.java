package org.baywright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Map;
import org.baywright.render.output.OutputFolder;
import picocli.CommandLine.Option;

/** Where a command writes. */
final class Target {
    @Option(names = "--out", required = true, paramLabel = "DIR", description = "The folder to write to.")
    private Path folder;

    /** Writes every file or none, then names them. */
    void write(Map<String, OutputFolder.Content> files, PrintWriter out) throws IOException {
        OutputFolder.write(folder, files);
        files.keySet().forEach(name -> out.println(folder.resolve(name)));
    }
}
