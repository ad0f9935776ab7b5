package throwline.liftingline;

/**
 * A linear system whose matrix is diagonally dominant by rows, taken apart by elimination in the natural order: such a
 * matrix keeps its dominance under elimination, so no exchange of rows is needed and growth is at most two (standard
 * result; Golub and Van Loan, Matrix Computations, from memory). The factors stay for further right sides. Works in place,
 * allocates nothing after it is made.
 */
final class DominantSystem {

    private final double[][] rows;

    /** Room for this many unknowns. */
    DominantSystem(int n) {
        rows = new double[n][n];
    }

    /** A row of the matrix, to be filled before {@link #factor}; holds factors afterwards. */
    double[] row(int i) {
        return rows[i];
    }

    /** Takes the matrix apart, two columns at a time. */
    void factor() {
        for (int i = 1; i < rows.length; i++) {
            double[] row = rows[i];
            int k = 0;
            for (; k + 1 < i; k += 2) {
                double[] first = rows[k];
                double[] second = rows[k + 1];
                double f = row[k] / first[k];
                double g = (row[k + 1] - f * first[k + 1]) / second[k + 1];
                row[k] = f;
                row[k + 1] = g;
                subtract(row, first, f, second, g, k + 2);
            }
            if (k < i) {
                double[] first = rows[k];
                double f = row[k] / first[k];
                row[k] = f;
                subtract(row, first, f, first, 0, k + 1);
            }
        }
    }

    private static void subtract(double[] row, double[] first, double f, double[] second, double g, int from) {
        for (int j = from; j < row.length; j++) {
            row[j] -= f * first[j] + g * second[j];
        }
    }

    /** Replaces a right side by the solution. */
    void solve(double[] b) {
        int n = rows.length;
        for (int i = 1; i < n; i++) {
            b[i] -= dot(rows[i], b, 0, i);
        }
        for (int i = n - 1; i >= 0; i--) {
            b[i] = (b[i] - dot(rows[i], b, i + 1, n)) / rows[i][i];
        }
    }

    /** Sum of products, in four sums that the machine can run side by side. */
    static double dot(double[] a, double[] b, int from, int to) {
        double s0 = 0;
        double s1 = 0;
        double s2 = 0;
        double s3 = 0;
        int j = from;
        for (; j + 3 < to; j += 4) {
            s0 += a[j] * b[j];
            s1 += a[j + 1] * b[j + 1];
            s2 += a[j + 2] * b[j + 2];
            s3 += a[j + 3] * b[j + 3];
        }
        for (; j < to; j++) {
            s0 += a[j] * b[j];
        }
        return (s0 + s1) + (s2 + s3);
    }
}
