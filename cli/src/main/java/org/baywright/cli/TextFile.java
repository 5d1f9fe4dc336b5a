package org.baywright.cli;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** Text that a command works on: a file, or standard input for {@code -}. */
final class TextFile {
    private TextFile() {}

    /** What problems call it. */
    static String name(String file) {
        return file.equals("-") ? "standard input" : file;
    }

    /** All of it. */
    static String read(String file) throws IOException {
        byte[] bytes = file.equals("-") ? System.in.readAllBytes() : bytes(file);
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            throw new IOException(name(file) + " is not UTF-8 text", e);
        }
    }

    private static byte[] bytes(String file) throws IOException {
        try {
            return Files.readAllBytes(Path.of(file));
        } catch (NoSuchFileException e) {
            throw new IOException("there is no file " + file, e);
        } catch (IOException e) {
            throw new IOException("cannot read " + file + ": " + e.getMessage(), e);
        }
    }
}
