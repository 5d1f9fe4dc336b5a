package org.baywright.render.dimension;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FigureTest {
    @ParameterizedTest
    @CsvSource({
        "6000, 6000",
        "1200000, 1200000",
        "5999.96, 6000",
        "6000.04, 6000",
        "3948.7, 3948.7",
        "3966.449, 3966.4",
        "0.06, 0.1",
        "35, 35",
        "0.04, 0",
        "2.95, 3"
    })
    void aLengthHasADecimalOnlyWhenItIsNotWhole(double mm, String printed) {
        assertEquals(printed, Figure.length(mm));
    }

    @ParameterizedTest
    @CsvSource({"4200, +4200", "0, ±0", "-0.01, ±0", "-150, -150", "5258.02, +5258", "-36.5, -36.5"})
    void aLevelHasItsSign(double mm, String printed) {
        assertEquals(printed, Figure.level(mm));
    }

    @ParameterizedTest
    @CsvSource({"10, 10°", "7.5, 7.5°", "9.999999, 10°", "12.34, 12.3°"})
    void anAngleHasOneDecimalAtMost(double degrees, String printed) {
        assertEquals(printed, Figure.angle(degrees));
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "500, 0.5", "5000, 5", "50, 0.05", "100000, 100", "10000, 10"})
    void aScaleBarReadsInMetres(double mm, String printed) {
        assertEquals(printed, Figure.metres(mm));
    }
}
