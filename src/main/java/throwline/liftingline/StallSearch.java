package throwline.liftingline;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.analysis.solvers.AllowedSolution;
import org.apache.commons.math3.analysis.solvers.BracketingNthOrderBrentSolver;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import throwline.section.SectionCurve;

/** Search for the three marks of the stall of a wing alone: a walk up in incidence, then a root or a maximum in the step. */
public final class StallSearch {

    private static final double FIRST = Math.toRadians(-20);
    private static final double STEP = Math.toRadians(0.5);
    private static final int MOST_POINTS = 141;

    /** Incidences of the marks are found to this, rad. */
    private static final double TOLERANCE = 1e-6;

    /** The incidence of the largest lift is found to this, rad: lift is level there. */
    private static final double TOP_TOLERANCE = 1e-4;

    private static final int MOST_EVALUATIONS = 100;

    /** After the plateau the lift is watched for so much longer, rad. */
    private static final double AFTER = Math.toRadians(4);

    private final LiftingLineSolver solver;
    private final List<SectionCurve> curves;
    private final Motion motion;

    /**
     * @param solver the wing's solver
     * @param curves one a strip
     * @param motion rates and sideslip, held
     */
    public StallSearch(LiftingLineSolver solver, List<SectionCurve> curves, Motion motion) {
        this.solver = solver;
        this.curves = List.copyOf(curves);
        this.motion = motion;
    }

    /** The marks; empty where a solve did not converge or the wing does not stall between -20 and 50 degrees. */
    public Optional<StallMarks> find() {
        AngleWalk<WingPoint> walk = AngleWalk.up(
                FIRST, STEP, MOST_POINTS, (incidence, before) -> at(incidence, before.latest()), StallSearch::isDone);
        if (!walk.ended() || walk.get(0).margin() <= 0) {
            return Optional.empty();
        }
        WingPoint onset = crossing(walk, WingPoint::margin);
        WingPoint plateau = crossing(walk, StallSearch::beforePlateau);
        WingPoint top = highest(walk);
        return Optional.of(new StallMarks(
                new StallMarks.Mark(onset.alpha(), onset.lift()),
                onset.reading().strip(),
                new StallMarks.Mark(top.alpha(), top.lift()),
                new StallMarks.Mark(
                        plateau.alpha(), StripForces.of(plateau.solution()).hullLiftCoefficient())));
    }

    private static boolean isDone(AngleWalk<WingPoint> walk) {
        return walk.firstFall(WingPoint::margin).isPresent()
                && walk.firstFall(StallSearch::beforePlateau).orElse(Double.POSITIVE_INFINITY) + AFTER / STEP
                        < walk.size() - 1;
    }

    private static double beforePlateau(WingPoint point) {
        return 0.5 - point.reading().stalledShare();
    }

    private WingPoint at(double incidence, Optional<WingPoint> near) {
        return WingPoint.of(
                incidence,
                solver.solve(LiftingLineProblem.of(curves, incidence, motion), near.map(WingPoint::solution)));
    }

    /** The first point past the sign change of a quantity. */
    private WingPoint crossing(AngleWalk<WingPoint> walk, ToDoubleFunction<WingPoint> quantity) {
        int past = (int) Math.ceil(walk.firstFall(quantity).orElseThrow());
        Optional<WingPoint> before = Optional.of(walk.get(past - 1));
        // Solved again from below, a point that lay on the edge may lie on this side of it, and there is nothing to
        // search.
        WingPoint far = at(walk.get(past).alpha(), before);
        if (quantity.applyAsDouble(far) >= 0) {
            return far;
        }
        double root = new BracketingNthOrderBrentSolver(TOLERANCE, 5)
                .solve(
                        MOST_EVALUATIONS,
                        incidence -> quantity.applyAsDouble(at(incidence, before)),
                        walk.get(past - 1).alpha(),
                        walk.get(past).alpha(),
                        AllowedSolution.BELOW_SIDE);
        return at(root, before);
    }

    /** The largest lift; on a flat top where lift first comes near it. */
    private WingPoint highest(AngleWalk<WingPoint> walk) {
        WingPoint top = walk.get(walk.top());
        double incidence = new BrentOptimizer(1e-10, TOP_TOLERANCE)
                .optimize(
                        new MaxEval(MOST_EVALUATIONS),
                        GoalType.MAXIMIZE,
                        new SearchInterval(top.alpha() - STEP, top.alpha() + STEP, top.alpha()),
                        new UnivariateObjectiveFunction(
                                a -> at(a, Optional.of(top)).lift()))
                .getPoint();
        WingPoint highest = at(incidence, Optional.of(top));
        double stall = walk.stall().alpha();
        return stall < highest.alpha() - STEP ? at(stall, Optional.of(top)) : highest;
    }
}
