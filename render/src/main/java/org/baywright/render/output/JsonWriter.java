package org.baywright.render.output;

import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectWriter;
import java.io.IOException;
import java.util.Map;

/** Writes a summary as indented JSON, to be stored as UTF-8; keys keep their order and lines end with LF. */
public final class JsonWriter {
    private static final DefaultIndenter INDENT = new DefaultIndenter("  ", "\n");
    private static final ObjectWriter WRITER = new ObjectMapper()
            .writer(new DefaultPrettyPrinter().withObjectIndenter(INDENT).withArrayIndenter(INDENT));

    private JsonWriter() {}

    /** Writes text, numbers, truth values, and lists and maps of them. */
    public static void write(Map<String, ?> summary, Appendable out) throws IOException {
        requireNumbers(summary);
        out.append(WRITER.writeValueAsString(summary)).append('\n');
    }

    /** JSON has no word for infinity; Jackson would write it as text. */
    private static void requireNumbers(Object value) {
        if (value instanceof Double number && !Double.isFinite(number)) {
            throw new IllegalArgumentException("not a number that JSON can hold: " + number);
        }
        if (value instanceof Map<?, ?> map) {
            map.values().forEach(JsonWriter::requireNumbers);
        }
        if (value instanceof Iterable<?> list) {
            list.forEach(JsonWriter::requireNumbers);
        }
    }
}
