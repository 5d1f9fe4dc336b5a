package org.baywright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;

/** Says on one line what is being done, when somebody is looking. */
final class Progress {
    private static final String CLEAR = "\r\u001b[K";

    /** Where Linux tells what standard error is. */
    private static final Path STANDARD_ERROR = Path.of("/proc/self/fd/2");

    private final PrintWriter to;
    private final boolean watched;

    Progress(PrintWriter to) {
        this.to = to;
        this.watched = System.getenv("NO_COLOR") == null && isTerminal();
    }

    /** Java tells only of input and output together, so standard error itself is asked where the system can say. */
    private static boolean isTerminal() {
        try {
            String target = Files.readSymbolicLink(STANDARD_ERROR).toString();
            return target.startsWith("/dev/pts/") || target.startsWith("/dev/tty");
        } catch (IOException | UnsupportedOperationException e) {
            return System.console() != null;
        }
    }

    void say(String what) {
        if (watched) {
            to.print(CLEAR + what + " ...");
            to.flush();
        }
    }

    void done() {
        if (watched) {
            to.print(CLEAR);
            to.flush();
        }
    }
}
