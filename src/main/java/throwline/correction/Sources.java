package throwline.correction;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** Sources of the readings, and how uncertain they are where some of that is taken as wrong. Methods manual 21.2. */
final class Sources {

    /** Probability that a source is wrong (PRACTICE). */
    private static final double WRONG = 0.05;

    /** So many wrong sources are taken as seen before any flight (the half of H. Jeffreys' prior of a share, MEMORY). */
    private static final double SEEN_WRONG = 0.5;

    private static final double SEEN = SEEN_WRONG / WRONG;

    /** Times as uncertain as expected that a wrong source is taken (PRACTICE). */
    private static final double WIDER = 8;

    /** So few sources tell nothing of how often sources are wrong. */
    static final int FEW = 6;

    private final List<Factor> factors;
    private final double[] means;
    private final double[] sds;
    private final List<String> names;
    private final List<List<Integer>> readingsOf = new ArrayList<>();
    private final List<Integer> factorOf = new ArrayList<>();

    /**
     * @param factors of the state, in its order
     * @param readings in an order that does not depend on that of the notes
     */
    Sources(List<Factor> factors, List<Reading> readings) {
        this.factors = factors;
        means = factors.stream().mapToDouble(Factor::mean).toArray();
        sds = factors.stream().mapToDouble(Factor::sd).toArray();
        names = names(factors, readings, means, sds);
        List<String> known = factors.stream().map(Factor::name).toList();
        for (String name : names) {
            readingsOf.add(IntStream.range(0, readings.size())
                    .filter(i -> readings.get(i).source().equals(name))
                    .boxed()
                    .toList());
            factorOf.add(known.indexOf(name));
        }
    }

    private static List<String> names(List<Factor> factors, List<Reading> readings, double[] means, double[] sds) {
        Set<String> names = new LinkedHashSet<>();
        readings.forEach(reading -> names.add(reading.source()));
        double[][] slopes = readings.stream()
                .map(reading -> reading.expected().slopes(means, sds))
                .toArray(double[][]::new);
        for (int j = 0; j < factors.size(); j++) {
            Factor factor = factors.get(j);
            int place = j;
            if ((factor.doubtful() || factor.habit().isPresent())
                    && Arrays.stream(slopes).anyMatch(slope -> slope[place] != 0)) {
                names.add(factor.name());
            }
        }
        return List.copyOf(names);
    }

    /** Their names, in an order that does not depend on that of the notes. */
    List<String> names() {
        return names;
    }

    int size() {
        return names.size();
    }

    /** Places of the readings of a source. */
    List<Integer> readings(int source) {
        return readingsOf.get(source);
    }

    /** Place of the factor that is a source; below 0 where it is none. */
    int factor(int source) {
        return factorOf.get(source);
    }

    /** Noise of a reading of a wrong source, of which so much was expected with its noise and all factors. */
    static double wrongNoise(double expected) {
        return WIDER * expected;
    }

    /** Standard deviation of a factor that is taken as wrong, or as of a habit. */
    double wrongSd(int factor) {
        return factors.get(factor).habit().map(Factor.Habit::sd).orElse(WIDER * sds[factor]);
    }

    /** Mean of a factor that is taken as wrong, or as of a habit, less the mean otherwise. */
    double shift(int factor) {
        return factors.get(factor).habit().map(h -> h.mean() - means[factor]).orElse(0.0);
    }

    /** Readings with some sources taken as wrong. */
    Linearised wrong(Linearised straight, double[] expected, Hypothesis hypothesis) {
        double[] noise = straight.noise().clone();
        double[] wider = sds.clone();
        double[] shifted = means.clone();
        boolean any = false;
        for (int source : hypothesis.wrong()) {
            for (int i : readings(source)) {
                noise[i] = wrongNoise(expected[i]);
            }
            int factor = factor(source);
            if (factor >= 0) {
                wider[factor] = wrongSd(factor);
                shifted[factor] += shift(factor);
                any |= shift(factor) != 0;
            }
        }
        Linearised with = straight.with(wider, noise);
        return any ? with.around(shifted) : with;
    }

    /**
     * Logarithm of the odds of wrong sources. The first is wrong with 5 %; among many, each that is wrong makes it likelier of
     * the next, {@code (1/2 + j)/10} after {@code j}. Habits are no mistakes: each has its own share.
     */
    double odds(Hypothesis hypothesis) {
        double sum = 0;
        int mistakes = 0;
        for (int source : hypothesis.wrong()) {
            double share = WRONG;
            int factor = factor(source);
            if (factor >= 0 && factors.get(factor).habit().isPresent()) {
                share = factors.get(factor).habit().get().share();
            } else if (size() > FEW) {
                share = (SEEN_WRONG + mistakes++) / SEEN;
            }
            sum += Math.log(share / (1 - share));
        }
        return sum;
    }
}
