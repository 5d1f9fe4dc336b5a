package org.baywright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.baywright.model.cutting.Cutter;
import org.baywright.model.cutting.Saw;
import org.baywright.model.cutting.Stock;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The bars and the saw, as given on the command line. */
final class BarStock {
    private static final double KERF = 3;
    private static final double TRIM = 10;

    @Option(
            names = "--stock",
            split = ",",
            paramLabel = "MM[=PRICE]",
            description = "Lengths that bars come in, such as 8000,12000; with prices 8000=52.50,12000=79 the cost is"
                    + " made least instead of the length.")
    private List<String> lengths = new ArrayList<>();

    @Option(
            names = "--offcuts",
            split = ",",
            paramLabel = "MM[xCOUNT]",
            description = "Bars already in the yard, used first: 3200x2,1500.")
    private List<String> offcuts = new ArrayList<>();

    @Option(names = "--kerf", paramLabel = "MM", description = "What one saw cut takes; 3 when left out.")
    private double kerf = KERF;

    @Option(names = "--trim", paramLabel = "MM", description = "What each bar gives up at its ends; 10 when left out.")
    private double trim = TRIM;

    @Option(
            names = "--time",
            paramLabel = "S",
            description = "Seconds the search may take; 10 when left out. At the end of it the best plan so far is"
                    + " written, and that it is not proven best.")
    private double seconds = Cutter.DEFAULT_SECONDS;

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

    double seconds() {
        if (!(seconds > 0 && seconds <= 86_400)) {
            throw wrong("--time is more than 0 and at most a day of seconds, not " + seconds);
        }
        return seconds;
    }

    Saw saw() {
        try {
            return new Saw(kerf, trim);
        } catch (IllegalArgumentException e) {
            throw wrong("--kerf is from 0 to 1000 and --trim 0 or more: " + e.getMessage());
        }
    }

    boolean hasLengths() {
        return !lengths.isEmpty();
    }

    boolean hasOffcuts() {
        return !offcuts.isEmpty();
    }

    /** Whether bars are weighed by their price. */
    boolean priced() {
        return lengths.stream().anyMatch(l -> l.contains("="));
    }

    /** The off-cuts, then the lengths to buy. */
    List<Stock> stocks() {
        List<Stock> stocks = new ArrayList<>(yard());
        boolean priced = priced();
        for (String text : lengths) {
            String[] parts = text.split("=", -1);
            if (parts.length != (priced ? 2 : 1)) {
                throw wrong("--stock takes lengths, or lengths that all have a price: '" + text + "' was read");
            }
            double length = number("--stock", parts[0]);
            stocks.add(made("--stock", text, () -> priced ? priced(length, parts[1]) : Stock.length(length)));
        }
        return stocks;
    }

    private Stock priced(double length, String price) {
        double cost = number("--stock", price);
        if (!(cost > 0)) {
            throw wrong("--stock: a price is more than 0; bars that cost nothing are --offcuts");
        }
        return Stock.priced(length, cost);
    }

    /** Bars already in the yard. */
    List<Stock> yard() {
        return offcuts.stream().map(this::offcut).toList();
    }

    private Stock offcut(String text) {
        String[] parts = text.split("x", 2);
        double length = number("--offcuts", parts[0]);
        double count = parts.length == 2 ? number("--offcuts", parts[1]) : 1;
        if (count != Math.rint(count) || count < 1 || count > 1_000_000) {
            throw wrong("--offcuts: '" + text + "' was read; a whole number of bars follows the x");
        }
        return made("--offcuts", text, () -> Stock.offcut(length, (int) count));
    }

    private Stock made(String option, String text, Supplier<Stock> stock) {
        try {
            return stock.get();
        } catch (IllegalArgumentException e) {
            throw wrong(option + ": '" + text + "' was read; " + e.getMessage());
        }
    }

    private double number(String option, String text) {
        if (!text.strip().matches("\\d{1,12}(\\.\\d{0,6})?")) {
            throw wrong(option + ": '" + text + "' is not a number; write plain millimetres such as 8000");
        }
        return Double.parseDouble(text.strip());
    }

    private ParameterException wrong(String message) {
        return new ParameterException(spec.commandLine(), message);
    }
}
