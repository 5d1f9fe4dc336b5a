package org.baywright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.baywright.model.catalogue.Section;
import org.baywright.model.cutting.Deadline;
import org.baywright.model.cutting.Saw;
import org.baywright.model.cutting.Stock;
import org.baywright.model.definition.Places;
import org.baywright.model.nesting.ShedCutting;
import org.baywright.model.parts.Shed;
import org.baywright.model.problem.Where;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The bars and the saw, as given on the command line. */
final class BarStock {
    @Option(
            names = "--stock",
            paramLabel = "[SECTION:]MM[=PRICE],...",
            description = {
                "Lengths that bars come in, such as 8000,12000; with prices 8000=52.50,12000=79 the cost is made least"
                        + " instead of the length.",
                "For a shed they stand in for the lengths of its definition, or the catalogue's, of every section or of one: 'SHS 100x100x5:"
                        + "6500,8000'. Can be given for each section."
            })
    private List<String> lengths = new ArrayList<>();

    @Option(
            names = "--offcuts",
            paramLabel = "[SECTION:]MM[xCOUNT],...",
            description = {
                "Bars already in the yard, used first: 3200x2,1500.",
                "For a shed of several sections, say of which they are: 'SHS 100x100x5:3200x2,1500'."
            })
    private List<String> offcuts = new ArrayList<>();

    @Option(
            names = "--kerf",
            paramLabel = "MM",
            description = "What one saw cut takes; for a shed as it is defined, else 3, when left out.")
    private Optional<Double> kerf = Optional.empty();

    @Option(
            names = "--trim",
            paramLabel = "MM",
            description = "What each bar gives up at its ends; for a shed as it is defined, else 10, when left out.")
    private Optional<Double> trim = Optional.empty();

    @Option(
            names = "--time",
            paramLabel = "S",
            description = "Seconds the search may take; 10 for a list when left out. At the end of it the best plan so"
                    + " far is written, and that it is not proven best. A shed's search is bounded by a count of steps"
                    + " when left out, about 5 seconds, and so gives the same plan each time.")
    private Optional<Double> seconds = Optional.empty();

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

    /** What was asked for, in its bounds; the search and all that goes with it promise to end by then. */
    double seconds(double usual) {
        double asked = seconds.orElse(usual);
        if (!(asked > 0 && asked <= 86_400)) {
            throw wrong("--time is more than 0 and at most a day of seconds, not " + asked);
        }
        return asked;
    }

    /** The saw for a list. */
    Saw saw() {
        return saw(Saw.USUAL);
    }

    private Saw saw(Saw usual) {
        try {
            return new Saw(kerf.orElse(usual.kerfMm()), trim.orElse(usual.endTrimMm()));
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

    /** The off-cuts, then the lengths to buy, for a list; of no section in particular. */
    List<Stock> stocks() {
        if (Stream.concat(lengths.stream(), offcuts.stream()).anyMatch(t -> t.contains(":"))) {
            throw wrong("--stock and --offcuts name no section with --list: plan each section with a list of its own");
        }
        List<Stock> stocks = new ArrayList<>();
        offcuts.forEach(text -> stocks.addAll(yard(text)));
        stocks.addAll(bought(String.join(",", lengths)));
        return stocks;
    }

    /** How a shed's members are cut from these bars, and from those of its definition where none are given. */
    ShedCutting cutting(Shed shed) {
        List<Section> sections = ShedCutting.sections(shed);
        lengths.forEach(text -> section(text, sections));
        for (String text : offcuts) {
            if (section(text, sections).isEmpty() && sections.size() > 1) {
                throw wrong("--offcuts: say of which section they are, such as '"
                        + sections.get(0).designation() + ":" + text + "'");
            }
        }
        return ShedCutting.of(
                shed,
                section -> stocks(shed, section, sections),
                saw(ShedCutting.saw(shed)),
                seconds.map(asked -> Deadline.in(seconds(asked))).orElse(ShedCutting.usual()));
    }

    /** Where the bars come from, for what is told of them: these options, or the definition. */
    Function<String, Where> places(Places definition) {
        return key -> {
            if (key.equals("saw.yard") && hasOffcuts()) {
                return Where.whole("--offcuts");
            }
            return key.equals("saw.stock") && hasLengths() ? Where.whole("--stock") : definition.where(key);
        };
    }

    private List<Stock> stocks(Shed shed, Section section, List<Section> sections) {
        List<Stock> stocks = new ArrayList<>(hasOffcuts() ? List.of() : ShedCutting.yard(shed, section));
        offcuts.stream()
                .filter(text -> section(text, sections).map(section::equals).orElse(true))
                .forEach(text -> stocks.addAll(yard(rest(text))));
        List<String> own = lengths.stream()
                .filter(text -> section(text, sections).equals(Optional.of(section)))
                .toList();
        List<String> general =
                lengths.stream().filter(text -> !text.contains(":")).toList();
        List<String> given = own.isEmpty() ? general : own;
        if (given.isEmpty()) {
            stocks.addAll(ShedCutting.lengths(shed, section));
        } else {
            stocks.addAll(bought(given.stream().map(BarStock::rest).collect(Collectors.joining(","))));
        }
        return stocks;
    }

    /** The section that a text names before its colon; empty when it names none. */
    private Optional<Section> section(String text, List<Section> sections) {
        int colon = text.indexOf(':');
        if (colon < 0) {
            return Optional.empty();
        }
        String name = text.substring(0, colon);
        Optional<Section> named = sections.stream()
                .filter(s -> plain(s.designation()).equals(plain(name)))
                .findFirst();
        if (named.isEmpty()) {
            throw wrong("'" + name + "' is not a section that this shed's bars are of; they are of "
                    + sections.stream().map(Section::designation).collect(Collectors.joining(", ")));
        }
        return named;
    }

    private static String plain(String name) {
        return name.replace(" ", "").toLowerCase(Locale.ROOT);
    }

    private static String rest(String text) {
        return text.substring(text.indexOf(':') + 1);
    }

    private List<Stock> bought(String list) {
        List<Stock> stocks = new ArrayList<>();
        for (String text : list.isEmpty() ? List.<String>of() : List.of(list.split(",", -1))) {
            String[] parts = text.split("=", -1);
            boolean priced = list.contains("=");
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
    private List<Stock> yard(String list) {
        return Stream.of(list.split(",", -1)).map(this::offcut).toList();
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
