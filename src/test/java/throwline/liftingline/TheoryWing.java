package throwline.liftingline;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import throwline.section.SectionCurve;

/** A wing of theory with its solver, chord correction off unless asked for. */
final class TheoryWing {

    final SpanGrid grid;
    final InfluenceMatrix influence;
    final LiftingLineSolver solver;
    private final List<SectionCurve> curves;

    TheoryWing(Planform planform, double[] ends, int strips, DoubleFunction<SectionCurve> section) {
        this(planform, ends, strips, section, Ground.none(), g -> ChordCorrection.none());
    }

    TheoryWing(
            Planform planform,
            double[] ends,
            int strips,
            DoubleFunction<SectionCurve> section,
            Ground ground,
            Function<SpanGrid, ChordCorrection> correction) {
        grid = SpanGrid.of(planform, ends, strips);
        influence = new InfluenceMatrix(grid, ground, correction.apply(grid));
        solver = new LiftingLineSolver(influence, SolverSettings.standard());
        List<SectionCurve> list = new ArrayList<>();
        for (int i = 0; i < grid.size(); i++) {
            list.add(section.apply(grid.control(i) / planform.semiSpan()));
        }
        curves = list;
    }

    LiftingLineSolution solve(double incidence, Motion motion) {
        return solver.solve(LiftingLineProblem.of(curves, incidence, motion), Optional.empty());
    }

    StripForces at(double incidence) {
        return at(incidence, Motion.straight());
    }

    StripForces at(double incidence, Motion motion) {
        LiftingLineSolution solution = solve(incidence, motion);
        if (!solution.status().converged()) {
            throw new AssertionError("not converged: " + solution.status());
        }
        return StripForces.of(solution);
    }

    /** Incidence at which a linear wing carries a lift coefficient, rad. */
    double incidenceFor(double lift) {
        double at0 = at(0).liftCoefficient();
        double at1 = at(0.01).liftCoefficient();
        return 0.01 * (lift - at0) / (at1 - at0);
    }

    List<SectionCurve> curves() {
        return curves;
    }
}
