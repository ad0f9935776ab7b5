package throwline.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import throwline.air.Gravity;

/** Methods manual 9.1: reference model R, 3 kg, 0.45 m2, parabolic polar (COMPUTED in closed form). */
class SteadyDescentTest {

    private static final double K = 0.0566791;
    private static final SteadyDescent MODEL_R = new SteadyDescent(3.0 * Gravity.STANDARD, 1.225, 0.45);

    private static double drag(double lift) {
        return 0.045 + K * lift * lift;
    }

    @ParameterizedTest
    @CsvSource({
        "0.89103, 0.09000, 10.917, 5.7677, 1.0971",
        "1.54332, 0.18000, 8.288, 6.652, 0.9601",
        "0.2, 0.04727, 22.790, 13.297, 5.242"
    })
    void pointsOfAParabolicPolar(double lift, double drag, double speed, double angle, double sink) {
        assertThat(drag(lift)).isCloseTo(drag, within(0.5e-5));
        assertThat(MODEL_R.speed(lift, drag(lift))).isCloseTo(speed, within(0.5e-3));
        assertThat(Math.toDegrees(SteadyDescent.angle(lift, drag(lift)))).isCloseTo(angle, within(0.5e-3));
        assertThat(MODEL_R.sink(lift, drag(lift))).isCloseTo(sink, within(0.6e-3));
    }

    @Test
    void exactMinimumSink() {
        double lift = new BrentOptimizer(1e-10, 1e-12)
                .optimize(
                        new MaxEval(200),
                        GoalType.MINIMIZE,
                        new SearchInterval(0.5, 3),
                        new UnivariateObjectiveFunction(cl -> MODEL_R.sink(cl, drag(cl))))
                .getPoint();
        assertThat(lift).isCloseTo(1.56506, within(1e-4));
        assertThat(MODEL_R.speed(lift, drag(lift))).isCloseTo(8.2302, within(1e-3));
        assertThat(Math.toDegrees(SteadyDescent.angle(lift, drag(lift)))).isCloseTo(6.6992, within(1e-3));
        assertThat(MODEL_R.sink(lift, drag(lift))).isCloseTo(0.96011, within(0.5e-5));
    }

    @ParameterizedTest
    @CsvSource({
        "0.15, 9, 10.716, 1.2948",
        "0.15, 11, 12.572, 0.8610",
        "0.15, 13, 15.704, 0.6080",
        "0.25, 9, 15.033, 1.2727",
        "0.25, 11, 19.149, 0.8333",
        "0.25, 13, 25.160, 0.5717",
        "0.35, 9, 19.394, 1.2430",
        "0.35, 11, 25.926, 0.7934",
        "0.35, 13, 35.310, 0.5154",
        "0.50, 9, 26.084, 1.1836",
        "0.50, 11, 36.789, 0.7065",
        "0.50, 13, 53.542, 0.3753"
    })
    void heldSpeedWithABrake(double flatDrag, double speed, double angle, double lift) {
        SteadyDescent.Held held = MODEL_R.held(cl -> Math.hypot(cl, flatDrag + K * cl * cl), 0, 1.6, speed);
        assertThat(held.outcome()).isEqualTo(Descent.Outcome.STEADY);
        assertThat(held.at()).isCloseTo(lift, within(0.5e-4));
        double drag = flatDrag + K * held.at() * held.at();
        assertThat(Math.toDegrees(SteadyDescent.angle(held.at(), drag))).isCloseTo(angle, within(0.5e-3));
    }

    @ParameterizedTest
    @CsvSource({"0.15, 26.676", "0.25, 20.663", "0.35, 17.463", "0.50, 14.611"})
    void straightDown(double flatDrag, double speed) {
        assertThat(MODEL_R.speed(0, flatDrag)).isCloseTo(speed, within(0.5e-3));
    }

    @Test
    void speedsThatCannotBeHeld() {
        assertThat(MODEL_R.held(cl -> Math.hypot(cl, 0.5 + K * cl * cl), 0, 1.6, 16)
                        .outcome())
                .as("faster than straight down")
                .isEqualTo(Descent.Outcome.TOO_FAST);
        assertThat(MODEL_R.held(cl -> Math.hypot(cl, 0.15 + K * cl * cl), 0, 1.2, 9)
                        .outcome())
                .as("slower than the stall")
                .isEqualTo(Descent.Outcome.TOO_SLOW);
    }

    @ParameterizedTest
    @CsvSource({"1.0, 10.331", "1.2, 9.431", "1.5, 8.436", "1.8, 7.701"})
    void stallSpeeds(double maxLift, double speed) {
        assertThat(MODEL_R.stallSpeed(maxLift)).isCloseTo(speed, within(0.5e-3));
    }

    @ParameterizedTest
    @CsvSource({"0, 20.00", "2, 24.29", "4, 30.70", "6, 40.94"})
    void groundPathInAHeadwind(double wind, double angle) {
        double ground = SteadyDescent.groundAngle(11, Math.toRadians(20), wind);
        assertThat(Math.toDegrees(ground)).isCloseTo(angle, within(0.5e-2));
    }
}
