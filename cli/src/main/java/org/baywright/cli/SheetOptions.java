package org.baywright.cli;

import org.baywright.render.sheet.SetScope;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** Which sheets the drawings have, and how they are written. */
final class SheetOptions {
    @Option(names = "--svg", description = "Writes each sheet as an SVG file too.")
    private boolean svg;

    @Option(
            names = "--sheets",
            paramLabel = "SET",
            converter = Scope.class,
            defaultValue = "all",
            description =
                    "council: the sheets a council asks for; all: flashing profiles and the rest too. Without it: all.")
    private SetScope scope;

    boolean svg() {
        return svg;
    }

    SetScope scope() {
        return scope;
    }

    /** Reads the name of a set. */
    static final class Scope implements ITypeConverter<SetScope> {
        @Override
        public SetScope convert(String value) {
            return switch (value) {
                case "council" -> SetScope.COUNCIL;
                case "all" -> SetScope.ALL;
                default ->
                    throw new TypeConversionException("'" + value + "' is no set of sheets; write council or all");
            };
        }
    }
}
