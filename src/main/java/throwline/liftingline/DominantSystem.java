package throwline.liftingline;

/**
 * A linear system whose matrix is diagonally dominant by rows, taken apart by elimination in the natural order: such a
 * matrix keeps its dominance under elimination, so no exchange of rows is needed and growth is at most two (standard
 * result; Golub and Van Loan, Matrix Computations, from memory). The factors stay for further right sides. Works in place,
 * allocates nothing after it is made.
 */
final class DominantSystem {

    private final double[][] columns;
    private final double[] perPivot;

    /** Room for this many unknowns. */
    DominantSystem(int n) {
        columns = new double[n][n];
        perPivot = new double[n];
    }

    /** A column of the matrix, to be filled before {@link #factor}; holds factors afterwards. */
    double[] column(int j) {
        return columns[j];
    }

    /** Takes the matrix apart, column after column, four earlier ones at a time. */
    void factor() {
        for (int j = 0; j < columns.length; j++) {
            double[] column = columns[j];
            int k = 0;
            for (; k + 3 < j; k += 4) {
                forwards(column, k);
            }
            for (; k < j; k++) {
                Columns.subtract(column, k + 1, column.length, columns[k], column[k]);
            }
            double inverse = 1 / column[j];
            perPivot[j] = inverse;
            for (int i = j + 1; i < column.length; i++) {
                column[i] *= inverse;
            }
        }
    }

    /** Replaces a right side by the solution. */
    void solve(double[] b) {
        int n = columns.length;
        int k = 0;
        for (; k + 3 < n; k += 4) {
            forwards(b, k);
        }
        for (; k < n; k++) {
            Columns.subtract(b, k + 1, n, columns[k], b[k]);
        }
        int left = n;
        for (; left > 3; left -= 4) {
            backwards(b, left - 4);
        }
        for (; left > 0; left--) {
            b[left - 1] *= perPivot[left - 1];
            Columns.subtract(b, 0, left - 1, columns[left - 1], b[left - 1]);
        }
    }

    /** Takes four unknowns of the lower factor out of the rows below them. */
    private void forwards(double[] b, int k) {
        double[] p = columns[k];
        double[] q = columns[k + 1];
        double[] r = columns[k + 2];
        double[] s = columns[k + 3];
        double x = b[k];
        double y = b[k + 1] - p[k + 1] * x;
        double z = b[k + 2] - p[k + 2] * x - q[k + 2] * y;
        double w = b[k + 3] - p[k + 3] * x - q[k + 3] * y - r[k + 3] * z;
        b[k + 1] = y;
        b[k + 2] = z;
        b[k + 3] = w;
        Columns.subtract(b, k + 4, b.length, p, x, q, y, r, z, s, w);
    }

    /** Finds four unknowns of the upper factor and takes them out of the rows above them. */
    private void backwards(double[] b, int k) {
        double[] p = columns[k];
        double[] q = columns[k + 1];
        double[] r = columns[k + 2];
        double[] s = columns[k + 3];
        double w = b[k + 3] * perPivot[k + 3];
        double z = (b[k + 2] - s[k + 2] * w) * perPivot[k + 2];
        double y = (b[k + 1] - s[k + 1] * w - r[k + 1] * z) * perPivot[k + 1];
        double x = (b[k] - s[k] * w - r[k] * z - q[k] * y) * perPivot[k];
        b[k] = x;
        b[k + 1] = y;
        b[k + 2] = z;
        b[k + 3] = w;
        Columns.subtract(b, 0, k, p, x, q, y, r, z, s, w);
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
