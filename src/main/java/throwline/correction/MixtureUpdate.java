package throwline.correction;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Bayesian update in which every source may be wrong: with a probability of 5 % each, a source is taken as eight times as
 * uncertain as was expected of it, and all sets of a few such sources are worked out and weighed: a contaminated normal
 * (G. E. P. Box, G. C. Tiao, Biometrika 55, 1968, MEMORY; enumeration after I. Verdinelli, L. Wasserman, Statistics and
 * Computing 1, 1991, READ in excerpt). Where there are many sources, those that are wrong tell of the others: how often
 * sources are wrong is itself uncertain (beta-binomial, textbook). Readings are straightened at the weighed mean until it
 * stands still (Gauss-Newton). Nothing depends on the order of readings. Methods manual 21.2.
 */
public final class MixtureUpdate {

    /**
     * Sets of three sources are tried, of four where there are more than a few, of five where there are many: so that hardly
     * ever more are wrong than are tried where one in five is.
     */
    private static final int MANY = 10;

    private static final int FEWEST = 3;

    private static final int MOST = 16;

    /** Sets of sources less likely than the likeliest by more than this, as a logarithm, are left out. */
    private static final double NEGLIGIBLE = 9;

    private static final double SETTLED = 1e-9;
    private static final int ROUNDS = 60;

    /** From this round on the state goes half of the way only, as two sets of sources may lead it to and fro. */
    private static final int TO_AND_FRO = 8;

    private final List<Factor> factors;
    private final List<Reading> readings;
    private final double[] means;
    private final double[] sds;
    private final Sources sources;
    private final List<Integer> doubted;
    private final int deepest;

    private MixtureUpdate(List<Factor> factors, List<Reading> readings) {
        this.factors = factors;
        this.readings = readings;
        means = factors.stream().mapToDouble(Factor::mean).toArray();
        sds = factors.stream().mapToDouble(Factor::sd).toArray();
        sources = new Sources(factors, readings);
        deepest = FEWEST + (sources.size() > Sources.FEW ? 1 : 0) + (sources.size() > MANY ? 1 : 0);
        doubted = doubted();
    }

    /**
     * Learns from readings.
     *
     * @param factors of the state, in its order
     * @param readings in any order; with none the state stays what it was
     */
    public static Posterior learn(List<Factor> factors, List<Reading> readings) {
        List<Reading> ordered = readings.stream()
                .sorted(Comparator.comparing(Reading::source)
                        .thenComparingDouble(Reading::value)
                        .thenComparingDouble(Reading::sd))
                .toList();
        return new MixtureUpdate(List.copyOf(factors), ordered).posterior(readings);
    }

    /** Sources that may be taken as wrong: all, or where there are too many those that fit worst. */
    private List<Integer> doubted() {
        List<Integer> all = IntStream.range(0, sources.size()).boxed().toList();
        if (sources.size() <= MOST) {
            return all;
        }
        double[] weights = new HeavyTails(factors, readings, sources.names()).weights();
        return all.stream()
                .sorted(Comparator.comparingDouble((Integer source) -> weights[source])
                        .thenComparing(Comparator.naturalOrder()))
                .limit(MOST)
                .sorted()
                .toList();
    }

    private Posterior posterior(List<Reading> given) {
        if (given.isEmpty()) {
            return unchanged();
        }
        List<Hypothesis> hypotheses = Hypothesis.all(doubted, deepest);
        double[] state = means.clone();
        List<Weighed> weighed = List.of();
        boolean settled = false;
        for (int round = 0; round < ROUNDS && !settled; round++) {
            Linearised straight = Linearised.at(state, means, sds, readings);
            weighed = weigh(straight, hypotheses);
            double[] next = mean(weighed);
            settled = true;
            for (int j = 0; j < next.length; j++) {
                settled &= Math.abs(next[j] - state[j]) <= SETTLED * sds[j];
                next[j] = round < TO_AND_FRO ? next[j] : (next[j] + state[j]) / 2;
            }
            state = next;
        }
        return result(state, weighed, settled, given);
    }

    private Posterior unchanged() {
        double[][] covariance = new double[sds.length][sds.length];
        for (int j = 0; j < sds.length; j++) {
            covariance[j][j] = sds[j] * sds[j];
        }
        Posterior.Part whole = new Posterior.Part(List.of(), 1, means, covariance);
        return new Posterior(factors, means, List.of(whole), Map.of(), List.of(), 0, 0, true);
    }

    private record Weighed(Hypothesis hypothesis, double weight, Linearised.Update update) {}

    private List<Weighed> weigh(Linearised straight, List<Hypothesis> hypotheses) {
        double[] expected = IntStream.range(0, readings.size())
                .mapToDouble(straight::expectedSd)
                .toArray();
        List<Weighed> all = new Screening(straight, expected, sources)
                .likely(hypotheses, NEGLIGIBLE).stream()
                        .map(hypothesis -> weigh(straight, expected, hypothesis))
                        .toList();
        double best = all.stream().mapToDouble(Weighed::weight).max().orElseThrow();
        List<Weighed> kept =
                all.stream().filter(one -> one.weight > best - NEGLIGIBLE).toList();
        double sum =
                kept.stream().mapToDouble(one -> Math.exp(one.weight - best)).sum();
        return kept.stream()
                .map(one -> new Weighed(one.hypothesis, Math.exp(one.weight - best) / sum, one.update))
                .toList();
    }

    private Weighed weigh(Linearised straight, double[] expected, Hypothesis hypothesis) {
        Linearised.Update update = sources.wrong(straight, expected, hypothesis).update();
        double weight = -update.square() / 2 - update.logDeterminant() / 2 + sources.odds(hypothesis);
        return new Weighed(hypothesis, weight, update);
    }

    private double[] mean(List<Weighed> weighed) {
        double[] mean = new double[means.length];
        for (Weighed one : weighed) {
            for (int j = 0; j < mean.length; j++) {
                mean[j] += one.weight * one.update.mean()[j];
            }
        }
        return mean;
    }

    private Posterior result(double[] state, List<Weighed> weighed, boolean settled, List<Reading> given) {
        Map<String, Double> wrong = new HashMap<>();
        sources.names().forEach(source -> wrong.put(source, 0.0));
        List<Posterior.Part> parts = new ArrayList<>();
        for (Weighed one : weighed) {
            List<String> names =
                    one.hypothesis.wrong().stream().map(sources.names()::get).toList();
            names.forEach(name -> wrong.merge(name, one.weight, Double::sum));
            parts.add(new Posterior.Part(names, one.weight, one.update.mean(), one.update.covariance()));
        }
        Linearised before = Linearised.at(means, means, sds, given);
        List<Double> misses = IntStream.range(0, given.size())
                .mapToObj(i -> before.misses()[i] / before.expectedSd(i))
                .toList();
        double square = weighed.stream()
                .max(Comparator.comparingDouble(Weighed::weight))
                .map(one -> one.update.square())
                .orElse(0.0);
        return new Posterior(factors, state, parts, wrong, misses, square, readings.size(), settled);
    }
}
