package org.baywright.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import org.baywright.render.output.OutputFolder;
import picocli.CommandLine.Option;

/** Where a command writes. */
final class Target {
    @Option(names = "--out", required = true, paramLabel = "DIR", description = "The folder to write to.")
    private Path folder;

    Target() {}

    Target(Path folder) {
        this.folder = folder;
    }

    /** Writes every file or none, then names them, and advises on earlier files that no longer agree. */
    void leave(Map<String, OutputFolder.Content> files, PrintWriter out, PrintWriter err) throws IOException {
        List<String> outdated = outdated(files);
        write(files);
        names(files.keySet()).forEach(out::println);
        names(outdated)
                .forEach(name -> err.println("advice: " + name
                        + " is of an earlier definition and no longer agrees; write it anew with make"));
    }

    /** Writes every file or none; drawings also replace the single sheets of an earlier run. */
    private void write(Map<String, OutputFolder.Content> files) throws IOException {
        boolean drawn = files.containsKey(Outputs.DRAWINGS);
        boolean detailed = files.containsKey(PieceOutputs.PIECES);
        OutputFolder.write(
                folder, files, name -> drawn && Outputs.isSheet(name) || detailed && PieceOutputs.isPlate(name));
    }

    /**
     * The drawings or orders of an earlier run that this one leaves, when they were made from other parts.
     *
     * @param files what is about to be written
     */
    private List<String> outdated(Map<String, OutputFolder.Content> files) throws IOException {
        Path parts = folder.resolve(Outputs.PARTS);
        if (!Files.isRegularFile(parts)) {
            return List.of();
        }
        ByteArrayOutputStream now = new ByteArrayOutputStream();
        files.get(Outputs.PARTS).writeTo(now);
        boolean same = Arrays.equals(now.toByteArray(), Files.readAllBytes(parts));
        return Outputs.DOCUMENTS.stream()
                .filter(name -> !same && !files.containsKey(name) && Files.exists(folder.resolve(name)))
                .toList();
    }

    /** The files by their paths. */
    private List<String> names(Collection<String> files) {
        return files.stream().map(name -> folder.resolve(name).toString()).toList();
    }
}
