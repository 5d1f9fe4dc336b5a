package org.baywright.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.ParseResult;

/** What could not be read or written is told in a line; anything else is a bug, told with its trace and a code of its own. */
final class Failures implements IExecutionExceptionHandler {
    @Override
    public int handleExecutionException(Exception failure, CommandLine line, ParseResult parsed) {
        if (failure instanceof IOException || failure instanceof UncheckedIOException) {
            line.getErr().println("baywright: " + failure.getMessage());
            return Baywright.NO_FILE;
        }
        line.getErr().println("baywright: this is a fault in Baywright, not in your definition; please report it:");
        failure.printStackTrace(line.getErr());
        return Baywright.FAULT;
    }
}
