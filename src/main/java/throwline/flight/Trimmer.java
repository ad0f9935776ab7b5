package throwline.flight;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import throwline.flight.Attitude.ElevatorLimit;
import throwline.flight.ElevatorSearch.Held;
import throwline.flight.TailSurface.TailForces;
import throwline.flight.TailWake.TailAir;
import throwline.liftingline.InfluenceMatrix;
import throwline.liftingline.LiftingLineProblem;
import throwline.liftingline.LiftingLineSolution;
import throwline.liftingline.LiftingLineSolver;
import throwline.liftingline.Motion;
import throwline.liftingline.SpanGrid;
import throwline.liftingline.StripForces;
import throwline.liftingline.WingCurves;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.section.SectionCurve;

/**
 * Balances the whole model at a speed and an angle of attack: forces of the wing strip by strip at their own places,
 * tail in the wing's wake, body and drag items, moments about the balance point; the elevator is what makes them vanish.
 * No angle is taken as small except a strip's own downwash angle.
 *
 * <p>Holds the last solution as a start for the next, within one question: one thread at a time.
 */
final class Trimmer {

    private final Airframe airframe;
    private final Deflections deflections;
    private final Model model;
    private final LiftingLineSolver solver;
    private final TailSurface tail;
    private final TailWake wake;
    private final double[] trailingEdgeDrop;
    private final double areaTimesChord;
    private final WingCurves wingCurves;
    private final RecentCurves curvesBySpeed;
    private final ElevatorSearch elevators;
    private Optional<LiftingLineSolution> last = Optional.empty();

    /**
     * The model in free air.
     *
     * @param airframe the model
     * @param deflections where its surfaces stand
     */
    Trimmer(Airframe airframe, Deflections deflections) {
        this(
                airframe,
                deflections,
                airframe.influence(),
                airframe.strips().curves(deflections::on),
                new RecentCurves());
    }

    private Trimmer(
            Airframe airframe,
            Deflections deflections,
            InfluenceMatrix influence,
            WingCurves wingCurves,
            RecentCurves curvesBySpeed) {
        this.airframe = airframe;
        this.deflections = deflections;
        this.wingCurves = wingCurves;
        this.curvesBySpeed = curvesBySpeed;
        model = airframe.model();
        areaTimesChord = model.wing().area() * model.wing().meanAerodynamicChord();
        solver = airframe.solver(influence);
        tail = airframe.tailSurface(GroundStance.belowTail(model, influence.ground()));
        elevators = new ElevatorSearch(model.tail().elevator());
        SpanGrid grid = airframe.strips().grid();
        wake = new TailWake(model, grid, tail.grid(), influence.ground());
        trailingEdgeDrop = new double[grid.size()];
        for (int i = 0; i < grid.size(); i++) {
            int side = grid.control(i) < 0 ? -1 : 1;
            trailingEdgeDrop[i] = airframe.strips()
                    .surface(i)
                    .map(s -> s.chordFraction() * Math.sin(deflections.on(s, side)))
                    .orElse(0.0);
        }
    }

    /** The same model with the same surfaces near the ground. */
    Trimmer near(InfluenceMatrix influence) {
        return new Trimmer(airframe, deflections, influence, wingCurves, curvesBySpeed);
    }

    Airframe airframe() {
        return airframe;
    }

    /** This, ready for another question: what was solved before must not show in the last digits of the next answer. */
    Trimmer fresh() {
        last = Optional.empty();
        elevators.forget();
        return this;
    }

    /** The wing's section curves. */
    WingCurves wingCurves() {
        return wingCurves;
    }

    /** The wing's section curves at a speed. */
    List<SectionCurve> curves(double speed) {
        return curvesBySpeed.at(speed, v -> wingCurves.at(airframe.reynoldsPerMetre(v)));
    }

    /** The wing alone. */
    LiftingLineSolution wing(double speed, double alpha) {
        return wing(speed, alpha, Motion.straight());
    }

    private LiftingLineSolution wing(double speed, double alpha, Motion motion) {
        double incidence = alpha + model.wing().incidence();
        LiftingLineSolution solution = solver.solve(LiftingLineProblem.of(curves(speed), incidence, motion), last);
        last = Optional.of(solution);
        return solution;
    }

    /** The balanced model. */
    Attitude at(Pack pack, double speed, double alpha) {
        return at(pack, speed, alpha, 0);
    }

    /** The balanced model while it pitches; the rate is over the speed, rad/m, nose up positive. */
    Attitude at(Pack pack, double speed, double alpha, double pitch) {
        BalancedMoment at = new BalancedMoment(pack, speed, alpha, pitch);
        return at.with(elevators.hold(at.tailplane, at.parts.moment()));
    }

    /** The model at an angle of attack with the elevator held: not balanced. */
    Attitude heldAt(Pack pack, double speed, double alpha, double elevator) {
        return heldAt(pack, speed, alpha, elevator, 0);
    }

    /** The same while it pitches; the rate is over the speed, rad/m, nose up positive. */
    Attitude heldAt(Pack pack, double speed, double alpha, double elevator, double pitch) {
        BalancedMoment at = new BalancedMoment(pack, speed, alpha, pitch);
        return at.with(new Held(elevator, ElevatorLimit.NONE, at.tailplane.forces(elevator)));
    }

    /** State at an angle of attack and a speed, before the elevator is known. */
    private final class BalancedMoment {
        private final double speed;
        private final double alpha;
        private final LiftingLineSolution solution;
        private final TailAir tailAir;
        private final Parts parts;
        private final Tailplane tailplane;

        BalancedMoment(Pack pack, double speed, double alpha, double pitch) {
            this.speed = speed;
            this.alpha = alpha;
            // The lifting line turns about its own middle; the model turns about its balance point.
            double fromBalance = pitch * (model.wing().chordAt(0) / 4 - pack.balance());
            solution = wing(speed, alpha + fromBalance, new Motion(0, pitch, 0, 0));
            tailAir = wake.at(solution, alpha, trailingEdgeDrop);
            parts = new Parts(pack, alpha, solution);
            Tailplane straight = new Tailplane(pack, speed, alpha, tailAir);
            tailplane = pitch == 0
                    ? straight
                    : straight.turned(pitch * (straight.back + model.tail().chord() / 2));
        }

        Attitude with(Held held) {
            TailForces f = held.forces();
            double area = model.wing().area();
            return new Attitude(
                    speed,
                    alpha,
                    (parts.lift() + f.lift()) / area,
                    (parts.drag() + f.drag()) / area,
                    held.elevator(),
                    held.limit(),
                    f.stallMargin(),
                    tailAir.inWake(),
                    meanDownwash(tailAir),
                    meanPressure(tailAir),
                    parts.moments(tailplane.moment(f)),
                    solution,
                    solution.status().converged() && f.converged());
        }
    }

    /**
     * How the tail's moment answers at an attitude, by central differences of half a degree.
     *
     * @return change of moment coefficient per rad of elevator and per rad of angle at the tail
     */
    TailPower tailPower(Pack pack, Attitude attitude) {
        TailAir air = wake.at(attitude.wing(), attitude.alpha(), trailingEdgeDrop);
        double step = Math.toRadians(0.5);
        Tailplane here = new Tailplane(pack, attitude.speed(), attitude.alpha(), air);
        double byElevator = slope(here, attitude.elevator() + step, here, attitude.elevator() - step, step);
        double byAngle = slope(here.turned(step), attitude.elevator(), here.turned(-step), attitude.elevator(), step);
        return new TailPower(byElevator, byAngle);
    }

    /**
     * Hinge moment of the elevator at an attitude, over dynamic pressure, m^3, positive where the air drives it down; empty
     * where the tail was not solved.
     *
     * @param elevator where it stands, rad
     */
    OptionalDouble elevatorHinge(Pack pack, Attitude attitude, double elevator) {
        TailAir air = wake.at(attitude.wing(), attitude.alpha(), trailingEdgeDrop);
        TailForces forces = new Tailplane(pack, attitude.speed(), attitude.alpha(), air).forces(elevator);
        return forces.converged() ? OptionalDouble.of(forces.hinge()) : OptionalDouble.empty();
    }

    private static double slope(Tailplane more, double moreElevator, Tailplane less, double lessElevator, double step) {
        double above = more.moment(more.forces(moreElevator));
        double below = less.moment(less.forces(lessElevator));
        return (above - below) / (2 * step);
    }

    /** Change of the tail's moment coefficient per rad of elevator, and per rad of the air's angle at the tail. */
    record TailPower(double byElevator, double byAngle) {}

    private double meanDownwash(TailAir air) {
        SpanGrid grid = tail.grid();
        double sum = 0;
        for (int i = 0; i < grid.size(); i++) {
            sum += air.inflow().downwash(i) * grid.width(i);
        }
        return sum / grid.span();
    }

    private double meanPressure(TailAir air) {
        SpanGrid grid = tail.grid();
        double sum = 0;
        for (int i = 0; i < grid.size(); i++) {
            sum += air.inflow().speed(i) * air.inflow().speed(i) * grid.width(i);
        }
        return sum / grid.span();
    }

    private double perChord(double moment) {
        return moment / areaTimesChord;
    }

    /** Everything but the tail at one attitude. */
    private final class Parts {
        private final ForceSum lifts;
        private final ForceSum drags;
        private final ForceSum items;
        private final double body;
        private double camber;

        Parts(Pack pack, double alpha, LiftingLineSolution solution) {
            lifts = new ForceSum(alpha);
            drags = new ForceSum(alpha);
            items = new ForceSum(alpha);
            body = airframe.bodyMoment() * alpha;
            SpanGrid grid = solution.grid();
            StripForces forces = StripForces.of(solution);
            double quarter = model.wing().chordAt(0) / 4 - pack.balance();
            double tilt = Math.tan(model.wing().dihedral());
            for (int i = 0; i < grid.size(); i++) {
                double back = quarter + grid.quarterChord(i);
                double up = model.wing().height() + Math.abs(grid.control(i)) * tilt;
                lifts.add(forces.lift(i), 0, 0, back, up);
                drags.add(0, forces.drag(i), 0, back, up);
                camber += forces.moment(i);
            }
            for (DragItem item : airframe.dragItems()) {
                items.add(0, item.area(), 0, 0, item.height());
            }
        }

        double lift() {
            return lifts.lift();
        }

        double drag() {
            return drags.drag() + items.drag();
        }

        double moment() {
            return perChord(lifts.moment() + drags.moment() + items.moment() + camber + body);
        }

        Moments moments(double tailMoment) {
            return new Moments(
                    perChord(lifts.moment()),
                    perChord(camber),
                    perChord(drags.moment()),
                    perChord(body),
                    perChord(items.moment()),
                    tailMoment);
        }
    }

    /** The tail at one attitude, for any elevator. */
    private final class Tailplane implements ElevatorSearch.Tail {
        private final double alpha;
        private final double angle;
        private final double reynolds;
        private final TailAir air;
        private final double back;
        private final double up;

        Tailplane(Pack pack, double speed, double alpha, TailAir air) {
            this(
                    alpha,
                    alpha + model.tail().incidence(),
                    airframe.reynoldsPerMetre(speed),
                    air,
                    model.tail().arm() + model.tail().chord() / 4 - pack.balance(),
                    model.wing().height() + model.tail().height());
        }

        private Tailplane(double alpha, double angle, double reynolds, TailAir air, double back, double up) {
            this.alpha = alpha;
            this.angle = angle;
            this.reynolds = reynolds;
            this.air = air;
            this.back = back;
            this.up = up;
        }

        Tailplane turned(double more) {
            return new Tailplane(alpha, angle + more, reynolds, air, back, up);
        }

        @Override
        public double angle() {
            return angle - meanDownwash(air);
        }

        @Override
        public TailForces forces(double elevator) {
            return tail.at(angle, elevator, air.inflow(), reynolds);
        }

        @Override
        public double moment(TailForces f) {
            ForceSum sum = new ForceSum(alpha);
            sum.add(f.lift(), f.drag(), f.moment(), back, up);
            return perChord(sum.moment());
        }
    }
}
