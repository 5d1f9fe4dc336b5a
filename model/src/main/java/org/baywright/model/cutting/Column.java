package org.baywright.model.cutting;

/** A column of a linear program, sparse, and what the simplex notes about it. */
final class Column {
    final double cost;
    final int[] row;
    final double[] entry;
    /** Whether it may not be used: it then costs {@link Simplex#BARRED} more and does not enter. */
    boolean barred;

    boolean basic;
    /** Its squared length in the reference frame. */
    double weight = 1;
    /** Its cost less its worth at the present prices. */
    double reduced;
    /** Its entry in the row last looked at. */
    double alpha;

    Column(double cost, int[] row, double[] entry) {
        this.cost = cost;
        this.row = row;
        this.entry = entry;
    }

    double cost() {
        return barred ? cost + Simplex.BARRED : cost;
    }

    double dot(double[] vector) {
        double sum = 0;
        for (int k = 0; k < row.length; k++) {
            sum += entry[k] * vector[row[k]];
        }
        return sum;
    }

    void scatter(double[] into) {
        for (int k = 0; k < row.length; k++) {
            into[row[k]] += entry[k];
        }
    }
}
