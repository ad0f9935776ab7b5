package throwline.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import throwline.model.SetUp;

/** Steady descents, straight down among them, by statics: lift and drag together carry the weight. */
class DescentSolverTest {

    private static final PoweredModel ORCHARD = new PoweredModel();

    private static Stall stall(SetUp setUp) {
        return new Flight(ORCHARD.airframe, setUp).stall(ORCHARD.pack).orElseThrow();
    }

    private static Trimmer trimmer(SetUp setUp) {
        return new Trimmer(ORCHARD.airframe, Deflections.of(ORCHARD.model.wing(), setUp));
    }

    private static DescentSolver solver(SetUp setUp) {
        return new DescentSolver(trimmer(setUp), ORCHARD.pack, stall(setUp).attitude());
    }

    private static double force(double coefficient, double speed) {
        return coefficient
                * ORCHARD.airframe.air().density()
                * speed
                * speed
                * ORCHARD.model.wing().area()
                / 2;
    }

    /** Straight down the drag of an attitude without lift, found by Brent's method (Commons Math), is the weight. */
    @ParameterizedTest
    @ValueSource(ints = {0, 2})
    void straightDown(int which) {
        SetUp setUp = ORCHARD.setUps().get(which);
        double speed = solver(setUp).noseDownSpeed(30).orElseThrow();
        Trimmer trimmer = trimmer(setUp);
        double alpha = new BrentSolver(1e-8)
                .solve(60, a -> trimmer.at(ORCHARD.pack, speed, a).lift(), -0.4, 0.1);
        double drag = force(trimmer.at(ORCHARD.pack, speed, alpha).drag(), speed);
        assertThat(drag).isCloseTo(ORCHARD.weight(), withPercentage(0.1));
        for (double guess : new double[] {15, 80}) {
            assertThat(solver(setUp).noseDownSpeed(guess).orElseThrow()).isCloseTo(speed, withPercentage(0.1));
        }
    }

    /** At every speed between, the forces' resultant is the weight, and the path's angle is that of drag and lift. */
    @Test
    void resultantIsTheWeight() {
        SetUp setUp = ORCHARD.model.reference();
        DescentSolver solver = solver(setUp);
        double slowest = stall(setUp).speed();
        List<Double> speeds = new ArrayList<>();
        for (double faster = 1.05; faster < 3; faster += 0.3) {
            speeds.add(faster * slowest);
        }
        List<Descent> swept = solver.at(speeds);
        for (int i = 0; i < speeds.size(); i++) {
            Attitude a = swept.get(i).steady().orElseThrow();
            assertThat(Math.hypot(force(a.lift(), a.speed()), force(a.drag(), a.speed())))
                    .isCloseTo(ORCHARD.weight(), withPercentage(0.1));
            assertThat(a.descentAngle()).isCloseTo(Math.atan2(a.drag(), a.lift()), within(1e-9));
            Attitude alone = solver(setUp).at(speeds.get(i)).steady().orElseThrow();
            assertThat(a.alpha()).isCloseTo(alone.alpha(), within(1e-4));
        }
        assertThat(solver.at(0.9 * slowest).outcome()).isEqualTo(Descent.Outcome.TOO_SLOW);
        double dive = solver.noseDownSpeed(30).orElseThrow();
        assertThat(solver.at(1.05 * dive).outcome()).isEqualTo(Descent.Outcome.TOO_FAST);
        assertThat(solver.at(0.95 * dive).outcome()).isEqualTo(Descent.Outcome.STEADY);
    }

    /** Fast or slow the wing stalls near one angle, so that what a gust may take is that angle less the model's own. */
    @Test
    void angleLeftForAGust() {
        SetUp setUp = ORCHARD.model.reference();
        Stall stall = stall(setUp);
        Flight flight = new Flight(ORCHARD.airframe, setUp);
        for (double faster : new double[] {1.3, 1.8, 2.6}) {
            Attitude attitude = flight.descent(ORCHARD.pack, stall, faster * stall.speed())
                    .steady()
                    .orElseThrow();
            Optional<GustMargin> margin = flight.gustMargin(ORCHARD.pack, attitude);
            assertThat(margin.orElseThrow().angle() + attitude.alpha())
                    .isCloseTo(stall.attitude().alpha(), within(Math.toRadians(1.5)));
            assertThat(margin.orElseThrow().firstAngle() + attitude.alpha())
                    .isBetween(
                            stall.attitude().alpha() - Math.toRadians(5),
                            stall.attitude().alpha() + Math.toRadians(1.5));
        }
    }
}
