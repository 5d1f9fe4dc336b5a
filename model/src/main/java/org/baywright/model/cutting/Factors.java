package org.baywright.model.cutting;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.stream.IntStream;

/**
 * A basis as the product of a lower and an upper triangle and the changes since, all sparse. Columns and rows with one
 * entry left are taken first, which nearly always is all there is; of what remains, short columns first, each pivoted in
 * the shortest row that is not too small.
 *
 * @source left-looking elimination: Gilbert & Peierls (1988), SIAM Journal on Scientific and Statistical Computing 9,
 *     862–874; single entries first: Suhl & Suhl (1990), ORSA Journal on Computing 2, 325–335
 */
final class Factors {
    private static final double SINGULAR = 1e-9;
    private static final double LARGE_ENOUGH = 0.1;

    private final int rows;
    private final Eliminations lower = new Eliminations();
    private final Eliminations upper = new Eliminations();
    private final Eliminations changes = new Eliminations();

    Factors(int rows) {
        this.rows = rows;
    }

    /**
     * Factors a basis.
     *
     * @return for each row the place of its column in the basis given, or −1 where the columns leave a row uncovered
     */
    int[] factor(Column[] basic) {
        lower.clear();
        upper.clear();
        changes.clear();
        return new Run(basic).run();
    }

    /** How many columns were changed since. */
    int changes() {
        return changes.count();
    }

    /** Notes that the column with a given direction took the place of the one in a row. */
    void change(int row, double[] direction) {
        for (int i = 0; i < rows; i++) {
            if (i != row && direction[i] != 0) {
                changes.put(i, direction[i]);
            }
        }
        changes.close(row, direction[row]);
    }

    /** Turns a right side into the levels of the basic columns. */
    void solve(double[] x) {
        lower.applyFirstToLast(x);
        upper.applyLastToFirst(x);
        changes.applyFirstToLast(x);
    }

    /** Turns values of the basic columns into values of the rows. */
    void solveTransposed(double[] y) {
        changes.transposedLastToFirst(y);
        upper.transposedFirstToLast(y);
        lower.transposedLastToFirst(y);
    }

    private final class Run {
        private final Column[] basic;
        private final int[] place = new int[rows];
        private final boolean[] taken;
        private final int[] inColumn;
        private final int[] inRow = new int[rows];
        private final int[][] columnsOf = new int[rows][];
        private final double[] work = new double[rows];

        Run(Column[] basic) {
            this.basic = basic;
            Arrays.fill(place, -1);
            taken = new boolean[basic.length];
            inColumn = new int[basic.length];
            for (Column c : basic) {
                for (int r : c.row) {
                    inRow[r]++;
                }
            }
            Arrays.setAll(columnsOf, r -> new int[inRow[r]]);
            int[] filled = new int[rows];
            for (int c = 0; c < basic.length; c++) {
                inColumn[c] = basic[c].row.length;
                for (int r : basic[c].row) {
                    columnsOf[r][filled[r]++] = c;
                }
            }
        }

        int[] run() {
            takeSingles();
            IntStream.range(0, basic.length)
                    .filter(c -> !taken[c])
                    .boxed()
                    .sorted(Comparator.comparingInt(c -> inColumn[c]))
                    .forEach(this::eliminate);
            return place;
        }

        private void takeSingles() {
            Deque<Integer> columns = new ArrayDeque<>();
            Deque<Integer> singleRows = new ArrayDeque<>();
            IntStream.range(0, basic.length).filter(c -> inColumn[c] == 1).forEach(columns::add);
            IntStream.range(0, rows).filter(r -> inRow[r] == 1).forEach(singleRows::add);
            while (!columns.isEmpty() || !singleRows.isEmpty()) {
                if (!columns.isEmpty()) {
                    int c = columns.poll();
                    if (!taken[c] && inColumn[c] == 1) {
                        take(c, openRow(c), columns, singleRows);
                    }
                } else {
                    int r = singleRows.poll();
                    if (place[r] < 0 && inRow[r] == 1) {
                        take(openColumn(r), r, columns, singleRows);
                    }
                }
            }
        }

        private int openRow(int c) {
            return Arrays.stream(basic[c].row)
                    .filter(r -> place[r] < 0)
                    .findFirst()
                    .orElseThrow();
        }

        private int openColumn(int r) {
            return Arrays.stream(columnsOf[r])
                    .filter(c -> !taken[c])
                    .findFirst()
                    .orElseThrow();
        }

        /** Pivots a column that has no entry in the rows of the lower triangle so far, so nothing fills up. */
        private void take(int c, int r, Deque<Integer> columns, Deque<Integer> singleRows) {
            Column column = basic[c];
            double pivot = 0;
            for (int k = 0; k < column.row.length; k++) {
                pivot = column.row[k] == r ? column.entry[k] : pivot;
            }
            boolean low = false;
            for (int k = 0; k < column.row.length; k++) {
                int i = column.row[k];
                if (i != r && place[i] >= 0) {
                    upper.put(i, column.entry[k]);
                } else if (i != r) {
                    lower.put(i, column.entry[k] / pivot);
                    low = true;
                }
            }
            close(c, r, pivot, low);
            for (int i : column.row) {
                if (place[i] < 0 && --inRow[i] == 1) {
                    singleRows.add(i);
                }
            }
            for (int other : columnsOf[r]) {
                if (!taken[other] && --inColumn[other] == 1) {
                    columns.add(other);
                }
            }
        }

        private void close(int c, int r, double pivot, boolean low) {
            upper.close(r, pivot);
            if (low) {
                lower.close(r, 1);
            }
            place[r] = c;
            taken[c] = true;
        }

        private void eliminate(int c) {
            Arrays.fill(work, 0);
            basic[c].scatter(work);
            lower.applyFirstToLast(work);
            int r = pivotRow();
            if (r < 0) {
                return;
            }
            boolean low = false;
            for (int i = 0; i < rows; i++) {
                if (work[i] != 0 && i != r) {
                    if (place[i] >= 0) {
                        upper.put(i, work[i]);
                    } else {
                        lower.put(i, work[i] / work[r]);
                        low = true;
                    }
                }
            }
            close(c, r, work[r], low);
        }

        private int pivotRow() {
            double largest = 0;
            for (int i = 0; i < rows; i++) {
                largest = place[i] < 0 ? Math.max(largest, Math.abs(work[i])) : largest;
            }
            int best = -1;
            for (int i = 0; i < rows && largest > SINGULAR; i++) {
                boolean large = place[i] < 0 && Math.abs(work[i]) >= LARGE_ENOUGH * largest;
                if (large && (best < 0 || inRow[i] < inRow[best])) {
                    best = i;
                }
            }
            return best;
        }
    }
}
