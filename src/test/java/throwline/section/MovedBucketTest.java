package throwline.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.junit.jupiter.api.Test;
import throwline.input.PackedAirfoils;
import throwline.model.AirfoilName;
import throwline.model.Hinge;

/**
 * The low-drag range moves with a surface: polars of an airfoil with its flap at -6 degrees, made from those at zero alone,
 * against the measured ones (M. S. Selig, J. F. Donovan, D. B. Fraser, Airfoils at Low Speeds, SoarTech 8, 1989, figure
 * 12.21, READ; methods manual 4.6).
 */
class MovedBucketTest {

    @Test
    void flapUpAtTwoHundredThousand() {
        Airfoil all = new PackedAirfoils().find(new AirfoilName("e214c")).orElseThrow();
        Airfoil clean = new Airfoil(
                all.name(),
                all.description(),
                all.thickness(),
                all.camber(),
                all.nominalMoment(),
                all.runs().stream().filter(run -> run.deflection() == 0).toList());
        PolarRun measured = all.runs().stream()
                .filter(run -> run.deflection() < 0 && run.kind() == PolarRun.Kind.DRAG)
                .filter(run -> Math.abs(run.reynolds() - 200_000) < 10_000)
                .findFirst()
                .orElseThrow();
        SectionCurve made = new MeasuredSections()
                .curve(
                        SectionPlace.of(clean),
                        new SurfaceState(measured.deflection(), 0.21, Hinge.TAPED),
                        measured.reynolds());
        int compared = 0;
        for (PolarRun.Point point : measured.points()) {
            if (point.lift() > -0.1 && point.lift() < 0.5) {
                double alpha = new BrentSolver(1e-9).solve(100, a -> made.lift(a) - point.lift(), -0.15, 0.15);
                assertThat(made.drag(alpha)).as("at " + point.lift()).isCloseTo(point.drag(), withPercentage(12));
                compared++;
            }
        }
        assertThat(compared).isEqualTo(4);
    }
}
