package org.baywright.model.takeoff;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.databind.RuntimeJsonMappingException;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.baywright.model.problem.Problem;
import org.baywright.model.problem.Where;

/**
 * What articles cost, by the names that the bill prints.
 *
 * <p>A table with the columns {@code item,unit,price} in any order, and {@code currency} when it has one. Lines that
 * start with {@code #} are comments. @source RFC 4180 for the form of the table; a byte order mark, bare line feeds and
 * empty lines are forgiven
 *
 * @param prices by item
 * @param currency as printed; may be empty
 * @param problems all that is wrong with the file; the prices are whole only when there is none
 */
public record PriceList(Map<String, Price> prices, String currency, List<Problem> problems) {
    /** A price for one of a unit, such as {@code m} or {@code kg}. */
    public record Price(String unit, BigDecimal amount, int line) {}

    /** Keeps the order. */
    public PriceList {
        prices = Collections.unmodifiableMap(new LinkedHashMap<>(prices));
        problems = List.copyOf(problems);
    }

    /**
     * Reads a list; no text makes it throw.
     *
     * @param source what problems call the file
     */
    public static PriceList read(String source, String text) {
        return new Reader(source).read(text);
    }

    /** Reads line by line and keeps what it finds. */
    private static final class Reader {
        private static final List<String> MUST = List.of("item", "unit", "price");
        private static final String CURRENCY = "currency";
        private static final List<String> UNITS =
                Arrays.stream(BillLine.Unit.values()).map(BillLine.Unit::symbol).toList();
        private static final String HEADER =
                "the first line must name the columns: item,unit,price and, if wanted, currency, with commas between";
        private static final String PLAIN =
                "write a plain number such as 1250 or 12.50, without a currency sign and" + " without a thousands mark";

        /** After so many, more of the same would not help anybody. */
        private static final int MOST_PROBLEMS = 20;

        private final String source;
        private final Map<String, Price> prices = new LinkedHashMap<>();
        private final List<Problem> problems = new ArrayList<>();
        private List<String> columns = List.of();
        private String currency = "";
        private int line;

        Reader(String source) {
            this.source = source;
        }

        PriceList read(String text) {
            String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
            boolean headed = true;
            try (MappingIterator<String[]> rows = new CsvMapper()
                    .enable(CsvParser.Feature.WRAP_AS_ARRAY)
                    .readerFor(String[].class)
                    .readValues(plain)) {
                while (headed && problems.size() < MOST_PROBLEMS && rows.hasNextValue()) {
                    line = rows.getCurrentLocation().getLineNr();
                    headed = row(
                            Arrays.stream(rows.nextValue()).map(String::strip).toList());
                }
            } catch (IOException | RuntimeJsonMappingException e) {
                String why = String.valueOf(e.getMessage()).lines().findFirst().orElse("");
                problems.add(
                        Problem.error("not-a-table", Where.whole(source), "the prices cannot be read as a table", why));
            }
            if (problems.isEmpty() && columns.isEmpty()) {
                problems.add(Problem.error("empty-list", Where.whole(source), "there is nothing in it", HEADER));
            }
            return new PriceList(prices, currency, problems);
        }

        /** False when the header is wrong, since no later line could be right. */
        private boolean row(List<String> cells) {
            if (cells.stream().allMatch(String::isEmpty) || cells.get(0).startsWith("#")) {
                return true;
            }
            if (columns.isEmpty()) {
                return header(cells);
            }
            if (cells.size() != columns.size()) {
                error(
                        "wrong-width",
                        "",
                        cells.size() + " values under " + columns.size() + " columns",
                        "a name with a comma stands in quotes; a number has no thousands mark");
            } else {
                price(cells);
            }
            return true;
        }

        private boolean header(List<String> cells) {
            columns = cells.stream().map(c -> c.toLowerCase(Locale.ROOT)).toList();
            boolean known = columns.stream().allMatch(c -> MUST.contains(c) || c.equals(CURRENCY));
            boolean once = columns.stream().distinct().count() == columns.size();
            if (!columns.containsAll(MUST) || !known || !once) {
                error("wrong-header", "", "'" + shown(String.join(",", cells)) + "' was read as the header", HEADER);
                return false;
            }
            return true;
        }

        private String cell(List<String> cells, String column) {
            int i = columns.indexOf(column);
            return i < 0 ? "" : cells.get(i);
        }

        private void price(List<String> cells) {
            int before = problems.size();
            String item = cell(cells, "item");
            String unit = cell(cells, "unit");
            String number = cell(cells, "price");
            if (item.isEmpty()) {
                error("no-item", "item", "a price without an item", "write the item as the bill prints it");
            }
            if (!UNITS.contains(unit)) {
                error("unknown-unit", "unit", "'" + shown(unit) + "' is not a unit", "use one of " + UNITS);
            }
            if (!number.matches("[+-]?\\d{1,12}(\\.\\d{0,6})?")) {
                error("not-a-number", "price", "'" + shown(number) + "' is not a price", PLAIN);
            } else if (number.startsWith("-")) {
                error(
                        "negative",
                        "price",
                        "'" + shown(number) + "' is below zero",
                        "leave the line out if it has no price");
            }
            currency(cell(cells, CURRENCY));
            Price former = prices.get(item);
            if (former != null) {
                error(
                        "given-twice",
                        "item",
                        "'" + shown(item) + "' has a price already, in line " + former.line(),
                        "keep one of the two");
            }
            if (problems.size() == before) {
                prices.put(item, new Price(unit, new BigDecimal(number), line));
            }
        }

        private void currency(String given) {
            if (currency.isEmpty()) {
                currency = given;
            } else if (!given.isEmpty() && !given.equals(currency)) {
                error(
                        "two-currencies",
                        CURRENCY,
                        "'" + shown(given) + "' after '" + shown(currency) + "'",
                        "one list has one currency");
            }
        }

        private static String shown(String text) {
            String plain = text.replaceAll("\\p{Cntrl}", " ");
            return plain.length() > 60 ? plain.substring(0, 60) + "…" : plain;
        }

        private void error(String code, String column, String message, String remedy) {
            problems.add(Problem.error(code, new Where(source, column, line, 1), message, remedy));
        }
    }
}
