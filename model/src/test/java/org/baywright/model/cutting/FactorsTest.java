package org.baywright.model.cutting;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class FactorsTest {
    private static final int ROWS = 60;

    private final Random random = new Random(7);
    private final Factors factors = new Factors(ROWS);

    @Test
    void basisTimesItsSolutionIsTheRightSide() {
        for (int k = 0; k < 20; k++) {
            Column[] basis = factored();
            double[] right = random.doubles(ROWS, -5, 5).toArray();
            assertArrayEquals(right, times(basis, solved(right)), 1e-6);
        }
    }

    @Test
    void pricesMeetTheCostsOfTheBasis() {
        for (int k = 0; k < 20; k++) {
            Column[] basis = factored();
            double[] cost = random.doubles(ROWS, -5, 5).toArray();
            double[] price = cost.clone();
            factors.solveTransposed(price);
            assertArrayEquals(
                    cost, Arrays.stream(basis).mapToDouble(c -> c.dot(price)).toArray(), 1e-6);
        }
    }

    @Test
    void changedColumnsAreTakenIn() {
        Column[] basis = factored();
        for (int change = 1; change <= 30; change++) {
            Column in = column(5);
            double[] direction = new double[ROWS];
            in.scatter(direction);
            factors.solve(direction);
            int row = IntStream.range(0, ROWS)
                    .boxed()
                    .max((a, b) -> Double.compare(Math.abs(direction[a]), Math.abs(direction[b])))
                    .orElseThrow();
            factors.change(row, direction);
            basis[row] = in;
            assertEquals(change, factors.changes());
        }
        double[] right = random.doubles(ROWS, 0, 5).toArray();
        assertArrayEquals(right, times(basis, solved(right)), 1e-6);
    }

    @Test
    void columnsThatDependOnOthersLeaveARowUncovered() {
        Column[] basis = basis();
        basis[3] = basis[8];
        int[] place = factors.factor(basis);
        assertEquals(1, Arrays.stream(place).filter(p -> p < 0).count());
    }

    /** A basis in the order of its rows, factored. */
    private Column[] factored() {
        Column[] basis = basis();
        int[] place = factors.factor(basis);
        assertTrue(Arrays.stream(place).allMatch(p -> p >= 0));
        return Arrays.stream(place).mapToObj(p -> basis[p]).toArray(Column[]::new);
    }

    /** Some columns with one entry, some that hang together; no diagonal is small, so it has an inverse. */
    private Column[] basis() {
        Column[] basis = new Column[ROWS];
        for (int c = 0; c < ROWS; c++) {
            Column column = column(c % 3 == 0 ? 1 : 4);
            column.row[0] = c;
            column.entry[0] = 20;
            for (int k = 1; k < column.row.length; k++) {
                column.row[k] = (c + 7 * k) % ROWS;
            }
            basis[c] = column;
        }
        return basis;
    }

    private Column column(int entries) {
        int[] row = random.ints(0, ROWS).distinct().limit(entries).toArray();
        return new Column(1, row, random.doubles(entries, 1, 4).toArray());
    }

    private double[] solved(double[] right) {
        double[] x = right.clone();
        factors.solve(x);
        return x;
    }

    private static double[] times(Column[] basis, double[] x) {
        double[] sum = new double[ROWS];
        for (int r = 0; r < ROWS; r++) {
            for (int k = 0; k < basis[r].row.length; k++) {
                sum[basis[r].row[k]] += basis[r].entry[k] * x[r];
            }
        }
        return sum;
    }
}
