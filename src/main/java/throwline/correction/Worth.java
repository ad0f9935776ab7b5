package throwline.correction;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;

/**
 * Worth of a measurement that has not been made yet: the share of a row's standard deviation that it would leave. With
 * straight lines and normal errors that does not depend on what will be measured (D. V. Lindley, Annals of Mathematical
 * Statistics 27, 1956, MEMORY). Methods manual 21.6.
 */
public final class Worth {

    private final double[] state;
    private final double[] sds;
    private final double[][] covariance;

    /**
     * @param posterior what is known
     * @param factors those of the posterior first, then those of the new flight
     */
    public Worth(Posterior posterior, Factors factors) {
        List<Factor> all = factors.all();
        int known = posterior.state().length;
        state = factors.means();
        System.arraycopy(posterior.state(), 0, state, 0, known);
        sds = all.stream().mapToDouble(Factor::sd).toArray();
        covariance = new double[state.length][state.length];
        double[][] before = posterior.covariance();
        for (int i = 0; i < state.length; i++) {
            if (i < known) {
                System.arraycopy(before[i], 0, covariance[i], 0, known);
            } else {
                covariance[i][i] = sds[i] * sds[i];
            }
        }
    }

    /**
     * Share left of the standard deviation of a row.
     *
     * @param row the row
     * @param own variance of the row that no reading tells anything of
     * @param readings what would be measured; values do not matter
     */
    public double left(Expectation row, double own, List<Reading> readings) {
        double[] slopes = row.slopes(state, sds);
        double before = RowBand.variance(slopes, covariance) + own;
        int n = readings.size();
        double[][] rows = new double[n][];
        double[][] variances = new double[n][n];
        double[] shared = new double[n];
        for (int i = 0; i < n; i++) {
            rows[i] = readings.get(i).expected().slopes(state, sds);
            shared[i] = product(rows[i], slopes);
            for (int k = 0; k <= i; k++) {
                variances[i][k] = product(rows[i], rows[k]);
                variances[k][i] = variances[i][k];
            }
            variances[i][i] += Math.pow(readings.get(i).sd(), 2);
        }
        double[] solved = new CholeskyDecomposition(new Array2DRowRealMatrix(variances, false))
                .getSolver()
                .solve(new ArrayRealVector(shared))
                .toArray();
        double told = 0;
        for (int i = 0; i < n; i++) {
            told += shared[i] * solved[i];
        }
        return before > 0 ? Math.sqrt(Math.max(0, 1 - told / before)) : 1;
    }

    private double product(double[] a, double[] b) {
        double[] through = new double[b.length];
        Arrays.setAll(through, i -> {
            double sum = 0;
            for (int j = 0; j < b.length; j++) {
                sum += covariance[i][j] * b[j];
            }
            return sum;
        });
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * through[i];
        }
        return sum;
    }
}
