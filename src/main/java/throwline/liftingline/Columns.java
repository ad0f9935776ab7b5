package throwline.liftingline;

import java.util.Arrays;

/**
 * A square matrix for products with a vector, kept column by column: the machine then works on several rows at a time, which
 * is four times as fast as row by row. Immutable.
 */
final class Columns {

    private final double[][] columns;

    /** The matrix with these rows. */
    Columns(double[][] rows) {
        int n = rows.length;
        columns = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                columns[j][i] = rows[i][j];
            }
        }
    }

    /**
     * The product with a vector.
     *
     * @param x the vector
     * @param product gets the product, one entry a row
     */
    void times(double[] x, double[] product) {
        Arrays.fill(product, 0);
        int j = 0;
        for (; j + 3 < columns.length; j += 4) {
            double[] a = columns[j];
            double[] b = columns[j + 1];
            double[] c = columns[j + 2];
            double[] d = columns[j + 3];
            subtract(product, 0, product.length, a, -x[j], b, -x[j + 1], c, -x[j + 2], d, -x[j + 3]);
        }
        for (; j < columns.length; j++) {
            subtract(product, 0, product.length, columns[j], -x[j]);
        }
    }

    /** A column, not to be changed. */
    double[] column(int j) {
        return columns[j];
    }

    /** Takes so many times a column from a vector, between two rows. */
    static void subtract(double[] from, int first, int end, double[] a, double byA) {
        for (int i = first; i < end; i++) {
            from[i] -= a[i] * byA;
        }
    }

    /** The same with four columns. */
    static void subtract(
            double[] from,
            int first,
            int end,
            double[] a,
            double byA,
            double[] b,
            double byB,
            double[] c,
            double byC,
            double[] d,
            double byD) {
        for (int i = first; i < end; i++) {
            from[i] -= (a[i] * byA + b[i] * byB) + (c[i] * byC + d[i] * byD);
        }
    }
}
