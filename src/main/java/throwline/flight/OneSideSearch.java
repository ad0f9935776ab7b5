package throwline.flight;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.linear.ArrayRealVector;
import throwline.liftingline.AngleWalk;
import throwline.liftingline.LiftingLineProblem;
import throwline.liftingline.LiftingLineSolution;
import throwline.liftingline.LiftingLineSolver;
import throwline.liftingline.Motion;
import throwline.liftingline.SpeedCurves;
import throwline.liftingline.StripForces;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.model.Surface;
import throwline.section.SectionCurve;

/**
 * Search for what a roll stick does against a surface of which one side stays behind: a walk up in angle of attack at full
 * stick, the wing carrying what it carries in steady flight; speeds follow from its lift (methods manual 11.4). The model does
 * not roll; rudder and sideslip are left out. Which side stays makes no difference, as left and right are alike.
 */
final class OneSideSearch {

    private static final double STEP = Math.toRadians(2);
    private static final int MOST_POINTS = 20;

    /** The walk begins so far below the angle of steady flight where the side is held, as it mostly is. */
    private static final double SHORT_START = Math.toRadians(1);

    /** And so far where it is not: some 1.5 times the speed. */
    private static final double HEAD_START = Math.toRadians(5);

    private static final double SHARE_TOLERANCE = 1e-3;
    private static final int LEFT = -1;
    private static final int RIGHT = 1;

    private final Airframe airframe;
    private final LiftingLineSolver solver;
    private final Attitude steady;
    private final double wanted;
    private final SpeedCurves curves;
    private LiftingLineSolution last;

    /**
     * @param airframe the model
     * @param steady flight at the speed asked about
     */
    OneSideSearch(Airframe airframe, Attitude steady) {
        this.airframe = airframe;
        this.steady = steady;
        solver = airframe.wingSolver();
        curves = new SpeedCurves(airframe.strips(), airframe.reynoldsPerMetre(steady.speed()));
        wanted = StripForces.of(steady.wing()).liftCoefficient();
        last = steady.wing();
    }

    /** Lift coefficient that the wing carries. */
    double wanted() {
        return wanted;
    }

    /**
     * A stick against one side of a surface that stays at an angle while all else stands in a set-up.
     *
     * @param setUp where all else stands
     * @param surface of the wing
     * @param stays where its one side stays, rad
     */
    OneSide against(SetUp setUp, Surface surface, double stays, Stick.Roll stick) {
        // The side that stays is the one against which the stick goes to the right.
        int side = side(setUp, surface, stays, stick);
        List<SectionCurve> full = curves(deflections(setUp, surface, side, stays, stick, 1));
        AngleWalk<Point> walk = walk(full, SHORT_START);
        OptionalDouble place = place(walk);
        if (place.isEmpty() || walk.value(place.getAsDouble(), Point::rolling) < 0) {
            last = steady.wing();
            walk = walk(full, HEAD_START);
            place = place(walk);
        }
        if (place.isEmpty()) {
            return new OneSide(stick.name(), Optional.empty(), Optional.empty());
        }
        double left = walk.value(place.getAsDouble(), Point::rolling);
        return new OneSide(
                stick.name(),
                share(setUp, surface, side, stays, stick, walk, place.getAsDouble()),
                slowest(walk, place.getAsDouble(), left));
    }

    /** Up to where no more is asked: the lift's top, or more than the wanted lift against a side that is not held. */
    private AngleWalk<Point> walk(List<SectionCurve> full, double start) {
        return AngleWalk.up(
                steady.alpha() - start,
                STEP,
                MOST_POINTS,
                (a, before) -> Point.of(a, solve(full, a)),
                w -> w.top() < w.size() - 2
                        || (w.last().lift() > wanted && w.last().rolling() < 0));
    }

    /** Where the wing carries what it has to; empty where it does so from the first point on, or nowhere. */
    private OptionalDouble place(AngleWalk<Point> walk) {
        return walk.top() < 1 || walk.get(0).lift() >= wanted
                ? OptionalDouble.empty()
                : walk.firstFall(point -> wanted - point.lift(), 0, walk.top());
    }

    /** The stick of these, one at least, that rolls most against the side that stays, at the angle of steady flight. */
    Stick.Roll strongest(SetUp setUp, Surface surface, double stays, List<Stick.Roll> sticks) {
        if (sticks.size() == 1) {
            return sticks.get(0);
        }
        int side = side(setUp, surface, stays, sticks.get(0));
        double[] moments = sticks.stream()
                .mapToDouble(stick -> rolling(deflections(setUp, surface, side, stays, stick, 1), steady.alpha()))
                .toArray();
        return sticks.get(new ArrayRealVector(moments, false).getMaxIndex());
    }

    private int side(SetUp setUp, Surface surface, double stays, Stick.Roll stick) {
        return rolling(deflections(setUp, surface, LEFT, stays, stick, 0), steady.alpha()) < 0 ? LEFT : RIGHT;
    }

    private Optional<Double> share(
            SetUp setUp,
            Surface surface,
            int side,
            double stays,
            Stick.Roll stick,
            AngleWalk<Point> walk,
            double place) {
        double alpha = walk.value(place, Point::alpha);
        last = walk.get((int) Math.floor(place)).solution();
        UnivariateFunction rolling = part -> rolling(deflections(setUp, surface, side, stays, stick, part), alpha);
        double alone = rolling.value(0);
        double authority = rolling.value(1) - alone;
        if (authority <= 0) {
            return Optional.empty();
        }
        double straight = Math.max(0, -alone / authority);
        if (straight >= 1) {
            return Optional.of(straight);
        }
        OptionalDouble root = new WarmStartSecant(SHARE_TOLERANCE, straight, authority).solve(rolling, 0, 1);
        return Optional.of(root.orElse(straight));
    }

    /** The speed down to which the moment at full stick is none against it, or the lift is there. */
    private Optional<Double> slowest(AngleWalk<Point> walk, double place, double left) {
        if (left >= 0) {
            int next = (int) Math.floor(place);
            double until = walk.firstFall(Point::rolling, next, walk.top()).orElse(walk.top());
            return Optional.of(speed(walk.value(Math.max(place, until), Point::lift)));
        }
        // Not at this speed: the last angle below it at which it is held.
        for (int k = (int) Math.floor(place); k >= 0; k--) {
            if (walk.get(k).rolling() >= 0) {
                double at = walk.firstFall(Point::rolling, k, k + 1).orElse(k);
                return Optional.of(speed(walk.value(at, Point::lift)));
            }
        }
        return Optional.empty();
    }

    private double speed(double lift) {
        return steady.speed() * Math.sqrt(wanted / lift);
    }

    private Deflections deflections(
            SetUp setUp, Surface surface, int side, double stays, Stick.Roll stick, double share) {
        return Deflections.of(airframe.model().wing(), setUp, stick, share).with(surface, side, stays);
    }

    private List<SectionCurve> curves(Deflections deflections) {
        return curves.at(deflections::on);
    }

    private double rolling(Deflections deflections, double alpha) {
        return StripForces.rollingCoefficient(solve(curves(deflections), alpha));
    }

    /** Each is looked for from the one before: the factors of its last step then serve again. */
    private LiftingLineSolution solve(List<SectionCurve> curves, double alpha) {
        double incidence = alpha + airframe.model().wing().incidence();
        last = solver.solve(LiftingLineProblem.of(curves, incidence, Motion.straight()), Optional.of(last));
        return last;
    }

    /** The wing at full stick at one angle. */
    private record Point(double alpha, double lift, double rolling, LiftingLineSolution solution)
            implements AngleWalk.Point {

        static Point of(double alpha, LiftingLineSolution solution) {
            StripForces forces = StripForces.of(solution);
            return new Point(alpha, forces.liftCoefficient(), forces.rollingCoefficient(), solution);
        }

        @Override
        public boolean converged() {
            return solution.status().converged();
        }
    }
}
