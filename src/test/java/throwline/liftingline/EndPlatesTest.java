package throwline.liftingline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.Collections;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** End plates on a small surface. */
class EndPlatesTest {

    private static double slope(double aspect, double height) {
        SpanGrid grid = SpanGrid.of(new RectangularPlanform(aspect / 2, 1), new double[0], 16);
        EndPlates plates = EndPlates.of(height * aspect, aspect);
        InfluenceMatrix matrix = new InfluenceMatrix(grid, Ground.none(), ChordCorrection.of(grid, plates), plates);
        LiftingLineSolver solver = new LiftingLineSolver(matrix, SolverSettings.standard());
        LawCurve straight = LawCurve.linear(0);
        double incidence = 0.02;
        LiftingLineSolution solution = solver.solve(
                LiftingLineProblem.of(Collections.nCopies(grid.size(), straight), incidence, Motion.straight()),
                Optional.empty());
        return StripForces.of(solution).liftCoefficient() / incidence;
    }

    /**
     * Lift slope over that without plates, aspect ratio 2.84, plates as far above as below: COMPUTED with a vortex lattice
     * (tail and plates, flat wake), 4 %; it gives an elevator of 35 % chord 1.178, 1.249 and 1.291.
     */
    @ParameterizedTest
    @CsvSource({"0.2, 1.205", "0.35, 1.294", "0.5, 1.347"})
    void platesAddTheLiftOfTheVortexLattice(double height, double gain) {
        assertThat(slope(2.84, height) / slope(2.84, 0)).isCloseTo(gain, withPercentage(4));
    }

    /** Lift slope without plates, per rad: COMPUTED with the same vortex lattice, 3 %. */
    @ParameterizedTest
    @CsvSource({"2.84, 3.159", "4, 3.718", "6, 4.316"})
    void freeEndsHaveTheSlopeOfTheVortexLattice(double aspect, double expected) {
        assertThat(slope(aspect, 0)).isCloseTo(expected, withPercentage(3));
    }
}
