package org.baywright.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.stream.Stream;
import org.baywright.model.definition.Spelling;
import picocli.CommandLine;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ParameterException;

/** Tells wrong use in a line, what was probably meant, and where help is; the help itself would push the line away. */
final class WrongUse implements IParameterExceptionHandler {
    @Override
    public int handleParseException(ParameterException wrong, String[] arguments) {
        CommandLine command = wrong.getCommandLine();
        PrintWriter err = command.getErr();
        List<String> unmatched = command.getUnmatchedArguments();
        err.println("baywright: " + (unmatched.isEmpty() ? wrong.getMessage() : unmatched(command, unmatched.get(0))));
        err.println("       for help: " + command.getCommandSpec().qualifiedName() + " --help");
        return Baywright.WRONG_USE;
    }

    /** A word that has no place: at the top a command is missed, later an option or a file too many. */
    private static String unmatched(CommandLine command, String word) {
        String shown = "'" + Spelling.shown(word) + "'";
        if (word.startsWith("-") && word.length() > 1) {
            String option = word.split("=", 2)[0];
            return shown + " is not an option here; " + Spelling.remedy(option, options(command));
        }
        return command.getSubcommands().isEmpty()
                ? shown + " is one word too many; text with spaces goes in quotes"
                : shown + " is not a command; "
                        + Spelling.remedy(word, command.getSubcommands().keySet());
    }

    private static List<String> options(CommandLine command) {
        return command.getCommandSpec().options().stream()
                .flatMap(option -> Stream.of(option.names()))
                .filter(name -> name.startsWith("--"))
                .toList();
    }
}
