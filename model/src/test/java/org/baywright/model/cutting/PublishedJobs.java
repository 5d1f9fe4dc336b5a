package org.baywright.model.cutting;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** The published jobs among the test resources, whose optima another program has proven. */
final class PublishedJobs {
    private PublishedJobs() {}

    /** A job and its least cost, where that is proven. */
    record Published(String name, CuttingJob job, OptionalDouble leastCost) {
        @Override
        public String toString() {
            return name;
        }
    }

    static Stream<Published> singleLength() {
        return lines("single-length.txt").map(PublishedJobs::singleLength);
    }

    static Stream<Published> severalLengths() {
        return lines("several-lengths.txt").map(PublishedJobs::severalLengths);
    }

    private static Published singleLength(String[] field) {
        double capacity = Double.parseDouble(field[1]);
        // The optima are in bars, so a bar costs one.
        CuttingJob job = new CuttingJob(pieces(field[3]), List.of(Stock.priced(capacity, 1)), Saw.NONE);
        return new Published(field[0], job, number(field[2]));
    }

    private static Published severalLengths(String[] field) {
        Saw saw = new Saw(Double.parseDouble(field[1]), 0);
        List<Stock> stocks =
                Arrays.stream(field[3].split(" ")).map(PublishedJobs::stock).toList();
        return new Published(field[0], new CuttingJob(pieces(field[4]), stocks, saw), number(field[2]));
    }

    private static Stock stock(String text) {
        String[] part = text.split(":");
        return new Stock(Double.parseDouble(part[0]), Double.parseDouble(part[1]), Integer.parseInt(part[2]));
    }

    private static List<Piece> pieces(String text) {
        return Arrays.stream(text.split(" "))
                .map(p -> p.split("x"))
                .map(p -> Piece.square(Double.parseDouble(p[0]), Integer.parseInt(p[1])))
                .toList();
    }

    private static OptionalDouble number(String text) {
        return text.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(text));
    }

    private static Stream<String[]> lines(String resource) {
        try (InputStream in = PublishedJobs.class.getResourceAsStream(resource)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(line -> line.split("\\|"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
