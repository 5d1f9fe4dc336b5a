package org.baywright.cli;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;

/** The starter definitions that travel in the jar. */
final class Starters {
    private static final List<String> NAMES = List.of(
            "lean-shelter", "hay-shed", "machinery-shed", "twin-lean-to", "workshop", "lifting-shed", "own-section");

    private Starters() {}

    /** The name of every starter, smallest shed first. */
    static List<String> names() {
        return NAMES;
    }

    /** The text of a starter. */
    static byte[] text(String name) throws IOException {
        try (InputStream in = Starters.class.getResourceAsStream("/templates/" + name + ".yaml")) {
            return in.readAllBytes();
        }
    }

    /** What a starter is, from its first comment line. */
    static String about(String name) throws IOException {
        return new String(text(name), java.nio.charset.StandardCharsets.UTF_8)
                .lines()
                .findFirst()
                .orElse("")
                .replaceFirst("^#\\s*", "");
    }
}
