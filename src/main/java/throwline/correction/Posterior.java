package throwline.correction;

import java.util.List;
import java.util.Map;

/**
 * Knowledge of the state after the readings: a mixture of normals, one for each set of sources that may be wrong.
 *
 * @param factors in the order of the state
 * @param state weighed mean of the state; where readings were taken as straight lines
 * @param parts the mixture, weights adding to 1
 * @param wrong probability that a source is wrong, by source
 * @param misses by how many of its expected standard deviations a reading missed, one a reading
 * @param square weighted square of the misses of the likeliest part
 * @param readings how many there were
 * @param converged false where the search for the state did not settle
 */
@SuppressWarnings("ArrayRecordComponent") // vectors and matrices, never compared
public record Posterior(
        List<Factor> factors,
        double[] state,
        List<Part> parts,
        Map<String, Double> wrong,
        List<Double> misses,
        double square,
        int readings,
        boolean converged) {

    public Posterior {
        factors = List.copyOf(factors);
        parts = List.copyOf(parts);
        wrong = Map.copyOf(wrong);
        misses = List.copyOf(misses);
    }

    /**
     * One normal of the mixture.
     *
     * @param wrong sources taken as wrong
     * @param weight its probability
     * @param mean of the state
     * @param covariance of the state
     */
    @SuppressWarnings("ArrayRecordComponent") // vectors and matrices, never compared
    public record Part(List<String> wrong, double weight, double[] mean, double[][] covariance) {
        public Part {
            wrong = List.copyOf(wrong);
        }
    }

    /** Standard deviations before any reading. */
    public double[] priorSds() {
        return factors.stream().mapToDouble(Factor::sd).toArray();
    }

    /** Means before any reading. */
    public double[] priorMeans() {
        return factors.stream().mapToDouble(Factor::mean).toArray();
    }

    /** Covariance of the state, all parts together. */
    public double[][] covariance() {
        int n = state.length;
        double[][] sum = new double[n][n];
        for (Part part : parts) {
            for (int i = 0; i < n; i++) {
                double apart = part.mean[i] - state[i];
                for (int j = 0; j < n; j++) {
                    sum[i][j] += part.weight * (part.covariance[i][j] + apart * (part.mean[j] - state[j]));
                }
            }
        }
        return sum;
    }

    /** Standard deviation of a factor after the readings. */
    public double sd(int factor) {
        double sum = 0;
        for (Part part : parts) {
            double apart = part.mean[factor] - state[factor];
            sum += part.weight * (part.covariance[factor][factor] + apart * apart);
        }
        return Math.sqrt(sum);
    }
}
