package org.baywright.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.ParseResult;

/** What could not be read or written is told in a line; anything else is a bug and keeps its trace. */
final class Failures implements IExecutionExceptionHandler {
    @Override
    public int handleExecutionException(Exception failure, CommandLine line, ParseResult parsed) throws Exception {
        if (failure instanceof IOException || failure instanceof UncheckedIOException) {
            line.getErr().println("baywright: " + failure.getMessage());
            return Baywright.NO_FILE;
        }
        throw failure;
    }
}
