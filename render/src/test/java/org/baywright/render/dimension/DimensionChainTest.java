package org.baywright.render.dimension;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.baywright.model.geometry.Vec2;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DimensionChainTest {
    private static DimensionChain chain(double... xs) {
        List<Vec2> points = Arrays.stream(xs).mapToObj(x -> new Vec2(x, x / 7)).toList();
        return DimensionChain.through(points, Direction.HORIZONTAL);
    }

    private static List<String> printed(DimensionChain chain, int roomOfDigits) {
        return chain.printed(d -> d.value() / 1000 * 2 >= d.text().length() - roomOfDigits).stream()
                .map(Dimension::text)
                .toList();
    }

    @ParameterizedTest
    @CsvSource({"HORIZONTAL, 3", "VERTICAL, 4", "ALIGNED, 5"})
    void theValueIsTheDistanceAlongTheDirection(Direction direction, double value) {
        assertEquals(
                value, Dimension.of(new Vec2(5, 5), new Vec2(2, 9), direction).value());
    }

    /** A hole 35 outside its string line must not read as 35 inside it. */
    @ParameterizedTest
    @CsvSource({"235, 1, 235", "-35, 1, -35", "-235, -1, 235", "35, -1, -35", "-0.01, 1, 0"})
    void runningDimensionsPrintAMinusBehindTheirDatum(double to, double onwards, String text) {
        Vec2 way = new Vec2(onwards, onwards);
        Vec2 datum = new Vec2(7, 7);
        assertEquals(
                text,
                Dimension.running(datum, new Vec2(7 + to, 9), Direction.HORIZONTAL, way)
                        .text());
        assertEquals(
                text,
                Dimension.running(datum, new Vec2(9, 7 + to), Direction.VERTICAL, way)
                        .text());
    }

    @Test
    void pointsAreOrderedAndCountOnce() {
        assertEquals(
                List.of("100", "5900", "6000"),
                chain(12000, 0, 100, 6000, 100.01).segments().stream()
                        .map(Dimension::text)
                        .toList());
    }

    @Test
    void equalNeighboursStayApartWhileTheirTextsFit() {
        assertEquals(List.of("6000", "6000", "6000"), printed(chain(0, 6000, 12000, 18000), 0));
    }

    @Test
    void equalNeighboursBecomeOneWhenTheirTextsDoNotFit() {
        assertEquals(
                List.of("500", "20 × 1000 = 20000", "500"),
                printed(
                        chain(DoubleStream.concat(
                                        DoubleStream.of(-500, 20500),
                                        IntStream.rangeClosed(0, 20).mapToDouble(i -> i * 1000.0))
                                .toArray()),
                        0));
    }

    @Test
    void aRunTooShortForItsOwnTextStaysApart() {
        assertEquals(List.of("100", "100", "9000"), printed(chain(0, 100, 200, 9200), 0));
    }

    @Test
    void thereIsNoDimensionOfNothing() {
        Vec2 a = new Vec2(1, 2);
        assertThrows(IllegalArgumentException.class, () -> Dimension.of(a, new Vec2(1, 9), Direction.HORIZONTAL));
        assertThrows(IllegalArgumentException.class, () -> chain(7, 7));
    }
}
