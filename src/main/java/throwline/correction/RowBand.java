package throwline.correction;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * A number that follows from the state, before and after the readings: mean, and the points that it stays below one time in
 * twenty and nineteen times in twenty.
 *
 * @param before at the means of the state before
 * @param low one in twenty before
 * @param high nineteen in twenty before
 * @param after mean after
 * @param lowAfter one in twenty after
 * @param highAfter nineteen in twenty after
 */
public record RowBand(double before, double low, double high, double after, double lowAfter, double highAfter) {

    /** Nine of ten normal errors lie inside so many standard deviations. */
    public static final double NINE_OF_TEN = 1.6449;

    private static final NormalDistribution NORMAL = new NormalDistribution();
    private static final double TAIL = 0.05;
    private static final double REACH = 12;
    private static final int ROUNDS = 200;

    /**
     * A row.
     *
     * @param posterior what is known
     * @param row the number, where additive errors are wanted its logarithm
     * @param own variance that no reading tells anything of
     * @param wider factor on all standard deviations after, at least 1
     */
    public static RowBand of(Posterior posterior, Expectation row, double own, double wider) {
        double[] means = posterior.priorMeans();
        double[] sds = posterior.priorSds();
        double[] slopesBefore = row.slopes(means, sds);
        double variance = own;
        for (int j = 0; j < sds.length; j++) {
            variance += Math.pow(slopesBefore[j] * sds[j], 2);
        }
        double middle = row.at(means);
        double half = NORMAL.inverseCumulativeProbability(1 - TAIL) * Math.sqrt(variance);
        double[] state = posterior.state();
        double[] slopes = row.slopes(state, sds);
        double at = row.at(state);
        int parts = posterior.parts().size();
        double[] centres = new double[parts];
        double[] spreads = new double[parts];
        double[] weights = new double[parts];
        double mean = 0;
        for (int k = 0; k < parts; k++) {
            Posterior.Part part = posterior.parts().get(k);
            weights[k] = part.weight();
            centres[k] = at;
            for (int j = 0; j < slopes.length; j++) {
                centres[k] += slopes[j] * (part.mean()[j] - state[j]);
            }
            spreads[k] = wider * Math.sqrt(Math.max(0, variance(slopes, part.covariance())) + own);
            mean += weights[k] * centres[k];
        }
        return new RowBand(
                middle,
                middle - half,
                middle + half,
                mean,
                quantile(weights, centres, spreads, TAIL),
                quantile(weights, centres, spreads, 1 - TAIL));
    }

    /** Half-width after over half-width before. */
    public double left() {
        return high > low ? (highAfter - lowAfter) / (high - low) : 1;
    }

    static double variance(double[] slopes, double[][] covariance) {
        double sum = 0;
        for (int i = 0; i < slopes.length; i++) {
            if (slopes[i] != 0) {
                for (int j = 0; j < slopes.length; j++) {
                    sum += slopes[i] * covariance[i][j] * slopes[j];
                }
            }
        }
        return sum;
    }

    private static double quantile(double[] weights, double[] centres, double[] spreads, double share) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        double widest = 0;
        for (int k = 0; k < weights.length; k++) {
            least = Math.min(least, centres[k] - REACH * spreads[k]);
            most = Math.max(most, centres[k] + REACH * spreads[k]);
            widest = Math.max(widest, spreads[k]);
        }
        if (!(widest > 0) || !(most > least)) {
            return centres[0];
        }
        return new BrentSolver(1e-12, 1e-10 * widest)
                .solve(
                        ROUNDS,
                        q -> {
                            double sum = -share;
                            for (int k = 0; k < weights.length; k++) {
                                sum += weights[k]
                                        * (spreads[k] > 0
                                                ? NORMAL.cumulativeProbability((q - centres[k]) / spreads[k])
                                                : q >= centres[k] ? 1 : 0);
                            }
                            return sum;
                        },
                        least,
                        most);
    }
}
