package org.baywright.model.cutting;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.databind.RuntimeJsonMappingException;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.baywright.model.problem.Problem;
import org.baywright.model.problem.Where;

/**
 * A cut list from a table: {@code length_mm} and {@code quantity}, and {@code mark} and {@code section} when it has
 * them, in any order. Each section is cut from bars of its own.
 *
 * <p>@source RFC 4180 for the form of the table; a byte order mark, bare line feeds and empty lines are forgiven
 *
 * @param bySection the pieces of each section, in the order they were met; one without a name when there is no such
 *     column
 * @param lines the line of the file that each of those pieces is on
 * @param problems all that is wrong; the pieces are whole only when there is none
 */
public record PieceList(Map<String, List<Piece>> bySection, Map<String, List<Integer>> lines, List<Problem> problems) {
    static final String LENGTH = "length_mm";
    private static final String QUANTITY = "quantity";
    private static final String MARK = "mark";
    private static final String SECTION = "section";
    private static final List<String> COLUMNS = List.of(LENGTH, QUANTITY, MARK, SECTION);
    private static final String HEADER = "the first line must name the columns: length_mm,quantity and, if wanted, "
            + "mark,section, with commas between";

    /** After so many, more of the same would not help anybody. */
    private static final int MOST_PROBLEMS = 20;

    private static final int MOST_QUANTITY = 1_000_000;

    /** Copies the map, in its order, and the lists. */
    public PieceList {
        bySection = copied(bySection);
        lines = copied(lines);
        problems = List.copyOf(problems);
    }

    private static <T> Map<String, List<T>> copied(Map<String, List<T>> map) {
        Map<String, List<T>> copy = new LinkedHashMap<>();
        map.forEach((section, each) -> copy.put(section, List.copyOf(each)));
        return copy;
    }

    /**
     * Reads a list; no text makes it throw.
     *
     * @param source what problems call the file
     */
    public static PieceList read(String source, String text) {
        return new Reader(source).read(text);
    }

    /** How many pieces there are. */
    public long count() {
        return bySection.values().stream()
                .flatMap(List::stream)
                .mapToLong(Piece::quantity)
                .sum();
    }

    /** Reads line by line and keeps what it finds. */
    private static final class Reader {
        private final String source;
        private final Map<String, List<Piece>> bySection = new LinkedHashMap<>();
        private final Map<String, List<Integer>> lines = new LinkedHashMap<>();
        private final List<Problem> problems = new ArrayList<>();
        private List<String> columns = List.of();
        private boolean headed = true;
        private int line;

        Reader(String source) {
            this.source = source;
        }

        PieceList read(String text) {
            String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
            try (MappingIterator<String[]> rows = new CsvMapper()
                    .enable(CsvParser.Feature.WRAP_AS_ARRAY)
                    .readerFor(String[].class)
                    .readValues(plain)) {
                while (headed && problems.size() < MOST_PROBLEMS && rows.hasNextValue()) {
                    line = rows.getCurrentLocation().getLineNr();
                    String[] row = rows.nextValue();
                    row(Arrays.stream(row).map(String::strip).toList());
                }
            } catch (IOException | RuntimeJsonMappingException e) {
                problems.add(Problem.error(
                        "not-a-table", Where.whole(source), "the list cannot be read as a table", firstLine(e)));
            }
            if (problems.isEmpty() && bySection.isEmpty()) {
                problems.add(Problem.error("empty-list", Where.whole(source), "there are no pieces in it", HEADER));
            }
            return new PieceList(bySection, lines, problems);
        }

        private static String firstLine(Exception e) {
            return String.valueOf(e.getMessage()).lines().findFirst().orElse("");
        }

        private void row(List<String> cells) {
            if (cells.stream().allMatch(String::isEmpty)) {
                return;
            }
            if (columns.isEmpty()) {
                header(cells);
            } else if (cells.size() != columns.size()) {
                error(
                        "wrong-width",
                        "",
                        cells.size() + " values under " + columns.size() + " columns",
                        "a number with a comma in it makes two values: write it without the comma");
            } else {
                piece(cells);
            }
        }

        private void header(List<String> cells) {
            headed = true;
            columns = cells.stream().map(c -> c.toLowerCase(Locale.ROOT)).toList();
            List<String> unknown =
                    columns.stream().filter(c -> !COLUMNS.contains(c)).toList();
            boolean twice = columns.stream().distinct().count() < columns.size();
            if (!columns.contains(LENGTH) || !columns.contains(QUANTITY) || !unknown.isEmpty() || twice) {
                String read = String.join(",", cells);
                error("wrong-header", "", "'" + shown(read) + "' was read as the header", HEADER);
                headed = false;
            }
        }

        private String cell(List<String> cells, String column) {
            int i = columns.indexOf(column);
            return i < 0 ? "" : cells.get(i);
        }

        private void piece(List<String> cells) {
            OptionalDouble length = length(cell(cells, LENGTH));
            OptionalInt quantity = quantity(cell(cells, QUANTITY));
            if (length.isPresent() && quantity.isPresent()) {
                Piece piece = Piece.square(cell(cells, MARK), length.getAsDouble(), quantity.getAsInt());
                String section = cell(cells, SECTION);
                bySection.computeIfAbsent(section, s -> new ArrayList<>()).add(piece);
                lines.computeIfAbsent(section, s -> new ArrayList<>()).add(line);
            }
        }

        private OptionalDouble length(String text) {
            OptionalDouble number = number(text);
            if (number.isEmpty()) {
                error("not-a-number", LENGTH, "'" + shown(text) + "' is not a length", PLAIN);
            } else if (!(number.getAsDouble() >= 0.001 && number.getAsDouble() <= Stock.LONGEST_MM)) {
                error(
                        "out-of-range",
                        LENGTH,
                        "'" + shown(text) + "' was read; a length is over 0 and under 1 km",
                        PLAIN);
                return OptionalDouble.empty();
            }
            return number;
        }

        private static final String PLAIN = "write plain millimetres such as 2400 or 2400.5";

        private OptionalInt quantity(String text) {
            OptionalDouble number = number(text);
            double n = number.orElse(0);
            if (number.isEmpty() || n != Math.rint(n) || n < 1 || n > MOST_QUANTITY) {
                error(
                        "not-whole",
                        QUANTITY,
                        "'" + shown(text) + "' is not a quantity",
                        "write a whole number from 1 to " + MOST_QUANTITY);
                return OptionalInt.empty();
            }
            return OptionalInt.of((int) n);
        }

        /** Digits with at most one point: what Java would read besides, such as 1e3, 0x10 or NaN, nobody means here. */
        private static OptionalDouble number(String text) {
            return text.matches("[+-]?\\d{1,15}(\\.\\d{0,12})?")
                    ? OptionalDouble.of(Double.parseDouble(text))
                    : OptionalDouble.empty();
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
