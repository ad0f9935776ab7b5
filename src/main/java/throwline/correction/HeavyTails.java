package throwline.correction;

import java.util.Arrays;
import java.util.List;

/**
 * Fit of each source where there are too many for all sets of them: Student's t with four degrees of freedom in place
 * of the normal, by variational Bayes (weights {@code (4 + n) / (4 + E[r^2] / sd^2)}, at most 1, after J. Ala-Luhtala
 * and R. Piche, READ in excerpt).
 */
final class HeavyTails {

    private static final double FREEDOM = 4;
    private static final int ROUNDS = 20;

    private final List<Factor> factors;
    private final List<Reading> readings;
    private final List<String> sources;

    HeavyTails(List<Factor> factors, List<Reading> readings, List<String> sources) {
        this.factors = factors;
        this.readings = readings;
        this.sources = sources;
    }

    /** Weight of each source: 1 where it fits, less the worse it does. */
    double[] weights() {
        double[] means = factors.stream().mapToDouble(Factor::mean).toArray();
        double[] sds = factors.stream().mapToDouble(Factor::sd).toArray();
        double[] weights = new double[sources.size()];
        Arrays.fill(weights, 1);
        double[] state = means;
        for (int round = 0; round < ROUNDS; round++) {
            Linearised straight = Linearised.at(state, means, sds, readings);
            double[] noise = straight.noise().clone();
            double[] wide = sds.clone();
            for (int i = 0; i < noise.length; i++) {
                noise[i] /= Math.sqrt(weights[sources.indexOf(readings.get(i).source())]);
            }
            for (int j = 0; j < wide.length; j++) {
                int source = sources.indexOf(factors.get(j).name());
                wide[j] /= source < 0 ? 1 : Math.sqrt(weights[source]);
            }
            Linearised.Update update = straight.with(wide, noise).update();
            state = update.mean();
            weights = weights(straight, update, state);
        }
        return weights;
    }

    private double[] weights(Linearised straight, Linearised.Update update, double[] state) {
        double[][] covariance = update.covariance();
        double[] squares = new double[sources.size()];
        int[] counts = new int[sources.size()];
        for (int i = 0; i < readings.size(); i++) {
            int source = sources.indexOf(readings.get(i).source());
            double[] slope = straight.slopes()[i];
            double miss = straight.misses()[i];
            double variance = 0;
            for (int j = 0; j < slope.length; j++) {
                miss -= slope[j] * (state[j] - straight.means()[j]);
                for (int k = 0; k < slope.length; k++) {
                    variance += slope[j] * covariance[j][k] * slope[k];
                }
            }
            squares[source] += (miss * miss + variance) / Math.pow(straight.noise()[i], 2);
            counts[source]++;
        }
        for (int j = 0; j < factors.size(); j++) {
            int source = sources.indexOf(factors.get(j).name());
            if (source >= 0) {
                double off = state[j] - factors.get(j).mean();
                squares[source] +=
                        (off * off + covariance[j][j]) / Math.pow(factors.get(j).sd(), 2);
                counts[source]++;
            }
        }
        double[] weights = new double[sources.size()];
        for (int s = 0; s < weights.length; s++) {
            weights[s] = Math.min(1, (FREEDOM + counts[s]) / (FREEDOM + squares[s]));
        }
        return weights;
    }
}
