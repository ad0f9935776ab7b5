package throwline.liftingline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The image of the bound vortex: mean share of the speed that it takes from a wing of chord 0.27 m and span 1.7 m
 * (COMPUTED, methods manual 6.6, two figures printed; how the load was spread is not said, so
 * 8 % is allowed; the lift is taken as that of the circulation in the undisturbed speed).
 */
class GroundImageTest {

    @ParameterizedTest
    @CsvSource({"0.8, 0.1, 0.045", "1.3, 0.1, 0.072", "1.3, 0.05, 0.16"})
    void meanLossOfSpeed(double lift, double height, double loss) {
        TheoryWing wing = new TheoryWing(
                new RectangularPlanform(0.85, 0.27),
                new double[0],
                80,
                at -> LawCurve.linear(0),
                new Ground(height * 1.7, true),
                grid -> ChordCorrection.none());
        double incidence = new BrentSolver(1e-6).solve(100, angle -> circulationLift(wing, angle) - lift, 0.01, 0.6);
        LiftingLineSolution solution = wing.solve(incidence, Motion.straight());
        double mean = 0;
        for (int i = 0; i < wing.grid.size(); i++) {
            mean += (1 - solution.speed(i)) * wing.grid.width(i) / wing.grid.span();
        }
        assertThat(mean).isCloseTo(loss, withPercentage(8));
    }

    /** Lift coefficient of the circulation in the undisturbed speed. */
    private static double circulationLift(TheoryWing wing, double incidence) {
        LiftingLineSolution solution = wing.solve(incidence, Motion.straight());
        double sum = 0;
        for (int i = 0; i < wing.grid.size(); i++) {
            sum += 2 * solution.circulation(i) * wing.grid.width(i);
        }
        return sum / wing.grid.area();
    }
}
