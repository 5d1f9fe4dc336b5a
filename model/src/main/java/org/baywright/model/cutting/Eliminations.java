package org.baywright.model.cutting;

import java.util.Arrays;

/**
 * A product of elementary matrices, each a unit matrix but for one column, stored sparse. The n-th eliminates:
 *
 * <pre>  x[row] /= pivot, then x[i] −= factor[i] · x[row] for the other rows i of its column. </pre>
 *
 * @source Dantzig & Orchard-Hays (1954), Mathematical Tables and Other Aids to Computation 8, 64–67
 */
final class Eliminations {
    private int[] row = new int[64];
    private double[] pivot = new double[64];
    private int[] end = new int[64];
    private int count;
    private int[] index = new int[256];
    private double[] factor = new double[256];
    private int length;

    void clear() {
        count = 0;
        length = 0;
    }

    int count() {
        return count;
    }

    int row(int n) {
        return row[n];
    }

    /** One more entry of the elimination that {@link #close} will end. */
    void put(int i, double value) {
        if (length == index.length) {
            index = Arrays.copyOf(index, 2 * length);
            factor = Arrays.copyOf(factor, 2 * length);
        }
        index[length] = i;
        factor[length++] = value;
    }

    /** Ends an elimination: the entries put since the last one are its column without the pivot. */
    void close(int pivotRow, double pivotValue) {
        if (count == row.length) {
            row = Arrays.copyOf(row, 2 * count);
            pivot = Arrays.copyOf(pivot, 2 * count);
            end = Arrays.copyOf(end, 2 * count);
        }
        row[count] = pivotRow;
        pivot[count] = pivotValue;
        end[count++] = length;
    }

    void applyFirstToLast(double[] x) {
        for (int n = 0; n < count; n++) {
            apply(n, x);
        }
    }

    void applyLastToFirst(double[] x) {
        for (int n = count - 1; n >= 0; n--) {
            apply(n, x);
        }
    }

    void transposedFirstToLast(double[] y) {
        for (int n = 0; n < count; n++) {
            transposed(n, y);
        }
    }

    void transposedLastToFirst(double[] y) {
        for (int n = count - 1; n >= 0; n--) {
            transposed(n, y);
        }
    }

    private void apply(int n, double[] x) {
        double value = x[row[n]];
        if (value != 0) {
            value /= pivot[n];
            x[row[n]] = value;
            for (int k = start(n); k < end[n]; k++) {
                x[index[k]] -= factor[k] * value;
            }
        }
    }

    private void transposed(int n, double[] y) {
        double sum = y[row[n]];
        for (int k = start(n); k < end[n]; k++) {
            sum -= factor[k] * y[index[k]];
        }
        y[row[n]] = sum / pivot[n];
    }

    private int start(int n) {
        return n == 0 ? 0 : end[n - 1];
    }
}
