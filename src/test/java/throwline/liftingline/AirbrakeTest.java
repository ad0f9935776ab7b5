package throwline.liftingline;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleBiFunction;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import throwline.input.ModelFile;
import throwline.input.PackedAirfoils;
import throwline.input.ReadModel;
import throwline.model.Surface;
import throwline.model.Wing;
import throwline.section.MeasuredSections;
import throwline.section.SectionCurve;

/**
 * The set-up at which ordinary solvers fail: inner surfaces 60 degrees down, outer ones 25 up, on every invented example,
 * over the whole range of incidence.
 */
class AirbrakeTest {

    private static final double DOWN = Math.toRadians(60);
    private static final double UP = Math.toRadians(-25);
    private static final double STEP = Math.toRadians(0.1);

    /** Steepest change that a continuous curve makes here, per radian: twice a thin section's lift slope. */
    private static final double STEEPEST = 4 * Math.PI;

    static Stream<Path> examples() throws java.io.IOException {
        try (Stream<Path> files = java.nio.file.Files.list(Path.of("examples"))) {
            return files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("examples")
    void isSolvedEverywhereAndContinuous(Path example) {
        PackedAirfoils airfoils = new PackedAirfoils();
        if (!(ModelFile.read(example, airfoils) instanceof ReadModel.Project project)) {
            throw new AssertionError(example + " cannot be read");
        }
        Wing wing = project.model().wing();
        WingStrips strips = new WingStrips(wing, airfoils, new MeasuredSections(), 80);
        LiftingLineSolver solver = new LiftingLineSolver(
                new InfluenceMatrix(strips.grid(), Ground.none(), ChordCorrection.of(strips.grid())),
                SolverSettings.standard());
        ToDoubleBiFunction<Surface, Integer> airbrake = (surface, side) -> isInner(wing, surface) ? DOWN : UP;
        List<SectionCurve> curves = strips.curves(airbrake, 9e5);
        Optional<LiftingLineSolution> last = Optional.empty();
        Optional<StripForces> before = Optional.empty();
        for (int k = -250; k <= 400; k++) {
            LiftingLineSolution solution =
                    solver.solve(LiftingLineProblem.of(curves, k * STEP, Motion.straight()), last);
            assertThat(solution.status().converged())
                    .as(example + " at " + k / 10.0 + ": " + solution.status())
                    .isTrue();
            StripForces forces = StripForces.of(solution);
            before.ifPresent(b -> assertSmallStep(b, forces));
            last = Optional.of(solution);
            before = Optional.of(forces);
        }
    }

    private static boolean isInner(Wing wing, Surface surface) {
        return wing.surfaces().stream().noneMatch(s -> s.from() < surface.from());
    }

    private static void assertSmallStep(StripForces before, StripForces after) {
        double most = STEEPEST * STEP;
        assertThat(Math.abs(after.liftCoefficient() - before.liftCoefficient())).isLessThan(most);
        assertThat(Math.abs(after.dragCoefficient() - before.dragCoefficient())).isLessThan(most);
        assertThat(Math.abs(after.pitchingCoefficient(0) - before.pitchingCoefficient(0)))
                .isLessThan(most);
    }
}
