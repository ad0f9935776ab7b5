package throwline.flight;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.analysis.UnivariateFunction;
import throwline.liftingline.LiftingLineProblem;
import throwline.liftingline.LiftingLineSolution;
import throwline.liftingline.LiftingLineSolver;
import throwline.liftingline.Motion;
import throwline.liftingline.StripForces;
import throwline.liftingline.WingCurves;
import throwline.section.SectionCurve;

/**
 * Steady roll: the rate at which the rolling moment of both sides together vanishes, angle of attack held. Damping by the
 * tail is left out (of the order of two per cent).
 */
final class RollSolver {

    /** Largest helix angle searched, rad: three times what an aerobatic model reaches. */
    private static final double STEEPEST_HELIX = 1.2;

    private static final double HELIX_TOLERANCE = 1e-5;

    /** First guesses of the helix angle and of the damping; the real ones are found from there. */
    private static final double USUAL_HELIX = 0.1;

    private static final double USUAL_DAMPING = -0.5;

    /** Radius of gyration in roll over span of a model with its mass near the body (PRACTICE). */
    private static final double GYRATION = 0.12;

    private final Airframe airframe;
    private final WingCurves setUp;
    private final LiftingLineSolver solver;
    private final Map<Deflections, WingCurves> curves = new HashMap<>();

    /**
     * @param airframe the model
     * @param setUp section curves of its wing, stick centred
     */
    RollSolver(Airframe airframe, WingCurves setUp) {
        this.airframe = airframe;
        this.setUp = setUp;
        solver = airframe.wingSolver();
    }

    /**
     * Steady roll to the right.
     *
     * @param deflections set-up plus stick
     * @param speed airspeed, m/s
     * @param alpha angle of attack of the body's axis, rad
     * @param mass of the model, kg
     * @return the roll; empty where no rate balances or a solve did not converge
     */
    Optional<Roll> steady(Deflections deflections, double speed, double alpha, double mass) {
        double semiSpan = airframe.model().wing().semiSpan();
        Rolling rolling = rolling(deflections, speed, alpha);
        double atRest = rolling.value(0);
        WarmStartSecant root = new WarmStartSecant(HELIX_TOLERANCE, USUAL_HELIX, USUAL_DAMPING);
        OptionalDouble helix = root.solve(rolling, 0, STEEPEST_HELIX);
        if (atRest <= 0 || helix.isEmpty() || !rolling.isSolvedAt(helix.getAsDouble())) {
            return Optional.empty();
        }
        double rate = helix.getAsDouble() * speed / semiSpan;
        double damping = -atRest / helix.getAsDouble();
        double yawing =
                rolling.last.map(s -> StripForces.of(s).yawingCoefficient()).orElse(0.0);
        double spinUp = spinUp(speed, damping, mass);
        return Optional.of(new Roll(rate, Math.PI / 2 / rate + spinUp, yawing, damping));
    }

    /** Rolling moment coefficient without a roll, right wing down positive. */
    double atRest(Deflections deflections, double speed, double alpha) {
        return rolling(deflections, speed, alpha).value(0);
    }

    private Rolling rolling(Deflections deflections, double speed, double alpha) {
        List<SectionCurve> here = curves.computeIfAbsent(
                        deflections, held -> airframe.strips().curves(held::on, setUp))
                .at(airframe.reynoldsPerMetre(speed));
        double incidence = alpha + airframe.model().wing().incidence();
        return new Rolling(here, incidence, airframe.model().wing().semiSpan());
    }

    /** Time constant of the roll, s: {@code 4 I / (rho V S b^2 |Clp|)} (methods manual 11.2). */
    private double spinUp(double speed, double damping, double mass) {
        double span = airframe.model().wing().span();
        double inertia = mass * Math.pow(GYRATION * span, 2);
        return timeConstant(
                inertia,
                airframe.air().density(),
                speed,
                airframe.model().wing().area(),
                span,
                damping);
    }

    /** The same for given numbers, SI units. */
    static double timeConstant(double inertia, double density, double speed, double area, double span, double damping) {
        return 4 * inertia / (density * speed * area * span * span * Math.abs(damping));
    }

    /** Rolling moment coefficient over the tips' helix angle. */
    private final class Rolling implements UnivariateFunction {
        private final List<SectionCurve> curves;
        private final double incidence;
        private final double semiSpan;
        private Optional<LiftingLineSolution> last = Optional.empty();

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
            return StripForces.rollingCoefficient(solution);
        }

        boolean isSolvedAt(double helix) {
            value(helix);
            return last.map(s -> s.status().converged()).orElse(false);
        }
    }
}
