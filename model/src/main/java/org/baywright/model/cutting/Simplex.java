package org.baywright.model.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A revised simplex for the least cost of columns, each taken a number of times not under 0, that meet a right side:
 * primal steps after columns join or leave, dual steps after the right side changes.
 *
 * @source Chvátal, Linear Programming (1983); choice of the entering column: Forrest & Goldfarb (1992), Mathematical
 *     Programming 57, 341–374
 */
final class Simplex {
    /** What a barred column costs on top. */
    static final double BARRED = 1000;

    private static final double TINY = 1e-9;
    private static final double WORTH_ENTERING = 1e-8;
    private static final int MOST_CHANGES = 60;
    private static final int STEPS_PER_LOOK = 16;
    private static final int STEPS_PER_ROW = 10;
    private static final int STEPS_PER_COLUMN = 8;

    private final int rows;
    private final Deadline deadline;
    private final List<Column> columns = new ArrayList<>();
    private final int[] start;
    private final int[] basis;
    private final double[] level;
    private final double[] price;
    private final double[] right;
    private final Factors factors;
    private int steps;
    private boolean over;

    Simplex(int rows, Deadline deadline) {
        this.rows = rows;
        this.deadline = deadline;
        start = new int[rows];
        basis = new int[rows];
        level = new double[rows];
        price = new double[rows];
        right = new double[rows];
        factors = new Factors(rows);
    }

    /** The number of the new column. */
    int add(Column column) {
        column.reduced = column.cost() - column.dot(price);
        columns.add(column);
        return columns.size() - 1;
    }

    Column column(int j) {
        return columns.get(j);
    }

    int columns() {
        return columns.size();
    }

    /** Which column a row of the basis has. */
    int basic(int row) {
        return basis[row];
    }

    /** How often the basic column of a row is taken. */
    double level(int row) {
        return level[row];
    }

    /** What one more on the right side of a row costs. */
    double price(int row) {
        return price[row];
    }

    /** The price of each row, to read only. */
    double[] prices() {
        return price;
    }

    /** Starts from a basis of columns with one entry, one for each row. */
    void start(int[] columnOfRow) {
        System.arraycopy(columnOfRow, 0, start, 0, rows);
        System.arraycopy(columnOfRow, 0, basis, 0, rows);
        refresh();
    }

    /** Changes the right side; call {@link #repair} next, or {@link #optimise} where all levels stay positive. */
    void setRight(double[] wanted) {
        System.arraycopy(wanted, 0, right, 0, rows);
        findLevels();
    }

    /** Primal steps until no column helps. */
    void optimise() {
        // A new reference frame each time: weights only grow within one.
        columns.forEach(c -> c.weight = 1);
        while (!isOver()) {
            int entering = cheapestColumn();
            if (entering < 0 || !enter(entering)) {
                return;
            }
        }
    }

    /** Whether the deadline passed; looked at now and then, for a step is short. */
    private boolean isOver() {
        deadline.count((long) STEPS_PER_ROW * rows + (long) STEPS_PER_COLUMN * columns.size());
        over = over || ++steps % STEPS_PER_LOOK == 0 && deadline.passed();
        return over;
    }

    /** Whether the deadline passed before the last steps were done. */
    boolean isBrokenOff() {
        return over;
    }

    /** The column that promises most for its length in the reference frame. */
    private int cheapestColumn() {
        int best = -1;
        double most = 0;
        for (int j = 0; j < columns.size(); j++) {
            Column c = columns.get(j);
            double reduced = c.reduced;
            if (reduced < -WORTH_ENTERING && !c.basic && !c.barred && reduced * reduced > most * c.weight) {
                most = reduced * reduced / c.weight;
                best = j;
            }
        }
        return best;
    }

    private boolean enter(int j) {
        double[] direction = direction(columns.get(j));
        int leaving = -1;
        double step = Double.POSITIVE_INFINITY;
        for (int r = 0; r < rows; r++) {
            if (direction[r] > TINY) {
                double ratio = Math.max(0, level[r]) / direction[r];
                if (ratio < step - 1e-12 || ratio < step + 1e-12 && direction[r] > direction[leaving]) {
                    step = ratio;
                    leaving = r;
                }
            }
        }
        if (leaving >= 0) {
            double[] row = row(leaving);
            reweigh(leaving, j, direction[leaving]);
            pivot(leaving, j, direction, row);
        }
        return leaving >= 0;
    }

    private void reweigh(int r, int j, double pivot) {
        double weight = columns.get(j).weight;
        for (Column c : columns) {
            if (c.alpha != 0 && !c.basic && !c.barred) {
                double ratio = c.alpha / pivot;
                c.weight = Math.max(c.weight, ratio * ratio * weight);
            }
        }
        columns.get(basis[r]).weight = Math.max(1, weight / (pivot * pivot));
    }

    /** Dual steps until no level is negative; true unless that cannot be. */
    boolean repair() {
        while (!isOver()) {
            int leaving = -1;
            double lowest = -1e-8;
            for (int r = 0; r < rows; r++) {
                if (level[r] < lowest) {
                    lowest = level[r];
                    leaving = r;
                }
            }
            if (leaving < 0) {
                return true;
            }
            double[] row = row(leaving);
            int entering = dualEntering();
            if (entering < 0) {
                return false;
            }
            pivot(leaving, entering, direction(columns.get(entering)), row);
        }
        return false;
    }

    private int dualEntering() {
        int best = -1;
        double least = Double.POSITIVE_INFINITY;
        double bestAlpha = 0;
        for (int j = 0; j < columns.size(); j++) {
            Column c = columns.get(j);
            double alpha = -c.alpha;
            if (alpha > 1e-7 && !c.basic && !c.barred) {
                double ratio = Math.max(0, c.reduced) / alpha;
                if (ratio < least - 1e-12 || ratio < least + 1e-12 && alpha > bestAlpha) {
                    least = ratio;
                    bestAlpha = alpha;
                    best = j;
                }
            }
        }
        return best;
    }

    private double[] direction(Column c) {
        double[] direction = new double[rows];
        c.scatter(direction);
        factors.solve(direction);
        return direction;
    }

    /** A row of the inverse; each column out of the basis notes its entry in it. */
    private double[] row(int r) {
        double[] row = new double[rows];
        row[r] = 1;
        factors.solveTransposed(row);
        for (Column c : columns) {
            c.alpha = c.basic || c.barred ? 0 : c.dot(row);
        }
        return row;
    }

    private void pivot(int r, int j, double[] direction, double[] row) {
        Column in = columns.get(j);
        Column out = columns.get(basis[r]);
        double step = level[r] / direction[r];
        double rise = in.reduced / direction[r];
        for (int k = 0; k < rows; k++) {
            level[k] -= step * direction[k];
            price[k] += rise * row[k];
        }
        level[r] = step;
        for (Column c : columns) {
            c.reduced -= rise * c.alpha;
        }
        out.reduced = -rise;
        out.basic = false;
        in.basic = true;
        in.reduced = 0;
        basis[r] = j;
        factors.change(r, direction);
        if (factors.changes() >= MOST_CHANGES) {
            refresh();
        }
    }

    /** Factors the basis anew and works out levels and prices from it. */
    private void refresh() {
        while (!factored()) {
            // Columns that depend on others have given way to those the search started from.
            continue;
        }
        findLevels();
        findPrices();
    }

    private boolean factored() {
        Column[] basic = new Column[rows];
        Arrays.setAll(basic, r -> columns.get(basis[r]));
        int[] place = factors.factor(basic);
        int[] before = basis.clone();
        for (int j : before) {
            columns.get(j).basic = false;
        }
        boolean whole = true;
        for (int r = 0; r < rows; r++) {
            whole &= place[r] >= 0;
            basis[r] = place[r] < 0 ? start[r] : before[place[r]];
            columns.get(basis[r]).basic = true;
        }
        return whole;
    }

    private void findLevels() {
        System.arraycopy(right, 0, level, 0, rows);
        factors.solve(level);
    }

    /** Works out the prices anew, as after columns were barred or allowed. */
    void findPrices() {
        for (int r = 0; r < rows; r++) {
            price[r] = columns.get(basis[r]).cost();
        }
        factors.solveTransposed(price);
        for (Column c : columns) {
            c.reduced = c.basic ? 0 : c.cost - c.dot(price);
        }
    }
}
