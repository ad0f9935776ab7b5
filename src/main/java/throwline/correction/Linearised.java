package throwline.correction;

import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * Readings as straight lines of the state: {@code value = expected(x) + slopes (state - x) + noise}, and their update of a
 * normal state, {@code K = Sigma H^T (H Sigma H^T + R)^-1} (textbook: linear Bayesian or Kalman update).
 *
 * @param means of the state before
 * @param sds of the state before, independent
 * @param slopes one row a reading
 * @param misses what is left of each reading against the means of the state
 * @param noise standard deviation of each reading
 */
@SuppressWarnings("ArrayRecordComponent") // vectors and matrices, never compared
record Linearised(double[] means, double[] sds, double[][] slopes, double[] misses, double[] noise) {

    /** Numerical floor for a matrix of variances that rounding made singular, as a share of its diagonal. */
    private static final double FLOOR = 1e-12;

    /** The readings at a state. */
    static Linearised at(double[] state, double[] means, double[] sds, List<Reading> readings) {
        int rows = readings.size();
        double[][] slopes = new double[rows][];
        double[] misses = new double[rows];
        double[] noise = new double[rows];
        for (int i = 0; i < rows; i++) {
            Reading reading = readings.get(i);
            slopes[i] = reading.expected().slopes(state, sds);
            misses[i] = reading.value() - reading.expected().at(state);
            for (int j = 0; j < means.length; j++) {
                misses[i] += slopes[i][j] * (state[j] - means[j]);
            }
            noise[i] = reading.sd();
        }
        return new Linearised(means, sds, slopes, misses, noise);
    }

    /** Standard deviation that a reading was expected to have before, its own noise included. */
    double expectedSd(int reading) {
        double sum = noise[reading] * noise[reading];
        for (int j = 0; j < sds.length; j++) {
            sum += Math.pow(slopes[reading][j] * sds[j], 2);
        }
        return Math.sqrt(sum);
    }

    /** The same where some of it is less certain. */
    Linearised with(double[] otherSds, double[] otherNoise) {
        return new Linearised(means, otherSds, slopes, misses, otherNoise);
    }

    /** The same where other means of the state are expected before. */
    Linearised around(double[] otherMeans) {
        double[] left = misses.clone();
        for (int i = 0; i < left.length; i++) {
            for (int j = 0; j < means.length; j++) {
                left[i] -= slopes[i][j] * (otherMeans[j] - means[j]);
            }
        }
        return new Linearised(otherMeans, sds, slopes, left, noise);
    }

    /** The update by all readings. */
    Update update() {
        int rows = misses.length;
        double[][] spread = new double[rows][];
        double[][] s = new double[rows][rows];
        for (int i = 0; i < rows; i++) {
            spread[i] = new double[sds.length];
            for (int j = 0; j < sds.length; j++) {
                spread[i][j] = slopes[i][j] * sds[j] * sds[j];
            }
            for (int k = 0; k <= i; k++) {
                double sum = 0;
                for (int j = 0; j < sds.length; j++) {
                    sum += spread[i][j] * slopes[k][j];
                }
                s[i][k] = sum;
                s[k][i] = sum;
            }
            s[i][i] = (s[i][i] + noise[i] * noise[i]) * (1 + FLOOR);
        }
        CholeskyDecomposition cholesky = new CholeskyDecomposition(new Array2DRowRealMatrix(s, false));
        double[] solved =
                cholesky.getSolver().solve(new ArrayRealVector(misses, false)).toArray();
        double square = 0;
        double logDeterminant = 0;
        double[] mean = means.clone();
        for (int i = 0; i < rows; i++) {
            square += misses[i] * solved[i];
            logDeterminant += 2 * Math.log(cholesky.getL().getEntry(i, i));
            for (int j = 0; j < mean.length; j++) {
                mean[j] += spread[i][j] * solved[i];
            }
        }
        return new Update(mean, square, logDeterminant, cholesky, spread, sds);
    }

    /**
     * The state after the readings.
     *
     * @param mean its means
     * @param square weighted square of what the readings missed by
     * @param logDeterminant of the readings' variances
     * @param cholesky of the readings' variances
     * @param spread covariance of readings and state before
     * @param sds of the state before
     */
    @SuppressWarnings("ArrayRecordComponent") // vectors and matrices, never compared
    record Update(
            double[] mean,
            double square,
            double logDeterminant,
            CholeskyDecomposition cholesky,
            double[][] spread,
            double[] sds) {

        /** Covariance of the state after. */
        double[][] covariance() {
            int rows = spread.length;
            int n = sds.length;
            double[][] after = new double[n][n];
            for (int j = 0; j < n; j++) {
                after[j][j] = sds[j] * sds[j];
            }
            RealMatrix gain = cholesky.getSolver().solve(new Array2DRowRealMatrix(spread, false));
            for (int i = 0; i < rows; i++) {
                for (int j = 0; j < n; j++) {
                    if (spread[i][j] != 0) {
                        for (int k = 0; k < n; k++) {
                            after[j][k] -= spread[i][j] * gain.getEntry(i, k);
                        }
                    }
                }
            }
            return after;
        }
    }
}
