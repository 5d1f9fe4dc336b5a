package org.baywright.cli;

import java.io.IOException;
import java.io.InputStream;
import java.util.LinkedHashMap;
import java.util.Map;

/** The starter definitions that travel in the jar: name and what each is. */
final class Starters {
    private static final Map<String, String> ALL = new LinkedHashMap<>();

    private Starters() {}

    /** Every starter's name, with a line on what it is. */
    static Map<String, String> all() {
        return ALL;
    }

    /** The text of a starter. */
    static byte[] text(String name) throws IOException {
        try (InputStream in = Starters.class.getResourceAsStream("/templates/" + name + ".yaml")) {
            return in.readAllBytes();
        }
    }
}
