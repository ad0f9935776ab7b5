package throwline.flight;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BracketingNthOrderBrentSolver;
import throwline.liftingline.LiftingLineProblem;
import throwline.liftingline.LiftingLineSolution;
import throwline.liftingline.LiftingLineSolver;
import throwline.liftingline.Motion;
import throwline.liftingline.StripForces;
import throwline.section.SectionCurve;

/**
 * Steady roll: the rate at which the rolling moment of both sides together vanishes, angle of attack held. Damping by the
 * tail is left out (of the order of two per cent).
 */
final class Roller {

    /** Largest helix angle searched, rad: three times what an aerobatic model reaches. */
    private static final double STEEPEST_HELIX = 1.2;

    private static final double HELIX_TOLERANCE = 1e-5;
    private static final int MOST_EVALUATIONS = 60;

    private final Airframe airframe;
    private final LiftingLineSolver solver;

    Roller(Airframe airframe) {
        this.airframe = airframe;
        solver = airframe.wingSolver();
    }

    /**
     * Steady roll rate to the right.
     *
     * @param deflections set-up plus stick
     * @param speed airspeed, m/s
     * @param alpha angle of attack of the body's axis, rad
     * @return rad/s; empty where no rate balances or a solve did not converge
     */
    OptionalDouble rate(Deflections deflections, double speed, double alpha) {
        List<SectionCurve> curves = airframe.strips().curves(deflections::on, airframe.reynoldsPerMetre(speed));
        double semiSpan = airframe.model().wing().semiSpan();
        double incidence = alpha + airframe.model().wing().incidence();
        Rolling rolling = new Rolling(curves, incidence, semiSpan);
        if (rolling.value(0) <= 0 || rolling.value(STEEPEST_HELIX) >= 0) {
            return OptionalDouble.empty();
        }
        double helix = new BracketingNthOrderBrentSolver(HELIX_TOLERANCE, 5)
                .solve(MOST_EVALUATIONS, rolling, 0, STEEPEST_HELIX);
        return rolling.converged ? OptionalDouble.of(helix * speed / semiSpan) : OptionalDouble.empty();
    }

    /** Rolling moment coefficient over the tips' helix angle. */
    private final class Rolling implements UnivariateFunction {
        private final List<SectionCurve> curves;
        private final double incidence;
        private final double semiSpan;
        private Optional<LiftingLineSolution> last = Optional.empty();
        private boolean converged = true;

        Rolling(List<SectionCurve> curves, double incidence, double semiSpan) {
            this.curves = curves;
            this.incidence = incidence;
            this.semiSpan = semiSpan;
        }

        @Override
        public double value(double helix) {
            LiftingLineSolution solution =
                    solver.solve(LiftingLineProblem.of(curves, incidence, Motion.rolling(helix / semiSpan)), last);
            last = Optional.of(solution);
            converged &= solution.status().converged();
            return StripForces.of(solution).rollingCoefficient();
        }
    }
}
