package org.baywright.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.HelpCommand;
import picocli.CommandLine.TypeConversionException;

/** The command line. */
@Command(
        name = "baywright",
        description = "Turns a short definition of a steel shed into drawings, a bill of materials and orders.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        synopsisSubcommandLabel = "COMMAND",
        subcommands = {
            StartCommand.class,
            CheckCommand.class,
            DrawCommand.class,
            OrderCommand.class,
            CutCommand.class,
            SetOutCommand.class,
            PiecesCommand.class,
            ShopCommand.class,
            MakeCommand.class,
            HelpCommand.class
        },
        footer = {
            "",
            "Exit codes: 0 done, 1 the definition has problems, 2 wrong use,",
            "3 could not read or write, 70 a fault in Baywright.",
            "Drawings and orders are drafts: a licensed engineer must design and certify",
            "the building."
        })
public final class Baywright {
    /** What a run ends with. */
    static final int DONE = 0;

    static final int PROBLEMS = 1;
    static final int WRONG_USE = 2;
    static final int NO_FILE = 3;

    /** A bug; the software error of the sysexits convention. */
    static final int FAULT = 70;

    private Baywright() {}

    /** Runs one command and ends the process with its code. */
    public static void main(String[] args) {
        System.exit(run(args, utf8(System.out), utf8(System.err)));
    }

    /** Runs one command. */
    static int run(String[] args, PrintWriter out, PrintWriter err) {
        CommandLine line = new CommandLine(new Baywright())
                .setOut(out)
                .setErr(err)
                .registerConverter(double.class, Baywright::number)
                .registerConverter(Double.class, Baywright::number)
                .setParameterExceptionHandler(new WrongUse())
                .setExecutionExceptionHandler(new Failures());
        if (System.getenv("NO_COLOR") != null) {
            line.setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
        }
        return line.execute(args.length == 0 ? new String[] {"--help"} : args);
    }

    /** Plain digits only: Java would also take 3f, NaN or 0x1p3. */
    private static double number(String text) {
        if (!text.matches("[-+]?\\d{1,12}(\\.\\d{0,9})?")) {
            throw new TypeConversionException("'" + text + "' is not a number; write plain digits such as 3.2");
        }
        return Double.parseDouble(text);
    }

    private static PrintWriter utf8(java.io.PrintStream stream) {
        return new PrintWriter(stream, true, StandardCharsets.UTF_8);
    }
}
