package throwline.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;
import throwline.sizing.CandidateEvaluator.Place;

/** The compass search on surfaces in closed form. */
class CompassSearchTest {

    private static final double DEGREE = Math.PI / 180;
    private static final Range FLAPS = new Range(-10 * DEGREE, 60 * DEGREE);
    private static final Range AILERONS = new Range(-15 * DEGREE, 10 * DEGREE);

    private static CandidateFlight lowest(CandidateEvaluator bench, double flap, double aileron) {
        return new CompassSearch(bench, FLAPS, AILERONS)
                .lowest(bench.at(new Place(flap, aileron)), CandidateFlight::angle, 8 * DEGREE, 4 * DEGREE);
    }

    private static DoubleBinaryOperator bowl(double flap, double aileron) {
        return (f, a) -> Math.pow(f - flap, 2) + 3 * Math.pow(a - aileron, 2) + (f - flap) * (a - aileron);
    }

    /** The bottom of a slanting bowl, from every corner, to less than the finest step. */
    @Test
    void bottomOfABowl() {
        for (double flap : new double[] {-10 * DEGREE, 60 * DEGREE}) {
            for (double aileron : new double[] {-15 * DEGREE, 10 * DEGREE}) {
                CandidateFlight found = lowest(Candidates.of(bowl(23 * DEGREE, -4 * DEGREE)), flap, aileron);
                assertThat(found.flap()).isCloseTo(23 * DEGREE, within(0.5 * DEGREE));
                assertThat(found.aileron()).isCloseTo(-4 * DEGREE, within(0.5 * DEGREE));
            }
        }
    }

    /** A grid of half degrees all over the travel finds nothing that is lower by more than the finest step makes. */
    @Test
    void aGridFindsNothingBetter() {
        DoubleBinaryOperator angle = bowl(23 * DEGREE, -4 * DEGREE);
        double found = lowest(Candidates.of(angle), 0, 0).angle();
        for (double flap = FLAPS.low(); flap <= FLAPS.high(); flap += 0.5 * DEGREE) {
            for (double aileron = AILERONS.low(); aileron <= AILERONS.high(); aileron += 0.5 * DEGREE) {
                assertThat(angle.applyAsDouble(flap, aileron)).isGreaterThan(found - 1e-4);
            }
        }
    }

    /** Where the bottom lies outside the travel, the answer stands at its end and never beyond. */
    @Test
    void staysWithinTheTravel() {
        CandidateFlight found = lowest(Candidates.of(bowl(90 * DEGREE, 40 * DEGREE)), 0, 0);
        assertThat(found.flap()).isEqualTo(FLAPS.high());
        assertThat(found.aileron()).isEqualTo(AILERONS.high());
    }

    /** What does not fly is no answer, however low. */
    @Test
    void doesNotAnswerWithWhatDoesNotFly() {
        CandidateEvaluator bench = Candidates.of((f, a) -> -f, (f, a) -> 30 * DEGREE - f);
        CandidateFlight found = lowest(bench, 0, 0);
        assertThat(found.fault()).isEmpty();
        assertThat(found.flap()).isBetween(29.5 * DEGREE, 30 * DEGREE);
    }

    /** Mirrored surfaces have mirrored answers. */
    @Test
    void mirrored() {
        CandidateFlight right = lowest(Candidates.of(bowl(10 * DEGREE, 5 * DEGREE)), 0, 0);
        Range flaps = new Range(-FLAPS.high(), -FLAPS.low());
        Range ailerons = new Range(-AILERONS.high(), -AILERONS.low());
        CandidateEvaluator bench = Candidates.of(bowl(-10 * DEGREE, -5 * DEGREE));
        CandidateFlight left = new CompassSearch(bench, flaps, ailerons)
                .lowest(bench.at(new Place(0, 0)), CandidateFlight::angle, 8 * DEGREE, 4 * DEGREE);
        assertThat(left.flap()).isCloseTo(-right.flap(), within(1e-12));
        assertThat(left.aileron()).isCloseTo(-right.aileron(), within(1e-12));
    }
}
