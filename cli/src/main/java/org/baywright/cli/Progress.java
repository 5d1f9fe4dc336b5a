package org.baywright.cli;

import java.io.PrintWriter;

/** Says on one line what is being done, when somebody is looking. */
final class Progress {
    private static final String CLEAR = "\r\u001b[K";

    private final PrintWriter to;
    private final boolean watched;

    Progress(PrintWriter to) {
        this.to = to;
        this.watched = System.console() != null;
    }

    void say(String what) {
        if (watched) {
            to.print((coloured() ? CLEAR : "") + what + " ..." + (coloured() ? "" : System.lineSeparator()));
            to.flush();
        }
    }

    void done() {
        if (watched && coloured()) {
            to.print(CLEAR);
            to.flush();
        }
    }

    private static boolean coloured() {
        return System.getenv("NO_COLOR") == null;
    }
}
