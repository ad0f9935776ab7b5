package throwline.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import throwline.air.Gravity;

/**
 * Going around: the equations of a point of weight with the pilot and the motor of methods manual 20.15 (half a second to react, a
 * quarter to speed up, 3 g for each rad off the wanted path, -0.2 to 0.35), integrated by Commons Math.
 */
class GoAroundFlightTest {

    private static final double SPEED = 12;
    private static final double PER_LOAD = 0.06;

    private record Equations(double closed, double open, double target, boolean acts)
            implements FirstOrderDifferentialEquations {

        @Override
        public int getDimension() {
            return 4;
        }

        /** Speed, path above the horizon, height, place. */
        @Override
        public void computeDerivatives(double t, double[] y, double[] change) {
            double power = acts ? 1 - Math.exp(-(t - 0.5) / 0.25) : 0;
            double more = acts ? Math.max(-0.2, Math.min(0.35, 3 * (target - y[1]))) : 0;
            double drag = closed + power * (open - closed) + PER_LOAD * more;
            change[0] = -Gravity.STANDARD * (drag + Math.sin(y[1]));
            change[1] = Gravity.STANDARD / y[0] * more;
            change[2] = y[0] * Math.sin(y[1]);
            change[3] = y[0] * Math.cos(y[1]);
        }
    }

    /** States every fiftieth of a second for six seconds; the pilot begins to act on a border of two of them. */
    private static double[][] states(double descent, double closed, double open) {
        double target = Math.min(Math.toRadians(15), Math.asin(-open));
        DormandPrince853Integrator steps = new DormandPrince853Integrator(1e-8, 0.02, 1e-10, 1e-10);
        double[][] states = new double[301][];
        states[0] = new double[] {SPEED, -descent, 0, 0};
        for (int k = 0; k < 300; k++) {
            states[k + 1] = new double[4];
            Equations equations = new Equations(closed, open, target, k >= 25);
            steps.integrate(equations, 0.02 * k, states[k], 0.02 * (k + 1), states[k + 1]);
        }
        return states;
    }

    @ParameterizedTest
    @CsvSource({"0.2, 0.2, -0.3", "0.35, 0.35, -0.15", "0.1, 0.1, -0.8", "0.3, 0.3, -0.05"})
    void againstCommonsMath(double descent, double closed, double open) {
        GoAroundFlight flight = new GoAroundFlight(SPEED, descent, closed, open, PER_LOAD);
        double[][] states = states(descent, closed, open);
        List<PathPoint> way = flight.way();
        assertThat(way).hasSize(31);
        double lowest = Arrays.stream(states).mapToDouble(y -> y[2]).min().orElseThrow();
        assertThat(flight.heightLost()).isCloseTo(-lowest, withPercentage(2));
        for (int k : new int[] {1, 2, 5, 10, 30}) {
            double[] y = states[10 * k];
            assertThat(way.get(k).along()).isCloseTo(y[3], within(0.05 + 0.01 * y[3]));
            assertThat(way.get(k).height()).isCloseTo(y[2], within(0.03 + 0.01 * y[3]));
        }
    }

    /** A steady descent goes on for half a second: its sink times that. Where nothing pulls up, it sinks on. */
    @Test
    void beforeThePilotActs() {
        List<PathPoint> way = new GoAroundFlight(SPEED, 0.2, Math.sin(0.2), -0.3, PER_LOAD).way();
        assertThat(way.get(2).height()).isCloseTo(-0.4 * SPEED * Math.sin(0.2), within(1e-9));
        assertThat(way.get(2).along()).isCloseTo(0.4 * SPEED * Math.cos(0.2), within(1e-9));
        assertThat(new GoAroundFlight(SPEED, 0.2, 0.2, 0.01, PER_LOAD).heightLost())
                .isInfinite();
    }

    /** The parts of a landing add up; half of a change of the elevator is the mix to start with (PRACTICE). */
    @Test
    void sums() {
        List<Landing.Pull> pulls = List.of(new Landing.Pull(0.8, 1, 0.01, false));
        Landing landing = new Landing(2, 12, true, 30, 11, 0, 9, 9.5, 25, 1, List.of(), pulls, false);
        assertThat(landing.touchdown()).isEqualTo(51);
        assertThat(landing.total()).isEqualTo(76);
        assertThat(landing.takesAllLift()).isFalse();
        assertThat(new Landing(
                                2,
                                12,
                                true,
                                30,
                                11,
                                0,
                                9,
                                9.5,
                                25,
                                1,
                                List.of(),
                                List.of(pulls.get(0), new Landing.Pull(1, 1, 0.01, true)),
                                false)
                        .takesAllLift())
                .isTrue();
        assertThat(StartingMix.of(-0.3)).isEqualTo(-0.15);
    }
}
