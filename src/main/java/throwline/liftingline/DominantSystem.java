package throwline.liftingline;

/**
 * Solves a linear system whose matrix is diagonally dominant by rows, by elimination in the natural order: such a matrix
 * keeps its dominance under elimination, so no exchange of rows is needed and growth is at most two (standard result;
 * Golub and Van Loan, Matrix Computations, from memory). Works in place, allocates nothing.
 */
final class DominantSystem {

    private DominantSystem() {}

    /**
     * Replaces the right side by the solution.
     *
     * @param a matrix, row by row; destroyed
     * @param b right side; holds the solution afterwards
     * @param n number of unknowns
     */
    static void solve(double[] a, double[] b, int n) {
        for (int k = 0; k < n; k++) {
            int rowK = k * n;
            double pivot = 1 / a[rowK + k];
            for (int i = k + 1; i < n; i++) {
                int rowI = i * n;
                double factor = a[rowI + k] * pivot;
                if (factor != 0) {
                    for (int j = k + 1; j < n; j++) {
                        a[rowI + j] -= factor * a[rowK + j];
                    }
                    b[i] -= factor * b[k];
                }
            }
        }
        for (int i = n - 1; i >= 0; i--) {
            double sum = b[i];
            for (int j = i + 1; j < n; j++) {
                sum -= a[i * n + j] * b[j];
            }
            b[i] = sum / a[i * n + i];
        }
    }
}
