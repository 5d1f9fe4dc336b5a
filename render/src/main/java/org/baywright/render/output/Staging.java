package org.baywright.render.output;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * The hidden folder that files are made in before they are moved to their places. It is gone at the end, also when the
 * process is told to stop meanwhile.
 */
final class Staging implements AutoCloseable {
    /** Makers of files go on while a process stops, and may leave one more behind. */
    private static final int TRIES = 20;

    private final Path top;
    private final Step after;
    private final Thread onStop = new Thread(this::stopped);

    /** Something done with files. */
    @FunctionalInterface
    interface Step {
        void run() throws IOException;
    }

    private Staging(Path top, Step after) {
        this.top = top;
        this.after = after;
    }

    /**
     * A new one.
     *
     * @param after what is done once it is gone because the process stops
     */
    static Staging in(Path folder, Step after) throws IOException {
        Staging staging = new Staging(Files.createTempDirectory(folder, ".unfinished-"), after);
        Runtime.getRuntime().addShutdownHook(staging.onStop);
        return staging;
    }

    Path top() {
        return top;
    }

    /** Does what must not be left half done: a process that is told to stop waits for it. */
    synchronized void unstopped(Step step) throws IOException {
        step.run();
    }

    private synchronized void stopped() {
        for (int i = 0; i < TRIES; i++) {
            try {
                remove();
                after.run();
                return;
            } catch (IOException e) {
                pause();
            }
        }
    }

    private static void pause() {
        try {
            Thread.sleep(20);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void remove() throws IOException {
        if (Files.notExists(top)) {
            return;
        }
        List<Path> deepestFirst;
        try (Stream<Path> inside = Files.walk(top)) {
            deepestFirst = inside.sorted(Comparator.reverseOrder()).toList();
        }
        for (Path path : deepestFirst) {
            Files.deleteIfExists(path);
        }
    }

    @Override
    public void close() throws IOException {
        try {
            Runtime.getRuntime().removeShutdownHook(onStop);
        } catch (IllegalStateException e) {
            return; // The process is stopping, and the hook clears up.
        }
        remove();
    }
}
