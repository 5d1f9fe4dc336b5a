package org.baywright.render.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Stream;
import org.baywright.render.output.OutputFolder.Content;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OutputFolderTest {
    @TempDir
    Path folder;

    private static Content text(String text) {
        return out -> out.write(text.getBytes(StandardCharsets.UTF_8));
    }

    private static Map<String, Content> files(String a, Content second) {
        Map<String, Content> files = new LinkedHashMap<>();
        files.put("a.csv", text(a));
        files.put("b.pdf", second);
        return files;
    }

    private List<String> names() throws IOException {
        try (Stream<Path> inside = Files.list(folder)) {
            return inside.map(p -> p.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void filesAreMadeAndReplaced() throws IOException {
        Path deep = folder.resolve("out/deep");
        OutputFolder.write(deep, files("one", text("x")));
        OutputFolder.write(deep, files("two", text("y")));
        assertEquals("two", Files.readString(deep.resolve("a.csv")));
        assertEquals("y", Files.readString(deep.resolve("b.pdf")));
        try (Stream<Path> inside = Files.list(deep)) {
            assertEquals(2, inside.count(), "nothing else is left behind");
        }
    }

    @Test
    void aFailingWriterLeavesAllAsItWas() throws IOException {
        OutputFolder.write(folder, files("one", text("x")));
        Content failing = out -> {
            out.write(1);
            throw new IllegalStateException("bug");
        };
        assertThrows(IllegalStateException.class, () -> OutputFolder.write(folder, files("two", failing)));
        assertEquals("one", Files.readString(folder.resolve("a.csv")));
        assertEquals(List.of("a.csv", "b.pdf"), names());
    }

    @Test
    void aFailureMakesNoFolder() {
        Content failing = out -> {
            throw new IOException("disk full");
        };
        Path deep = folder.resolve("new/deep");
        assertThrows(IOException.class, () -> OutputFolder.write(deep, files("two", failing)));
        assertFalse(Files.exists(folder.resolve("new")));
    }

    @Test
    void aFailureBetweenTheMovesPutsTheFirstFileBack() throws IOException {
        Files.writeString(folder.resolve("a.csv"), "before");
        Content blocking = out -> {
            out.write(1);
            Files.createDirectories(folder.resolve("b.pdf/in-the-way"));
        };
        IOException e = assertThrows(IOException.class, () -> OutputFolder.write(folder, files("two", blocking)));
        assertTrue(e.getMessage().contains("b.pdf"), e.getMessage());
        assertEquals("before", Files.readString(folder.resolve("a.csv")));
        assertEquals(List.of("a.csv", "b.pdf"), names());
    }

    /** A writer that takes no notice of the interrupt has ended before all is cleared away. */
    @Test
    void anInterruptWaitsForTheWritersAndLeavesNothing() throws Exception {
        CountDownLatch started = new CountDownLatch(1);
        AtomicBoolean ended = new AtomicBoolean();
        Content slow = out -> {
            started.countDown();
            long until = System.nanoTime() + 300_000_000L;
            while (System.nanoTime() < until) {
                out.write(1);
            }
            ended.set(true);
        };
        AtomicReference<Throwable> told = new AtomicReference<>();
        Thread writer = new Thread(() -> {
            try {
                OutputFolder.write(folder.resolve("deep"), files("one", slow));
            } catch (IOException e) {
                told.set(e);
            }
        });
        writer.start();
        started.await();
        writer.interrupt();
        writer.join();
        assertTrue(ended.get());
        assertEquals("stopped while writing", told.get().getMessage());
        assertEquals(List.of(), names());
    }

    @Test
    void aFolderInTheWayIsNamed() throws IOException {
        Files.createDirectory(folder.resolve("b.pdf"));
        IOException e = assertThrows(IOException.class, () -> OutputFolder.write(folder, files("two", text("x"))));
        assertTrue(e.getMessage().contains(folder.resolve("b.pdf").toString()), e.getMessage());
        assertEquals(List.of("b.pdf"), names());
    }

    @Test
    void aFileInPlaceOfTheFolderIsNamed() throws IOException {
        Path file = Files.writeString(folder.resolve("out"), "mine");
        IOException e = assertThrows(IOException.class, () -> OutputFolder.write(file, files("two", text("x"))));
        assertTrue(e.getMessage().contains(file.toString()), e.getMessage());
        assertEquals("mine", Files.readString(file));
    }

    @Test
    void namesCannotLeaveTheFolder() {
        for (String name : List.of("../x", "/x", "a/b", "..", ".", "")) {
            assertThrows(
                    IllegalArgumentException.class, () -> OutputFolder.write(folder, Map.of(name, text("x"))), name);
        }
    }
}
