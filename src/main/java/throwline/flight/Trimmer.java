package throwline.flight;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BracketingNthOrderBrentSolver;
import throwline.flight.Attitude.ElevatorLimit;
import throwline.flight.TailSurface.TailForces;
import throwline.flight.TailWake.TailAir;
import throwline.liftingline.LiftingLineProblem;
import throwline.liftingline.LiftingLineSolution;
import throwline.liftingline.LiftingLineSolver;
import throwline.liftingline.Motion;
import throwline.liftingline.SpanGrid;
import throwline.liftingline.StripForces;
import throwline.model.Elevator;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.section.SectionCurve;

/**
 * Balances the whole model at a speed and an angle of attack: forces of the wing strip by strip at their own places,
 * tail in the wing's wake, body and drag items, moments about the balance point; the elevator is what makes them vanish.
 * No angle is taken as small except a strip's own downwash angle.
 *
 * <p>Holds the last solution as a start for the next: one thread at a time.
 */
final class Trimmer {

    /** Elevator angle is found to this, rad: a hundredth of a degree is far below any servo's resolution. */
    private static final double ELEVATOR_TOLERANCE = 1e-5;

    private static final int MOST_EVALUATIONS = 100;

    private final Airframe airframe;
    private final Model model;
    private final Deflections deflections;
    private final LiftingLineSolver solver;
    private final TailSurface tail;
    private final TailWake wake;
    private final double[] trailingEdgeDrop;
    private final Map<Double, List<SectionCurve>> curvesBySpeed = new HashMap<>();
    private Optional<LiftingLineSolution> last = Optional.empty();

    Trimmer(Airframe airframe, Deflections deflections) {
        this.airframe = airframe;
        this.deflections = deflections;
        model = airframe.model();
        solver = airframe.wingSolver();
        tail = airframe.tailSurface();
        wake = new TailWake(model, tail.grid());
        SpanGrid grid = airframe.strips().grid();
        trailingEdgeDrop = new double[grid.size()];
        for (int i = 0; i < grid.size(); i++) {
            int side = grid.control(i) < 0 ? -1 : 1;
            trailingEdgeDrop[i] = airframe.strips()
                    .surface(i)
                    .map(s -> s.chordFraction() * Math.sin(deflections.on(s, side)))
                    .orElse(0.0);
        }
    }

    Airframe airframe() {
        return airframe;
    }

    /** The wing's section curves at a speed. */
    List<SectionCurve> curves(double speed) {
        return curvesBySpeed.computeIfAbsent(
                speed, v -> airframe.strips().curves(deflections::on, airframe.reynoldsPerMetre(v)));
    }

    /** The wing alone. */
    LiftingLineSolution wing(double speed, double alpha) {
        double incidence = alpha + model.wing().incidence();
        LiftingLineSolution solution =
                solver.solve(LiftingLineProblem.of(curves(speed), incidence, Motion.straight()), last);
        last = Optional.of(solution);
        return solution;
    }

    /** The balanced model. */
    Attitude at(Pack pack, double speed, double alpha) {
        LiftingLineSolution solution = wing(speed, alpha);
        Sum fixed = new Sum(alpha);
        addWing(fixed, solution, pack);
        for (DragItem item : airframe.dragItems()) {
            fixed.add(0, item.area(), 0, 0, item.height());
        }
        fixed.moment += airframe.bodyMoment() * alpha;
        TailAir tailAir = wake.at(solution, alpha, trailingEdgeDrop);
        double reynolds = airframe.reynoldsPerMetre(speed);
        double back = model.tail().arm() + model.tail().chord() / 4 - pack.balance();
        double up = model.wing().height() + model.tail().height();
        UnivariateFunction momentOfElevator = elevator -> {
            TailForces f = tail.at(alpha + model.tail().incidence(), elevator, tailAir.inflow(), reynolds);
            Sum sum = fixed.copy();
            sum.add(f.lift(), f.drag(), f.moment(), back, up);
            return sum.moment / (model.wing().area() * model.wing().meanAerodynamicChord());
        };
        Held held = hold(momentOfElevator);
        TailForces f = tail.at(alpha + model.tail().incidence(), held.elevator, tailAir.inflow(), reynolds);
        fixed.add(f.lift(), f.drag(), f.moment(), back, up);
        double area = model.wing().area();
        return new Attitude(
                speed,
                alpha,
                fixed.lift / area,
                fixed.drag / area,
                held.elevator,
                held.limit,
                f.stallMargin(),
                tailAir.inWake(),
                meanDownwash(tailAir),
                solution,
                solution.status().converged() && f.converged());
    }

    private double meanDownwash(TailAir air) {
        SpanGrid grid = tail.grid();
        double sum = 0;
        for (int i = 0; i < grid.size(); i++) {
            sum += air.inflow().downwash(i) * grid.width(i);
        }
        return sum / grid.span();
    }

    private void addWing(Sum sum, LiftingLineSolution solution, Pack pack) {
        SpanGrid grid = solution.grid();
        StripForces forces = StripForces.of(solution);
        double quarter = model.wing().chordAt(0) / 4 - pack.balance();
        double tilt = Math.tan(model.wing().dihedral());
        for (int i = 0; i < grid.size(); i++) {
            sum.add(
                    forces.lift(i),
                    forces.drag(i),
                    forces.moment(i),
                    quarter + grid.quarterChord(i),
                    model.wing().height() + Math.abs(grid.control(i)) * tilt);
        }
    }

    /** The elevator at which the moment vanishes, or the stop that comes nearest. */
    private Held hold(UnivariateFunction moment) {
        Elevator elevator = model.tail().elevator();
        double up = -elevator.travelUp();
        double down = elevator.travelDown();
        double atUp = moment.value(up);
        double atDown = moment.value(down);
        if (atUp <= 0) {
            return new Held(up, ElevatorLimit.UP);
        }
        if (atDown >= 0) {
            return new Held(down, ElevatorLimit.DOWN);
        }
        BracketingNthOrderBrentSolver root = new BracketingNthOrderBrentSolver(ELEVATOR_TOLERANCE, 5);
        return new Held(root.solve(MOST_EVALUATIONS, moment, up, down), ElevatorLimit.NONE);
    }

    private record Held(double elevator, ElevatorLimit limit) {}

    /** Forces over dynamic pressure in wind axes and their moment about the balance point. */
    private static final class Sum {
        private final double cos;
        private final double sin;
        private double lift;
        private double drag;
        private double moment;

        Sum(double alpha) {
            this(Math.cos(alpha), Math.sin(alpha));
        }

        private Sum(double cos, double sin) {
            this.cos = cos;
            this.sin = sin;
        }

        Sum copy() {
            Sum sum = new Sum(cos, sin);
            sum.lift = lift;
            sum.drag = drag;
            sum.moment = moment;
            return sum;
        }

        void add(double l, double d, double m, double back, double up) {
            lift += l;
            drag += d;
            double rising = l * cos + d * sin;
            double aft = d * cos - l * sin;
            moment += m - back * rising + up * aft;
        }
    }
}
