package org.baywright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.concurrent.Callable;
import org.baywright.model.definition.Spelling;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Copies a starter definition, or lists them. */
@Command(
        name = "start",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = "Copies a starter definition to begin from; without a name, lists them.")
final class StartCommand implements Callable<Integer> {
    @Parameters(index = "0", arity = "0..1", paramLabel = "NAME", description = "Which starter.")
    private String name;

    @Parameters(
            index = "1",
            arity = "0..1",
            paramLabel = "FILE",
            description = "Where to; - prints it. Default: NAME.yaml. An existing file is left alone.")
    private String file;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        PrintWriter out = spec.commandLine().getOut();
        if (name == null) {
            for (String starter : Starters.names()) {
                out.printf("%-16s%s%n", starter, Starters.about(starter));
            }
            return Baywright.DONE;
        }
        if (!Starters.names().contains(name)) {
            throw new ParameterException(
                    spec.commandLine(),
                    "there is no starter '" + Spelling.shown(name) + "'; " + Spelling.remedy(name, Starters.names()));
        }
        copy(out);
        return Baywright.DONE;
    }

    private void copy(PrintWriter out) throws IOException {
        String target = file == null ? name + ".yaml" : file;
        if (target.equals("-")) {
            out.print(new String(Starters.text(name), java.nio.charset.StandardCharsets.UTF_8));
            out.flush();
            return;
        }
        try {
            Files.write(Path.of(target), Starters.text(name), StandardOpenOption.CREATE_NEW);
        } catch (FileAlreadyExistsException e) {
            throw new IOException(target + " exists already and is left alone; name another file", e);
        } catch (IOException e) {
            throw new IOException("cannot write " + target + ": " + e.getMessage(), e);
        }
        out.println(target);
    }
}
