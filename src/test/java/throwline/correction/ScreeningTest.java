package throwline.correction;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Sets of wrong sources: weights without an update for each against whole updates, and a habit against the closed form. */
class ScreeningTest {

    private static final Factor.Habit HABIT = new Factor.Habit(0.2, 0.15, 0.09);

    private final RandomGenerator random = new Well19937c(5);

    private Reading reading(String source, double value, double sd, double... slopes) {
        return new Reading(
                source,
                value,
                sd,
                x -> IntStream.range(0, slopes.length)
                        .mapToDouble(j -> slopes[j] * x[j])
                        .sum());
    }

    private double[] gaussians(int n) {
        return IntStream.range(0, n).mapToDouble(i -> random.nextGaussian()).toArray();
    }

    /** Matrix lemmas against Cholesky factors of each set's own variances. */
    @Test
    void weighs_as_a_whole_update_does() {
        for (int round = 0; round < 20; round++) {
            List<Factor> factors = List.of(
                    Factor.standard("lift"),
                    Factor.standard("drag"),
                    new Factor("wind", 2, 0.5, true),
                    new Factor("broken off", 0, 0.01, false, Optional.of(HABIT)));
            List<Reading> readings = new ArrayList<>();
            for (String source : List.of("a", "a", "b", "c", "d")) {
                double noise = 0.05 + random.nextDouble();
                readings.add(reading(source, 3 * random.nextGaussian(), noise, gaussians(4)));
            }
            Sources sources = new Sources(factors, readings);
            assertThat(sources.names()).containsExactly("a", "b", "c", "d", "wind", "broken off");
            double[] means = {0, 0, 2, 0};
            double[] sds = {1, 1, 0.5, 0.01};
            Linearised straight = Linearised.at(means, means, sds, readings);
            double[] expected =
                    IntStream.range(0, 5).mapToDouble(straight::expectedSd).toArray();
            Screening screening = new Screening(straight, expected, sources);
            List<Hypothesis> sets = Hypothesis.all(IntStream.range(0, 6).boxed().toList(), 4);
            assertThat(sets).hasSize(1 + 6 + 15 + 20 + 15);
            for (Hypothesis set : sets) {
                Linearised.Update update =
                        sources.wrong(straight, expected, set).update();
                double whole = -update.square() / 2 - update.logDeterminant() / 2 + sources.odds(set);
                assertThat(screening.weight(set)).isCloseTo(whole, Offset.offset(1e-8 * (1 + Math.abs(whole))));
            }
        }
    }

    /** One number, one reading of it and one habit: shares by Bayes' theorem, and means of two normals. */
    @Test
    void has_a_habit_as_two_normals_have_it() {
        double prior = 0.0365;
        double full = 0.01;
        double noise = 0.02;
        List<Factor> factors = List.of(
                new Factor("speed", 0, prior, false), new Factor("broken off", 0, full, false, Optional.of(HABIT)));
        for (double seen : new double[] {-0.05, 0, 0.05, 0.1, 0.166, 0.25}) {
            Posterior posterior = MixtureUpdate.learn(factors, List.of(reading("stalls", seen, noise, 1, 1)));
            double usual = Math.sqrt(prior * prior + full * full + noise * noise);
            double habit = Math.sqrt(prior * prior + HABIT.sd() * HABIT.sd() + noise * noise);
            double without = 0.8 * new NormalDistribution(0, usual).density(seen);
            double with = 0.2 * new NormalDistribution(HABIT.mean(), habit).density(seen);
            double share = with / (with + without);
            double mean = (1 - share) * seen * Math.pow(prior / usual, 2)
                    + share * (seen - HABIT.mean()) * Math.pow(prior / habit, 2);
            double wrong = posterior.parts().stream()
                    .filter(part -> part.wrong().contains("stalls"))
                    .mapToDouble(Posterior.Part::weight)
                    .sum();
            assertThat(Math.abs(posterior.wrong().getOrDefault("broken off", 2.0) - share))
                    .as("seen " + seen)
                    .isLessThan(wrong + 1e-9);
            assertThat(Math.abs(posterior.state()[0] - mean)).as("seen " + seen).isLessThan(prior * (wrong + 1e-9) * 3);
        }
    }

    /** Seen far above the prediction it says next to nothing; the same below is taken for what it is. */
    @Test
    void takes_a_habit_one_way_only() {
        List<Factor> factors = List.of(
                new Factor("speed", 0, 0.0365, false), new Factor("broken off", 0, 0.01, false, Optional.of(HABIT)));
        Posterior above = MixtureUpdate.learn(factors, List.of(reading("stalls", 0.16, 0.02, 1, 1)));
        Posterior below = MixtureUpdate.learn(factors, List.of(reading("stalls", -0.06, 0.02, 1, 1)));
        assertThat(above.wrong().getOrDefault("broken off", 0.0)).isGreaterThan(0.8);
        assertThat(above.state()[0]).isLessThan(0.01);
        assertThat(below.wrong().getOrDefault("broken off", 1.0)).isLessThan(0.05);
        assertThat(below.state()[0]).isLessThan(-0.04);
    }
}
