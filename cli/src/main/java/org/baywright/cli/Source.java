package org.baywright.cli;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.baywright.model.catalogue.Catalogue;
import org.baywright.model.definition.DefinitionReader;
import org.baywright.model.definition.Reading;
import org.baywright.model.problem.Problem;
import org.baywright.model.rules.ShedRules;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The definition a command works on: a file or standard input, with what was set on the command line. */
final class Source {
    @Parameters(paramLabel = "FILE", description = "The definition, YAML or JSON; - reads standard input.")
    private String file;

    @Option(
            names = "--set",
            paramLabel = "KEY=VALUE",
            description = "Sets a key of the definition, dotted: --set roofPitch=12 --set leanTos[0].width=4000.")
    private List<String> settings = new ArrayList<>();

    /** What came of reading and checking: every problem, and the definition when none stops the work. */
    Reading read() throws IOException {
        Reading reading = DefinitionReader.read(name(), text(), settings, Catalogue.shipped());
        if (reading.definition().isEmpty()) {
            return reading;
        }
        List<Problem> all = new ArrayList<>(reading.problems());
        all.addAll(ShedRules.check(reading.definition().get(), reading.places()::where));
        boolean stopped = all.stream().anyMatch(Problem::isError);
        return new Reading(stopped ? Optional.empty() : reading.definition(), all, reading.places());
    }

    private String name() {
        return fromInput() ? "standard input" : file;
    }

    private boolean fromInput() {
        return file.equals("-");
    }

    private String text() throws IOException {
        byte[] bytes = fromInput() ? System.in.readAllBytes() : bytes();
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            throw new IOException(name() + " is not UTF-8 text", e);
        }
    }

    private byte[] bytes() throws IOException {
        try {
            return Files.readAllBytes(Path.of(file));
        } catch (NoSuchFileException e) {
            throw new IOException("there is no file " + file, e);
        } catch (IOException e) {
            throw new IOException("cannot read " + file + ": " + e.getMessage(), e);
        }
    }
}
