package throwline.flight;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import throwline.liftingline.LiftingLineProblem;
import throwline.liftingline.LiftingLineSolution;
import throwline.liftingline.LiftingLineSolver;
import throwline.liftingline.Motion;
import throwline.liftingline.StripForces;
import throwline.section.SectionCurve;

/** The wing alone with its surfaces held; each solution is started from the one before. One thread at a time. */
final class FixedSurfaceWing {

    private static final double ANGLE_TOLERANCE = 1e-4;
    private static final double USUAL_SLOPE = 5;

    private final LiftingLineSolver solver;
    private final List<SectionCurve> curves;
    private LiftingLineSolution last;
    private double lastIncidence = Double.NaN;

    /**
     * @param solver for the wing's strips
     * @param curves of the sections, one a strip
     * @param start a solution near by
     */
    FixedSurfaceWing(LiftingLineSolver solver, List<SectionCurve> curves, LiftingLineSolution start) {
        this.solver = solver;
        this.curves = curves;
        last = start;
    }

    /** At an incidence, rad. */
    LiftingLineSolution at(double incidence) {
        if (incidence != lastIncidence) {
            last = solver.solve(LiftingLineProblem.of(curves, incidence, Motion.straight()), Optional.of(last));
            lastIncidence = incidence;
        }
        return last;
    }

    /**
     * Where it carries a lift coefficient; empty where it does not between two incidences.
     *
     * @param lift the coefficient
     * @param near a guess of the incidence, rad
     * @param low lower end, rad
     * @param high upper end, rad
     */
    Optional<LiftingLineSolution> carrying(double lift, double near, double low, double high) {
        OptionalDouble incidence =
                new WarmStartSecant(ANGLE_TOLERANCE, near, USUAL_SLOPE).solve(i -> lift(i) - lift, low, high);
        return incidence.isPresent() ? Optional.of(at(incidence.getAsDouble())) : Optional.empty();
    }

    private double lift(double incidence) {
        return StripForces.of(at(incidence)).liftCoefficient();
    }
}
