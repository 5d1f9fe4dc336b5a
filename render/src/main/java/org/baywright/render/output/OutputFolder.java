package org.baywright.render.output;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InterruptedIOException;
import java.io.OutputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Writes several files into a folder, all or none. They are written in full beside their places first, in a hidden
 * folder, and then moved in one by one; if anything fails, what stood there before stands there again.
 */
public final class OutputFolder {
    /** Writes what goes into one file. */
    @FunctionalInterface
    public interface Content {
        /** Writes to a stream that the caller closes. */
        void writeTo(OutputStream out) throws IOException;
    }

    private final Path folder;
    private final Path fresh;
    private final Path former;

    private OutputFolder(Path folder, Path staging) throws IOException {
        this.folder = folder;
        this.fresh = Files.createDirectory(staging.resolve("new"));
        this.former = Files.createDirectory(staging.resolve("old"));
    }

    /**
     * Writes every file, named by its key, into the folder, which is made if need be.
     *
     * @throws IOException naming the path that could not be written
     */
    public static void write(Path folder, Map<String, Content> files) throws IOException {
        write(folder, files, name -> false);
    }

    /**
     * Writes every file into the folder and, once they stand there, removes files of an earlier run that these replace.
     *
     * @param replaced tells which names belong to a former output of the same kind
     * @throws IOException naming the path that could not be written
     */
    public static void write(Path folder, Map<String, Content> files, Predicate<String> replaced) throws IOException {
        files.keySet().forEach(OutputFolder::requirePlain);
        List<Path> made = missing(folder);
        boolean done = false;
        try {
            stage(folder, files, made);
            done = true;
            removeFormer(folder, files.keySet(), replaced);
        } catch (FileSystemException e) {
            throw new IOException("cannot write in " + folder + ": " + reason(e), e);
        } finally {
            if (!done) {
                removeEmpty(made);
            }
        }
    }

    private static void stage(Path folder, Map<String, Content> files, List<Path> made) throws IOException {
        Files.createDirectories(folder);
        try (Staging staging = Staging.in(folder, () -> removeEmpty(made))) {
            OutputFolder output = new OutputFolder(folder, staging.top());
            output.prepare(files);
            staging.unstopped(() -> output.replace(List.copyOf(files.keySet())));
        }
    }

    /** The files know nothing of each other, so they are made side by side; all have ended before one's failure is told. */
    private void prepare(Map<String, Content> files) throws IOException {
        ExecutorService workers =
                Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());
        try {
            List<Callable<Void>> tasks = new ArrayList<>();
            files.forEach((name, content) -> tasks.add(() -> {
                prepare(name, content);
                return null;
            }));
            for (Future<Void> task : workers.invokeAll(tasks)) {
                task.get();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new InterruptedIOException("stopped while writing");
        } catch (ExecutionException e) {
            throw failure(e.getCause());
        } finally {
            end(workers);
        }
    }

    /** Waits for those that an interrupt found at work: they would go on to write where all is being cleared away. */
    private static void end(ExecutorService workers) {
        workers.shutdownNow();
        boolean interrupted = false;
        boolean ended = false;
        while (!ended) {
            try {
                ended = workers.awaitTermination(1, TimeUnit.MINUTES);
            } catch (InterruptedException e) {
                interrupted = true;
            }
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    private static IOException failure(Throwable cause) throws IOException {
        if (cause instanceof RuntimeException e) {
            throw e;
        }
        if (cause instanceof Error e) {
            throw e;
        }
        return (IOException) cause;
    }

    private void prepare(String name, Content content) throws IOException {
        if (Files.isDirectory(folder.resolve(name))) {
            throw new IOException("cannot write " + folder.resolve(name) + ": a folder of that name is in the way");
        }
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(fresh.resolve(name)))) {
            content.writeTo(out);
        }
    }

    private void replace(List<String> names) throws IOException {
        int moved = 0;
        try {
            for (String name : names) {
                keep(name);
            }
            for (; moved < names.size(); moved++) {
                move(fresh.resolve(names.get(moved)), folder.resolve(names.get(moved)));
            }
        } finally {
            if (moved < names.size()) {
                restore(names.subList(0, moved));
            }
        }
    }

    private void keep(String name) throws IOException {
        Path target = folder.resolve(name);
        if (Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
            Files.copy(target, former.resolve(name), StandardCopyOption.COPY_ATTRIBUTES, LinkOption.NOFOLLOW_LINKS);
        }
    }

    private void restore(List<String> names) throws IOException {
        for (String name : names) {
            if (Files.exists(former.resolve(name), LinkOption.NOFOLLOW_LINKS)) {
                move(former.resolve(name), folder.resolve(name));
            } else {
                Files.delete(folder.resolve(name));
            }
        }
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    /** A name that stays inside the folder. */
    private static void requirePlain(String name) {
        Path path = Path.of(name);
        if (name.isBlank()
                || path.isAbsolute()
                || path.getNameCount() != 1
                || !path.normalize().equals(path)
                || name.equals("..")) {
            throw new IllegalArgumentException("not a plain file name: " + name);
        }
    }

    /** The folders that have to be made, innermost first. */
    private static List<Path> missing(Path folder) {
        return Stream.iterate(folder.toAbsolutePath(), p -> p != null && Files.notExists(p), Path::getParent)
                .toList();
    }

    /** Only while empty: someone else may have written there meanwhile. */
    private static void removeEmpty(List<Path> folders) throws IOException {
        for (Path path : folders) {
            try {
                Files.deleteIfExists(path);
            } catch (DirectoryNotEmptyException e) {
                return;
            }
        }
    }

    private static void removeFormer(Path folder, Set<String> written, Predicate<String> replaced) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                String name = file.getFileName().toString();
                if (!written.contains(name) && replaced.test(name)) {
                    Files.delete(file);
                }
            }
        }
    }

    private static String inWords(FileSystemException e) {
        if (e instanceof FileAlreadyExistsException) {
            return "it is a file, not a folder";
        }
        if (e instanceof NoSuchFileException) {
            return "no such folder can be made there";
        }
        return e instanceof AccessDeniedException ? "not allowed" : "the system refused";
    }

    private static String reason(FileSystemException e) {
        String why = e.getReason() == null ? inWords(e) : e.getReason();
        return e.getFile() == null ? why : e.getFile() + ": " + why;
    }
}
