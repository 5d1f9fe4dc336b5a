package org.baywright.cli;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.baywright.model.cladding.Building;
import org.baywright.render.output.OutputFolder;
import picocli.CommandLine.Mixin;

/** A command that leaves files, the parts and the summary always among them. */
abstract class WritingCommand extends ShedCommand {
    @Mixin
    private Target target;

    @Override
    final void work(Building building) throws IOException {
        Outputs outputs = new Outputs(building);
        Progress progress = new Progress(err());
        progress.say("drawing");
        Map<String, OutputFolder.Content> files = new LinkedHashMap<>(files(outputs));
        files.putAll(outputs.data());
        progress.say("writing");
        List<String> outdated = target.outdated(files);
        target.write(files);
        progress.done();
        target.names(files.keySet()).forEach(out()::println);
        target.names(outdated)
                .forEach(name -> err().println("advice: " + name
                        + " is of an earlier definition and no longer agrees; write it anew with make"));
    }

    /** The command's own files. */
    abstract Map<String, OutputFolder.Content> files(Outputs outputs);
}
